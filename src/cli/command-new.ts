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
import { FOOT_M } from '#core/booking'
import { climateOfPlace } from '#core/climate'
import { newPlan, savePlan } from '#plan'
import type { Outcome } from '#core/units'
import type { GroundSurvey } from '#core/survey'
import { complainOf, readText, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import type { Arguments } from './arguments'
import { groundFromBook, type MeasuredGround } from './ground-from-book'
import { startFromSurvey } from './new-from-survey'
import { withTimeZone } from './time-zone-option'
import { trueFaces } from './true-faces'

/** Starts a plan from a survey file, or from a bank, a profile, levels, a grid or a field book. */
export function start(given: Arguments, console: Console): number | Promise<number> {
  const survey = given.text('survey')
  if (survey !== undefined) return startFromSurvey(survey, given, console)
  const { places } = loadTables()
  const site = siteOf(given)
  const read = groundFrom(given, console)
  const turned = read.ok ? trueFaces(read.value, given, { elevationM: 0, ...site }) : read
  if (!turned.ok) return complainOf(turned.problems, console)
  const { ground, measured } = turned.value
  const moved = toPlotOrigin(ground)
  if (moved.shift)
    console.complain(
      `Coordinates were moved by ${moved.shift.eastM} m east and ${moved.shift.northM} m north to the plot’s own origin.`,
    )
  const plan = newPlan({
    name: given.text('name') ?? 'New plan',
    ground: moved.ground,
    measured,
    places,
    ...site,
  })
  const placeId = given.text('place')
  const place = places.find(({ id }) => id === placeId)
  if (placeId !== undefined && !place)
    throw new UsageError(`There is no place “${placeId}”. Known: ${places.map(({ id }) => id).join(', ')}.`)
  const placed = place ? { ...plan, climate: climateOfPlace(place) } : plan
  writeText(given.text('out'), savePlan(withTimeZone(placed, given)), console)
  return exitCodes.done
}

function siteOf(given: Arguments): { latitudeDeg: number; longitudeDeg: number; elevationM?: number } {
  const elevationM = given.number('elevation')
  const place = { latitudeDeg: needed(given, 'latitude'), longitudeDeg: needed(given, 'longitude') }
  return elevationM === undefined ? place : { ...place, elevationM }
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

function groundFrom(given: Arguments, console: Console): Outcome<MeasuredGround> {
  const asked = [...Object.keys(ways), 'book'].filter((way) => given.text(way) !== undefined)
  const [way] = asked
  if (asked.length !== 1 || way === undefined)
    throw new UsageError('new needs one of --survey, --bank, --profile, --levels, --grid, --book.')
  const what = given.text(way) ?? ''
  const ground = ways[way]?.(what, given)
  if (!ground) return groundFromBook(what, given, console)
  return ground.ok ? { ok: true, value: { ground: ground.value, measured: {} } } : ground
}
