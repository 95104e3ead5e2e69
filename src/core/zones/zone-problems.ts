import { crossesItself, pointInRing, cellCentre, ringAreaM2 } from '#core/geometry'
import type { Surface } from '#core/survey'
import type { Problem } from '#core/units'
import { zoneSchema, type Zone } from './zone.schema'

/** Least plan area of a zone [m²]; own judgement: less is a single plant's place. */
const LEAST_AREA_M2 = 0.25

/**
 * What is wrong with an outline or name of a zone by itself.
 *
 * @param zone - the zone
 * @returns every problem; none when it can stand
 */
export function problemsOfZone(zone: Zone): readonly Problem[] {
  const where = `zone “${zone.name || zone.id}”`
  const parsed = zoneSchema.safeParse(zone)
  if (!parsed.success)
    return parsed.error.issues.map(({ message }) => ({
      where,
      what: `The zone cannot stand like this: ${message}.`,
      mend: 'Give it a name of up to 60 letters and an outline of three corners or more.',
    }))
  if (crossesItself(zone.ring))
    return [{ where, what: 'The outline crosses itself.', mend: 'Move a corner so that no two sides cross.' }]
  return ringAreaM2(zone.ring) < LEAST_AREA_M2
    ? [
        {
          where,
          what: `The outline holds ${ringAreaM2(zone.ring).toFixed(2)} m² in plan: less than ${LEAST_AREA_M2} m².`,
          mend: 'Draw it larger, or leave this zone out.',
        },
      ]
    : []
}

/**
 * What is wrong with drawn zones on their plot, for the person to mend. `zoningOf` leaves out zones without a cell.
 *
 * @param surface - the ground as cells
 * @param drawn - the drawn zones
 * @returns every problem, zone by zone
 */
export function zoneProblems(surface: Surface, drawn: readonly Zone[]): readonly Problem[] {
  return drawn.flatMap((zone, index) => {
    const twin = drawn.slice(0, index).some(({ id }) => id === zone.id)
    const own = problemsOfZone(zone)
    if (own.length > 0) return own
    const where = `zone “${zone.name}”`
    const problems: Problem[] = []
    if (twin)
      problems.push({
        where,
        what: `Two zones share the id “${zone.id}”.`,
        mend: 'Take one of them out and draw it anew.',
      })
    if (!holdsCell(surface, drawn, index))
      problems.push({
        where,
        what: 'The zone holds no ground of its own: it lies outside the plot, under other zones, or is too small to be seen.',
        mend: 'Move or enlarge it, or take it out; until then it is left out of the figures.',
      })
    return problems
  })
}

function holdsCell({ frame, share }: Surface, drawn: readonly Zone[], index: number): boolean {
  return share.some((part, cell) => {
    if (part <= 0) return false
    const centre = cellCentre(frame, cell)
    return drawn.findIndex(({ ring }) => pointInRing(centre, ring)) === index
  })
}
