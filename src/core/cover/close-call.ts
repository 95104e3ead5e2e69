import { withinReach } from '#core/accuracy'
import type { CoverKind } from './cover.types'
import { workLimit, type Case } from './refusals'

/** A zone's steep figure with its error. */
interface SteepFigure {
  readonly letter: string
  /** Nine tenths of the zone are no steeper [°]. */
  readonly slopeDegSteep: number
  /** Standard error of that [°]; undefined where nothing is known of it. */
  readonly slopeSdDegSteep?: number | undefined
}

/**
 * Says so when the error of a slope could put it on the other side of a limit. A limit is never moved by it: what is
 * refused stays refused, and what is allowed is allowed with this warning.
 *
 * @param zone - the zone's steep figure with its error
 * @param limitDeg - the limit [°]
 * @param forWhat - what the limit is for, as in “for mown grass”
 * @returns a sentence; undefined when the limit lies out of reach, or the error is not known
 */
export function closeCall(zone: SteepFigure, limitDeg: number, forWhat: string): string | undefined {
  const { letter, slopeDegSteep, slopeSdDegSteep } = zone
  if (slopeSdDegSteep === undefined || !withinReach(slopeDegSteep, limitDeg, slopeSdDegSteep))
    return undefined
  const figure = `Zone ${letter} is ${slopeDegSteep.toFixed(1)}° in its steep part, give or take ${slopeSdDegSteep.toFixed(1)}°`
  return slopeDegSteep <= limitDeg
    ? `${figure}: the limit of ${limitDeg}° ${forWhat} could be passed.`
    : `${figure}: it may lie within the limit of ${limitDeg}° ${forWhat}, but nobody may count on that.`
}

/**
 * The steepest ground on which a cover is open, as far as steepness decides.
 *
 * @param kind - the cover
 * @param given - the zone, its machines and the tables
 * @returns the limit [°]; undefined when no limit of steepness bears on the cover
 */
export function steepestFor(kind: CoverKind, given: Case): number | undefined {
  const { machines, tables } = given
  const rows = tables.limits.covers.filter(
    ({ cover, measure, side }) => cover === kind && measure === 'steepDeg' && side === 'above',
  )
  const cut = (sward: 'short' | 'tall') =>
    machines.flatMap(({ machine, verdict }) => (machine.sward.includes(sward) ? [verdict.limitDeg] : []))
  const tools =
    kind === 'mown'
      ? [Math.max(...cut('short'))]
      : kind === 'meadow'
        ? [Math.max(workLimit('cut-on-foot', tables).value, ...cut('tall'))]
        : []
  const leastDeg = Math.min(...rows.map(({ limit }) => limit), ...tools)
  return Number.isFinite(leastDeg) ? leastDeg : undefined
}
