import { climateOfPlace } from '#core/climate'
import type { Outcome } from '#core/units'
import { groundOf, type SurveyGround, type SurveyRead, type SurveyWindow, type SurveyWish } from '#files'
import { loadTables } from '#io'
import { newPlan, savePlan, type Plan } from '#plan'
import type { Arguments } from './arguments'
import { complainOf, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import { openDoubts, surveyFile, unitGiven } from './survey-file'
import { withTimeZone } from './time-zone-option'

/** Starts a plan from a survey file of any format. */
export async function startFromSurvey(file: string, given: Arguments, console: Console): Promise<number> {
  const understood = await surveyFile(file, given)
  if (!understood.ok) return complainOf(understood.problems, console)
  const read = understood.value
  const open = openDoubts(read.doubts, given)
  if (open.length > 0) return complainOf(open, console)
  const wish = wishOf(read, given)
  const made = wish.ok ? groundOf(read, wish.value) : wish
  if (!made.ok) return complainOf(made.problems, console)
  for (const note of [...read.notes, ...made.value.notes]) console.complain(note)
  sayShift(made.value, console)
  writeText(given.text('out'), savePlan(planOf(made.value, given)), console)
  return exitCodes.done
}

function wishOf(read: SurveyRead, given: Arguments): Outcome<SurveyWish> {
  const partIds = partsOf(read, given)
  if (!partIds.ok) return partIds
  const unit = unitGiven(given, 'unit') ?? read.unit
  if (unit === undefined)
    return refused('unit', 'The file does not say its unit.', 'Say it: --unit m, ft, us-ft, cm, mm or in.')
  const zero = given.text('zero')
  if (zero !== undefined && zero !== 'keep' && zero !== 'leave-out')
    throw new UsageError(`--zero is keep or leave-out, not “${zero}”.`)
  return {
    ok: true,
    value: {
      partIds: partIds.value,
      unit,
      levelUnit: unitGiven(given, 'level-unit'),
      epsg: given.number('epsg'),
      inDegrees: given.flag('lengths') ? false : undefined,
      zeroLevels: zero,
      window: windowOf(given.text('window')),
    },
  }
}

function refused(where: string, what: string, mend: string): Outcome<never> {
  return { ok: false, problems: [{ where, what, mend }] }
}

/** The part asked for by name or id, several with commas between; the only one when none is. */
function partsOf({ parts }: SurveyRead, given: Arguments): Outcome<string[]> {
  const asked = given.text('part')
  const list = parts.map(({ id, name }) => (id === name ? id : `${name} (${id})`)).join('; ')
  const [only] = parts
  if (asked === undefined)
    return parts.length === 1 && only
      ? { ok: true, value: [only.id] }
      : refused('parts', `The file holds ${parts.length} parts: ${list}.`, 'Choose with --part NAME.')
  const idOf = (word: string) => parts.find(({ id, name }) => id === word || name === word)?.id
  const whole = idOf(asked)
  if (whole !== undefined) return { ok: true, value: [whole] }
  const ids = asked.split(',').map((word) => idOf(word.trim()))
  return ids.every((id) => id !== undefined)
    ? { ok: true, value: ids }
    : refused('parts', `The file has no part “${asked}”.`, `Its parts are: ${list}.`)
}

function windowOf(text: string | undefined): SurveyWindow | undefined {
  if (text === undefined) return undefined
  const [west = NaN, south = NaN, east = NaN, north = NaN, ...more] = text.split(',').map(Number)
  if (!(west < east && south < north) || more.length > 0)
    throw new UsageError(`--window needs WEST,SOUTH,EAST,NORTH in the file’s own coordinates, not “${text}”.`)
  return { west, south, east, north }
}

function sayShift({ shift }: SurveyGround, console: Console): void {
  if (shift)
    console.complain(
      `Coordinates were moved by ${shift.eastM} m east and ${shift.northM} m north to the plot’s own origin.`,
    )
}

function planOf({ ground, boundary, site }: SurveyGround, given: Arguments): Plan {
  const { places } = loadTables()
  const elevationM = given.number('elevation')
  const placeId = given.text('place')
  const place = places.find(({ id }) => id === placeId)
  if (placeId !== undefined && !place)
    throw new UsageError(`There is no place “${placeId}”. Known: ${places.map(({ id }) => id).join(', ')}.`)
  const plan = newPlan({
    name: given.text('name') ?? 'New plan',
    ground,
    latitudeDeg: placed(given, 'latitude', site?.latitudeDeg),
    longitudeDeg: placed(given, 'longitude', site?.longitudeDeg),
    places,
    ...(elevationM === undefined ? {} : { elevationM }),
  })
  const survey = boundary ? { ...plan.survey, boundary: [...boundary] } : plan.survey
  return withTimeZone({ ...plan, survey, ...(place ? { climate: climateOfPlace(place) } : {}) }, given)
}

/** What the person says counts more than what the file tells. */
function placed(given: Arguments, name: string, told: number | undefined): number {
  const value = given.number(name) ?? told
  if (value === undefined)
    throw new UsageError(`The file does not tell where on the globe it lies: new needs --${name}, or --epsg.`)
  return value
}
