/** Spearman's rank correlation, ties sharing their mean rank. */
export function spearman(one: readonly number[], other: readonly number[]): number {
  if (one.length !== other.length || one.length < 3)
    throw new Error(`spearman: needs two lists of 3 or more, got ${one.length} and ${other.length}`)
  const [x, y] = [ranks(one), ranks(other)]
  const mean = (one.length - 1) / 2
  let [xy, xx, yy] = [0, 0, 0]
  x.forEach((rank, at) => {
    const [dx, dy] = [rank - mean, (y[at] ?? 0) - mean]
    xy += dx * dy
    xx += dx * dx
    yy += dy * dy
  })
  return xy / Math.sqrt(xx * yy)
}

function ranks(values: readonly number[]): number[] {
  const order = [...values.keys()].sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0))
  const ranked = new Array<number>(values.length).fill(0)
  for (let start = 0; start < order.length;) {
    let end = start
    while (end < order.length && values[order[end] ?? 0] === values[order[start] ?? 0]) end += 1
    for (let at = start; at < end; at++) ranked[order[at] ?? 0] = (start + end - 1) / 2
    start = end
  }
  return ranked
}
