import type { MonthClimate } from '#core/climate'
import { lineDistanceM, pointInRing, type Ring } from '#core/geometry'
import { thingFigures, type ShadeTables } from '#core/shade'
import type { Surface } from '#core/survey'
import { monthNames, months, type Twelve } from '#core/units'
import type { Settlement } from './findings.types'
import type { Obstacle } from './plan-survey.schema'
import type { Plan } from './plan.schema'

/** A thing further off the plot than this stands on ground that nobody measured [m]; own judgement. */
const NEAR_M = 2
/** Radiation that a clear sky may be passed by before it is told [MJ/m² a day]: the last digit of printed normals. */
const PRINTED_MJ = 0.1

/** What the light is reckoned from, as far as it may be in doubt. */
interface Lit {
  readonly plan: Plan
  readonly surface: Surface
  readonly climate: Twelve<MonthClimate>
}

/** What is not known of the things that stand in the light, and what the sky was told by. */
export function lightGaps({ plan, surface, climate }: Lit, tables: ShadeTables): readonly Settlement[] {
  const standing = plan.survey.obstacles.filter((thing) => thingFigures(thing, tables) !== undefined)
  return [
    ...standing.filter(({ heightM }) => heightM === undefined).map(heightGap),
    ...standing.flatMap((thing) => groundGap(thing, surface)),
    ...cappedRadiation(plan, climate),
  ]
}

const gap = (row: Pick<Settlement, 'id' | 'what' | 'mend'>): Settlement => ({
  ...row,
  kind: 'gap',
  zoneId: undefined,
  atM: undefined,
  source: 'own-judgement',
})

const heightGap = ({ id, name, ring: [at] }: Obstacle): Settlement => ({
  ...gap({
    id: `height-${id}`,
    what: `${name} has no height, so it takes no light in our reckoning.`,
    mend: 'Give its height above the ground; an estimate by eye is better than none.',
  }),
  ...(at && { at }),
})

function groundGap({ id, name, kind, ring, heightM, groundM }: Obstacle, surface: Surface): Settlement[] {
  if (!heightM || groundM !== undefined) return []
  const awayM = distanceM(kind === 'house' || kind === 'building' ? closed(ring) : ring, surface.boundary)
  if (awayM <= NEAR_M) return []
  return [
    gap({
      id: `ground-${id}`,
      what: `${name} stands ${Math.round(awayM)} m off the plot: the ground at its foot is taken to be level with the nearest of the plot.`,
      mend: 'Give the level of the ground at its foot: its shadow is longer from higher ground, shorter from lower.',
    }),
  ]
}

const closed = (ring: Ring): Ring => [...ring, ...ring.slice(0, 1)]

function distanceM(line: Ring, boundary: Ring): number {
  return line.some((point) => pointInRing(point, boundary)) ? 0 : lineDistanceM(line, closed(boundary))
}

function cappedRadiation(
  { climate: { months: normals } }: Plan,
  climate: Twelve<MonthClimate>,
): Settlement[] {
  const above = months.filter((month) => {
    const given = normals[month]?.solarMjPerM2
    return given !== undefined && given > climate[month].solarMjPerM2 + PRINTED_MJ
  })
  if (above.length === 0) return []
  return [
    gap({
      id: 'radiation-capped',
      what: `The radiation given for ${above.map((month) => monthNames[month]).join(', ')} is more than a clear sky lets through: that of a clear sky is used.`,
      mend: 'Check the figures and their unit: 1 kWh is 3.6 MJ.',
    }),
  ]
}
