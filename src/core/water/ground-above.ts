import type { UnitEdge, WaterUnit } from './water.types'

/** Most strips that ground above is cut into; a longer way makes the farthest strip longer: own judgement. */
const MOST_STRIPS = 24

/**
 * Ground above a unit that nobody described: taken to be as the unit it sheds onto, with the same soil, cover, slope and
 * sun, as wide as the part of its edge that is not described.
 *
 * @param top - the unit it sheds onto
 * @param aboveM - how far it reaches [m plan], 0 or more
 * @param edges - what was described of the edges of units
 * @returns its strips, the farthest first; none when all of the edge is described
 */
export function groundAbove(
  top: WaterUnit,
  aboveM: number,
  edges: readonly UnitEdge[],
): readonly WaterUnit[] {
  const edge = edges.find(({ unitId }) => unitId === top.id)
  const widthM = (top.planAreaM2 / top.lengthM) * (1 - describedShare(edge))
  return stripsOf(top, `above ${top.id}`, { widthM, lengthM: aboveM })
}

/**
 * Ground beyond the boundary as it was described: with the soil, slope and sun of the unit it sheds onto, its own cover
 * and curve number.
 *
 * @param edge - an edge of a unit
 * @param units - the units of the plot
 * @returns its strips, for each stretch the farthest first
 * @throws RangeError when there is no such unit, or a width or a way uphill is negative
 */
export function groundBeyond(edge: UnitEdge, units: readonly WaterUnit[]): readonly WaterUnit[] {
  const unit = units.find(({ id }) => id === edge.unitId)
  if (!unit) throw new RangeError(`groundBeyond: an edge must be of a unit, got ${edge.unitId}`)
  return edge.stretches.flatMap((stretch) => {
    const { id, what, widthM, uphillM } = stretch
    if (!(widthM >= 0 && uphillM >= 0))
      throw new RangeError(
        `groundBeyond: width and way of ${id} must be 0 or more, got ${widthM}, ${uphillM}`,
      )
    return what === undefined
      ? []
      : stripsOf({ ...unit, beyond: stretch }, `beyond ${id} ${unit.id}`, { widthM, lengthM: uphillM })
  })
}

function describedShare(edge: UnitEdge | undefined): number {
  if (!edge || !(edge.enteringM > 0)) return 0
  const describedM = edge.stretches.reduce((sum, { widthM }) => sum + widthM, 0)
  return Math.min(1, describedM / edge.enteringM)
}

// Cut into strips as long as the unit, farthest first, so that water soaks in on its way as it does on the plot.
function stripsOf(
  unit: WaterUnit,
  name: string,
  { widthM, lengthM }: { readonly widthM: number; readonly lengthM: number },
): readonly WaterUnit[] {
  if (!(widthM * lengthM > LEAST_M2)) return []
  const strips = Math.min(MOST_STRIPS, Math.ceil(lengthM / unit.lengthM))
  const idOf = (strip: number) => (strip === 0 ? unit.id : `${name} ${strip}`)
  return Array.from({ length: strips }, (_, from) => {
    const strip = strips - from
    const stripM = strip === strips ? lengthM - (strips - 1) * unit.lengthM : unit.lengthM
    return {
      ...unit,
      id: idOf(strip),
      planAreaM2: widthM * stripM,
      lengthM: stripM,
      handsOn: [{ to: idOf(strip - 1), share: 1 }],
    }
  })
}

/** Less ground than this beyond the boundary is rounding [m²]. */
const LEAST_M2 = 1e-9
