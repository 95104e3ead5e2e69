/**
 * What we use of @kninnug/constrainautor. The package offers its own source as types, which our stricter checks refuse, so
 * tsconfig.json points here instead.
 */
export default class Constrainautor {
  constructor(triangulation: {
    readonly coords: ArrayLike<number>
    readonly triangles: Uint32Array
    readonly halfedges: Int32Array
    readonly hull: Uint32Array
  })
  /** Half-edges to look at again after a piece was put in. */
  flips: EdgeSet
  /** Puts in one piece; throws when it meets a point or another piece. */
  constrainOne(from: number, to: number): number
}

/** A set of half-edges. */
export interface EdgeSet {
  add(edge: number): EdgeSet
  delete(edge: number): EdgeSet
  /** Puts in or takes out; gives back which. */
  set(edge: number, held: boolean): boolean
  has(edge: number): boolean
  forEach(visit: (edge: number) => void): EdgeSet
}
