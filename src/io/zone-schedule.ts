import type { ZoneCare } from '#core/care'
import { northernTwin, type Month } from '#core/units'
import type { ZoneFacts } from '#core/zones'
import type { Findings, Plan, ZoneFindings } from '#plan'
import { csvText, rounded, type CsvCell } from './csv-text'
import { sunBodies, type ZoneSunBody } from './sun-body'

/**
 * The zones with their areas, slopes, scores, cover and hours, one row each.
 *
 * @param plan - the plan
 * @param findings - what follows from it
 * @returns CSV text
 */
export function zoneSchedule(plan: Plan, findings: Findings): string {
  const suns = sunBodies(findings).zones
  const rows = findings.zoning.zones.flatMap((zone) => {
    const found = findings.zones.find(({ zoneId }) => zoneId === zone.id)
    const care = findings.care.zones.find(({ zoneId }) => zoneId === zone.id)
    const sun = suns.find(({ zoneId }) => zoneId === zone.id)?.sun
    return found && care && sun
      ? [Object.values(cells).map((cell) => cell({ zone, found, care, sun, plan }))]
      : []
  })
  return csvText(Object.keys(cells), rows)
}

interface Row {
  readonly zone: ZoneFacts
  readonly found: ZoneFindings
  readonly care: ZoneCare
  readonly sun: ZoneSunBody
  readonly plan: Plan
}

const JUNE: Month = 5
const DECEMBER: Month = 11

/** Columns of the schedule, in order. */
const cells: Readonly<Record<string, (row: Row) => CsvCell>> = {
  zone: ({ zone }) => zone.letter,
  name: ({ zone }) => zone.name,
  band: ({ zone }) => zone.band,
  planAreaM2: ({ zone }) => rounded(zone.planAreaM2, 1),
  slopeAreaM2: ({ zone }) => rounded(zone.slopeAreaM2, 1),
  slopeMeanDeg: ({ zone }) => rounded(zone.slopeDegMean, 1),
  slopeNineTenthsDeg: ({ zone }) => rounded(zone.slopeDegSteep, 1),
  facesDeg: ({ zone }) => rounded(zone.aspectDeg, 0),
  soil: ({ found }) => found.soil.textureClass,
  wetnessScore: ({ found }) => found.scores.wetness.value,
  wetnessClass: ({ found }) => found.scores.wetness.class,
  sunScore: ({ found }) => found.scores.sun.value,
  sunClass: ({ found }) => found.scores.sun.class,
  light: ({ sun }) => sun.className,
  midsummerSunHours: ({ sun, plan }) => sun.sunHours[northernTwin(JUNE, plan.site.latitudeDeg)],
  midwinterSunHours: ({ sun, plan }) => sun.sunHours[northernTwin(DECEMBER, plan.site.latitudeDeg)],
  seasonSunRatio: ({ zone }) => rounded(zone.seasonSunRatio, 3),
  erosionScore: ({ found }) => found.scores.erosion.value,
  erosionClass: ({ found }) => found.scores.erosion.class,
  frostScore: ({ found }) => found.scores.frost.value,
  frostClass: ({ found }) => found.scores.frost.class,
  workingScore: ({ found }) => found.scores.working.value,
  workingClass: ({ found }) => found.scores.working.class,
  mowing: ({ found }) => found.cover.mowing,
  cover: ({ found }) => found.cover.chosen,
  chosenBy: ({ found }) => (found.cover.chosenByPerson ? 'you' : 'suggested'),
  plants: ({ found }) => found.planting.mix.reduce((sum, { count }) => sum + count, 0),
  hoursAYear: ({ care }) => rounded(care.account.total, 2),
  firstYearExtraHours: ({ care }) => rounded(care.firstYearHours, 2),
}
