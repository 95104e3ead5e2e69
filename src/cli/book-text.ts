import {
  lengthToText,
  type BookCheck,
  type BookStation,
  type LevelBook,
  type Book,
  type ReducedLevelBook,
  type SurveyMethod,
  type WrittenUnit,
} from '#core/booking'
import { columns, heading, wrapped } from './text-layout'

/** How good a book is: standard errors of its points [m], and the method they come from. */
export interface BookError {
  readonly sdsM: readonly number[]
  readonly method: SurveyMethod
}

/** Widest figure of a book [characters]; figures stand to the right of such a column. */
const WIDTH = 8

/** A reduced level book as text, with its sums, checks and closing. */
export function levelBookText(book: LevelBook, reduced: ReducedLevelBook, error: BookError): string {
  const show = shower(book.unit)
  const rises = reduced.reduction === 'rise-and-fall'
  const middle = rises ? ['rise', 'fall'] : ['collimation']
  const adjusted = reduced.adjusted ? ['adjusted'] : []
  const head = ['back', 'inter', 'fore', ...middle, 'level', ...adjusted].map((name) => name.padStart(WIDTH))
  const rows = reduced.lines.map((line) => [
    String(line.line),
    line.mark ?? '',
    ...[line.backM, line.interM, line.foreM].map(show),
    ...(rises ? [line.riseM, line.fallM] : [line.collimationM]).map(show),
    show(line.levelM),
    ...(reduced.adjusted ? [show(line.adjustedM)] : []),
    line.remark ?? '',
  ])
  const { backM, foreM, riseM, fallM } = reduced.sums
  const sums = [
    '',
    'sum',
    show(backM),
    show(undefined),
    show(foreM),
    ...(rises ? [show(riseM), show(fallM)] : []),
  ]
  return text([
    ...wrapped(`${book.name}: readings and levels in ${unitWords[book.unit]}.`),
    '',
    ...columns(['line', 'mark', ...head, 'remark'], [...rows, filled(sums, head.length + 3)]),
    ...heading('Checks'),
    ...checkLines(reduced.checks, show),
    ...heading('Closing'),
    ...closingLines(book, reduced),
    ...errorLines(error),
  ])
}

/** A book of legs as text: plan distance, level and standard error of every point. */
export function stationsText(book: Book, stations: readonly BookStation[], error: BookError): string {
  const show = shower(book.unit === 'cm' ? 'm' : book.unit)
  const rows = stations.map(({ line, mark, distanceM, levelM }, at) => [
    String(line),
    mark ?? '',
    show(distanceM),
    show(levelM),
    show(error.sdsM[at]),
  ])
  const head = ['distance', 'level', '±'].map((name) => name.padStart(WIDTH))
  return text([
    ...wrapped(
      `${book.name}: plan distances and levels in ${unitWords[book.unit === 'cm' ? 'm' : book.unit]}.`,
    ),
    '',
    ...columns(['line', 'mark', ...head], rows),
    ...errorLines(error),
  ])
}

const unitWords: Readonly<Record<WrittenUnit, string>> = {
  m: 'metres',
  cm: 'centimetres',
  ft: 'feet',
  'ft-in': 'feet and inches',
  'us-ft': 'US survey feet',
}

const shower = (unit: WrittenUnit) => (valueM: number | undefined) =>
  (valueM === undefined ? '' : lengthToText(valueM, unit).replace('-', '−')).padStart(WIDTH)

const filled = (cells: readonly string[], count: number): string[] => [
  ...cells,
  ...Array.from({ length: count - cells.length }, () => ''),
]

function closingLines(book: LevelBook, { closing, setUps, adjusted }: ReducedLevelBook): readonly string[] {
  if (!closing)
    return wrapped(
      'The book ends on no known level: a wrong reading would not show. Close it on a known mark.',
    )
  const { misclosureM, perSetUpM, limit } = closing
  const lines = wrapped(
    `It misses the known level ${(book.endLevelM ?? 0).toFixed(3)} m by ${millimetres(misclosureM)} over ${setUps} set-ups.`,
  )
  const held = limit
    ? wrapped(
        `Allowed: ${limit.allowable.name}, here ${millimetres(limit.limitM)}. ${
          limit.within
            ? 'It is within that.'
            : 'It is beyond that: look for a wrong reading and level the line again before you use it.'
        }`,
      )
    : wrapped('It is held against no rule; --allowable names one.')
  const share = `${adjusted ? 'Shared out' : 'Not shared out; it would be'}: ${millimetres(perSetUpM)} a set-up.`
  return [...lines, ...held, ...wrapped(share)]
}

/** Levels worked out by hand that agree are only counted. */
function checkLines(checks: readonly BookCheck[], show: (valueM: number) => string): readonly string[] {
  const told = checks.filter(({ line, ok }) => line === undefined || !ok)
  const agreeing = checks.length - told.length
  return [
    ...told.flatMap(({ what, expected, found, ok }) =>
      wrapped(`${what}: ${show(expected).trim()} and ${show(found).trim()}.`, ok ? 'agrees   ' : 'DIFFERS  '),
    ),
    ...(agreeing > 0 ? wrapped(`levels worked out by hand: ${agreeing}.`, 'agrees   ') : []),
  ]
}

const millimetres = (valueM: number): string => `${(valueM * 1000).toFixed(1).replace('-', '−')} mm`

function errorLines({ sdsM, method }: BookError): readonly string[] {
  const lastM = sdsM.at(-1) ?? 0
  return [
    ...heading('How good it is'),
    ...wrapped(
      `Standard error of the last level above the first: ${lastM.toFixed(3)} m, from ${method.name}. Two times in three it is no further out than that, if no reading is wrong.`,
    ),
    ...wrapped(method.expect),
  ]
}

const text = (lines: readonly string[]): string => `${lines.join('\n')}\n`
