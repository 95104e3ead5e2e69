import type { FlowShares } from '#core/terrain'

/** The cells of a plot, the zones they belong to and the plan area each stands for. */
export interface FlowGround {
  readonly flow: FlowShares
  /** Zone of each cell, -1 outside. */
  readonly zoneOfCell: Int16Array
  /** Plan area of each cell inside the plot [m²]. */
  readonly areaM2: Float64Array
  /** Plan area off the plot that drains onto each cell [m²]; none when undefined. */
  readonly inflowM2?: Float64Array | undefined
}

/**
 * How zones hand water on, from the way flow leaves their cells. Flows between two zones that go both ways are set
 * against each other, so that water is never handed to and fro.
 *
 * @param ground - cells, zones and flow
 * @param count - number of zones [zones], 0 or more
 * @returns for each zone the share of what leaves it that each other zone receives; the rest leaves the plot
 */
export function handsOnOf(ground: FlowGround, count: number): { zone: number; share: number }[][] {
  const flows = crossings(ground, count)
  return flows.map(({ onM2, offM2 }, zone) => {
    const net = onM2.map((areaM2, other) => Math.max(0, areaM2 - (flows[other]?.onM2[zone] ?? 0)))
    const totalM2 = net.reduce((sum, areaM2) => sum + areaM2, offM2)
    return net.flatMap((areaM2, other) => (areaM2 > 0 ? [{ zone: other, share: areaM2 / totalM2 }] : []))
  })
}

/**
 * Plan area that drains into a zone from the ground above it, each piece counted where it first enters; ground beyond
 * the boundary counts as far as it drains onto the plot.
 *
 * @param ground - cells, zones and flow
 * @param zone - number of the zone [index]
 * @returns area [m²], 0 or more
 */
export function areaFromAboveM2(ground: FlowGround, zone: number): number {
  const { flow, zoneOfCell } = ground
  const carried = drainedM2(ground)
  let enteringM2 = 0
  for (let cell = 0; cell < carried.length; cell++) {
    if (zoneOfCell[cell] !== zone) continue
    carried[cell] = 0
    enteringM2 += ground.inflowM2?.[cell] ?? 0
  }
  for (const from of flow.order) {
    const end = flow.starts[from + 1]!
    for (let link = flow.starts[from]!; link < end; link++) {
      const to = flow.to[link]!
      const passedM2 = carried[from]! * flow.share[link]!
      if (zoneOfCell[to] === zone) enteringM2 += passedM2
      else carried[to]! += passedM2
    }
  }
  return enteringM2
}

interface Crossing {
  /** Area whose water goes to each zone, by zone [m²]. */
  readonly onM2: number[]
  /** Area whose water leaves the plot [m²]. */
  offM2: number
}

// A cell's own plan area, with that of the ground beyond that drains onto it.
function drainedM2({ areaM2, inflowM2 }: FlowGround): Float64Array {
  return inflowM2 ? areaM2.map((own, cell) => own + inflowM2[cell]!) : areaM2.slice()
}

function crossings(ground: FlowGround, count: number): Crossing[] {
  const { flow, zoneOfCell } = ground
  const flows = Array.from({ length: count }, () => ({
    onM2: Array.from({ length: count }, () => 0),
    offM2: 0,
  }))
  const carried = drainedM2(ground)
  const kept = new Float64Array(carried.length).fill(1)
  eachLink(flow, (from, to, share) => {
    const passedM2 = (carried[from] ?? 0) * share
    carried[to] = (carried[to] ?? 0) + passedM2
    const source = flows[zoneOfCell[from] ?? -1]
    const target = zoneOfCell[to] ?? -1
    if (target < 0) return
    kept[from] = (kept[from] ?? 0) - share
    if (source && target !== zoneOfCell[from]) source.onM2[target] = (source.onM2[target] ?? 0) + passedM2
  })
  zoneOfCell.forEach((zone, cell) => {
    const source = flows[zone]
    if (source) source.offM2 += (carried[cell] ?? 0) * Math.max(0, kept[cell] ?? 0)
  })
  return flows
}

// Every link, from the highest cell down.
function eachLink(flow: FlowShares, visit: (from: number, to: number, share: number) => void): void {
  for (const from of flow.order) {
    const end = flow.starts[from + 1] ?? 0
    for (let link = flow.starts[from] ?? 0; link < end; link++)
      visit(from, flow.to[link] ?? 0, flow.share[link] ?? 0)
  }
}
