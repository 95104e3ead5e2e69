import type { EdgeSet } from '@kninnug/constrainautor'

/**
 * A set of half-edges whose walk takes only as long as it has members. The library's own looks through every edge of the
 * triangulation for each piece of line.
 *
 * @param edges - number of half-edges [count], 0 or more
 * @returns the set, empty
 */
export function edgeSet(edges: number): EdgeSet {
  const held = new Uint8Array(edges)
  const listed = new Uint8Array(edges)
  let list: number[] = []
  const edgesHeld: EdgeSet = {
    add: (edge) => {
      held[edge] = 1
      if (!listed[edge]) list.push(edge)
      listed[edge] = 1
      return edgesHeld
    },
    delete: (edge) => {
      held[edge] = 0
      return edgesHeld
    },
    set: (edge, wanted) => {
      if (wanted) edgesHeld.add(edge)
      else edgesHeld.delete(edge)
      return wanted
    },
    has: (edge) => held[edge] === 1,
    forEach: (visit) => {
      const now = list
      list = []
      for (const edge of now) listed[edge] = 0
      for (const edge of now) if (held[edge]) visit(edge)
      return edgesHeld
    },
  }
  return edgesHeld
}
