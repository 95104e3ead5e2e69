import {
  bankFromText,
  guessLevelColumns,
  guessProfileColumns,
  levelsFromTable,
  loadTables,
  readAsciiGrid,
  readTextTable,
  stationsFromTable,
  toPlotOrigin,
} from '#io'
import { climateOfPlace } from '#core/climate'
import { newPlan, savePlan } from '#plan'
import type { Outcome } from '#core/units'
import type { GroundSurvey } from '#core/survey'
import { complainOf, readText, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import type { Arguments } from './arguments'

/** International foot [m], exact by the agreement of 1959. */
const FOOT_M = 0.3048

/** Starts a plan from a bank, a profile, levels or a grid. */
export function start(given: Arguments, console: Console): number {
  const ground = groundFrom(given)
  if (!ground.ok) return complainOf(ground.problems, console)
  const { places } = loadTables()
  const moved = toPlotOrigin(ground.value)
  if (moved.shift)
    console.complain(
      `Coordinates were moved by ${moved.shift.eastM} m east and ${moved.shift.northM} m north to the plot’s own origin.`,
    )
  const plan = newPlan({
    name: given.text('name') ?? 'New plan',
    ground: moved.ground,
    latitudeDeg: needed(given, 'latitude'),
    longitudeDeg: needed(given, 'longitude'),
    places,
    ...elevationOf(given),
  })
  const placeId = given.text('place')
  const place = places.find(({ id }) => id === placeId)
  if (placeId !== undefined && !place)
    throw new UsageError(`There is no place “${placeId}”. Known: ${places.map(({ id }) => id).join(', ')}.`)
  writeText(given.text('out'), savePlan(place ? { ...plan, climate: climateOfPlace(place) } : plan), console)
  return exitCodes.done
}

function elevationOf(given: Arguments): { elevationM?: number } {
  const elevationM = given.number('elevation')
  return elevationM === undefined ? {} : { elevationM }
}

function needed(given: Arguments, name: string): number {
  const value = given.number(name)
  if (value === undefined) throw new UsageError(`new needs --${name}.`)
  return value
}

/** Ways to start, by the option that asks for them. */
const ways: Readonly<Record<string, (text: string, given: Arguments) => Outcome<GroundSurvey>>> = {
  bank: (text) => bankFromText(text),
  levels: (file, given) => {
    const table = readTextTable(readText(file))
    return table.ok ? levelsFromTable(table.value, guessLevelColumns(table.value), unitM(given)) : table
  },
  profile: (file, given) => {
    const table = readTextTable(readText(file))
    if (!table.ok) return table
    const stations = stationsFromTable(table.value, guessProfileColumns(table.value), unitM(given))
    return stations.ok
      ? {
          ok: true,
          value: {
            kind: 'profile',
            distancesAre: given.flag('taped') ? 'slope' : 'plan',
            stations: stations.value,
            facesDeg: needed(given, 'faces'),
            widthM: needed(given, 'width'),
          },
        }
      : stations
  },
  grid: (file) => readAsciiGrid(readText(file)),
}

const unitM = (given: Arguments): number => (given.flag('feet') ? FOOT_M : 1)

function groundFrom(given: Arguments): Outcome<GroundSurvey> {
  const asked = Object.keys(ways).filter((way) => given.text(way) !== undefined)
  const [way] = asked
  const read = way === undefined ? undefined : ways[way]
  if (asked.length !== 1 || way === undefined || !read)
    throw new UsageError('new needs one of --bank, --profile, --levels, --grid.')
  return read(given.text(way) ?? '', given)
}
