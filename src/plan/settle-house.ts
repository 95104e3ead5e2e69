import type { HouseFall, Section } from '#core/terrain'
import type { Settlement } from './findings.types'
import { fallsTowardsHouse, placeOn } from './house-sight'
import type { Plan } from './plan.schema'

/** Ground that falls towards a wall by less than this counts as level: 1 in 100 [m/m]; own judgement. */
const TOWARDS_GRADIENT = 0.01

/** The first metres should fall away from a house by at least this: 1 in 50 [m/m]; common practice, from memory. */
const AWAY_GRADIENT = 0.02

const MEND =
  'Stop it and lead it away before the house, by a drain that a drainage contractor sizes. Never send it to a neighbour; local rules say where it may go.'

/**
 * What the ground beside houses does to them: a danger where it falls towards a wall, a gap where the first metres
 * hardly fall away.
 */
export function houseSettlements(
  plan: Plan,
  section: Section,
  houses: readonly HouseFall[],
): readonly Settlement[] {
  const towards = houses.filter(({ towardsGradient }) => towardsGradient >= TOWARDS_GRADIENT)
  const general = towards.length === 0 && fallsTowardsHouse(plan, section) ? [towardsSome] : []
  return [
    ...general,
    ...towards.map((fall, at) => towardsOne(fall, section, at === 0)),
    ...houses.filter(isNearlyLevel).map((fall) => nearlyLevel(fall)),
  ]
}

const towardsSome: Settlement = {
  id: 'towards-house',
  kind: 'danger',
  what: 'The ground falls towards the house: its water ends at the wall.',
  mend: MEND,
  zoneId: undefined,
  atM: undefined,
  source: 'common-practice',
}

function towardsOne(fall: HouseFall, section: Section, isFirst: boolean): Settlement {
  const { name, obstacleId, towardsGradient, towardsM, reachM, at } = fall
  return {
    id: isFirst ? 'towards-house' : `towards-house-${obstacleId}`,
    kind: 'danger',
    what: `Within ${reachM} m of ${name} the ground falls 1 in ${oneIn(towardsGradient)} towards its wall and stands ${towardsM.toFixed(2)} m above its foot: its water ends at the wall. The first metres should fall away, usually 1 in 20 to 1 in 50.`,
    mend: MEND,
    zoneId: undefined,
    atM: at && alongSection(section, at),
    ...(at && { at }),
    source: 'irc-r401-3',
  }
}

// Walls with the ground neither towards them nor well away.
function isNearlyLevel({ walls, towardsGradient }: HouseFall): boolean {
  return (
    towardsGradient < TOWARDS_GRADIENT &&
    walls.length > 0 &&
    walls.every(({ gradient }) => gradient > -AWAY_GRADIENT)
  )
}

function nearlyLevel({ name, obstacleId, reachM }: HouseFall): Settlement {
  return {
    id: `level-house-${obstacleId}`,
    kind: 'gap',
    what: `Within ${reachM} m of ${name} the ground hardly falls away: less than 1 in 50.`,
    mend: 'Measure it more closely. The first metres should fall away, usually 1 in 20 to 1 in 50; the local building code says how much.',
    zoneId: undefined,
    atM: undefined,
    source: 'irc-r401-3',
  }
}

const oneIn = (gradient: number): string => {
  const run = 1 / gradient
  return run < 10 ? String(Number(run.toFixed(1))) : String(Math.round(run))
}

// Undefined beside the section's ends.
function alongSection(section: Section, at: { eastM: number; northM: number }): number | undefined {
  const { alongM } = placeOn(section, at)
  return alongM >= 0 && alongM <= section.lengthM ? alongM : undefined
}
