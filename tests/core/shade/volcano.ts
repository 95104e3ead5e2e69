import { readGrid } from '../../truth/read-grid'

/** The test hill as ground and tilted cells, with the cells that may be compared (interior, and r.sun itself sound). */
export function volcano() {
  const { values: levelM, ...frame } = readGrid('volcano/dem.asc')
  const slope = readGrid('volcano/grass_slope_horn_deg.asc').values
  const aspect = readGrid('volcano/grass_aspect_horn_deg.asc').values
  const sound = readGrid('volcano/rsun_valid.asc').values
  const none = (value: number) => (Number.isNaN(value) ? 0 : value)
  const compared = [...slope.keys()].filter((cell) => !Number.isNaN(slope[cell]!) && sound[cell] === 1)
  const ground = { frame, levelM, share: new Float64Array(levelM.length).fill(1) }
  return {
    ground,
    /** Nothing but the hill itself stands in the light. */
    shading: { ground, standing: [], far: [] },
    cells: { slopeDeg: slope.map(none), aspectDeg: aspect.map(none) },
    compared,
  }
}

/** Rank correlation of two lists of numbers. */
export function spearman(one: readonly number[], other: readonly number[]): number {
  const [a, b] = [ranks(one), ranks(other)]
  const mean = (one.length - 1) / 2
  const product = (x: number[], y: number[]) =>
    x.reduce((sum, value, at) => sum + (value - mean) * (y[at]! - mean), 0)
  return product(a, b) / Math.sqrt(product(a, a) * product(b, b))
}

function ranks(list: readonly number[]): number[] {
  const order = [...list.keys()].sort((x, y) => list[x]! - list[y]!)
  const rank = new Array<number>(list.length).fill(0)
  for (let from = 0; from < order.length;) {
    let to = from
    while (to < order.length && list[order[to]!] === list[order[from]!]) to += 1
    for (let at = from; at < to; at += 1) rank[order[at]!] = (from + to - 1) / 2
    from = to
  }
  return rank
}
