/**
 * Mean of a figure over each zone, weighted by the part of each cell that lies inside the plot.
 *
 * @param zoneOfCell - zone of each cell, -1 outside
 * @param count - number of zones [zones], 0 or more
 * @param share - part of each cell inside the plot, 0 to 1 [ratio]
 * @param values - the figure, one for each cell [its own unit]
 * @returns one mean to a zone, in the figure's unit
 * @throws RangeError when a zone has no cell inside the plot
 */
export function zoneMeans(
  zoneOfCell: Int16Array,
  count: number,
  share: Float64Array,
  values: ArrayLike<number>,
): readonly number[] {
  const sums = new Float64Array(count)
  const weights = new Float64Array(count)
  for (let cell = 0; cell < zoneOfCell.length; cell++) {
    const zone = zoneOfCell[cell]!
    if (zone < 0) continue
    const weight = share[cell]!
    sums[zone]! += weight * values[cell]!
    weights[zone]! += weight
  }
  return Array.from(sums, (sum, zone) => {
    const weight = weights[zone] ?? 0
    if (!(weight > 0)) throw new RangeError(`zoneMeans: zone ${zone} has no cell inside the plot`)
    return sum / weight
  })
}
