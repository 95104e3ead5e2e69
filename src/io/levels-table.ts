import type { Outcome, Problem } from '#core/units'
import type { LevelsSurvey, ProfileSurvey } from '#core/survey'
import type { LevelColumns } from './level-columns'
import { toNumber } from './table-numbers'
import type { TextTable } from './text-table'

export interface ProfileColumns {
  readonly distance: number
  readonly level: number
}

/** Words that head the columns of a profile. */
const headings = {
  distance: /^(dist(ance)?(m| ?\(m\))?|chainage|d|x)$/i,
  level: /^(level(m| ?\(m\))?|height(m| ?\(m\))?|elevation|rl|z|h)$/i,
} as const

/**
 * Guesses which columns hold distance and level, for the person to confirm.
 *
 * @param table - the table as read
 * @returns column indices; the first two when the headings do not tell
 */
export function guessProfileColumns(table: TextTable): ProfileColumns {
  const find = (heading: RegExp) => table.columns.findIndex((column) => heading.test(column))
  const distance = find(headings.distance)
  const level = find(headings.level)
  return distance >= 0 && level >= 0 ? { distance, level } : { distance: 0, level: 1 }
}

/**
 * Spot levels from a table.
 *
 * @param table - the table as read
 * @param columns - which column holds what
 * @param metresPerUnit - length of the table's unit [m], such as 0.3048 for feet
 * @returns a levels survey, or every row that cannot be used, named by its line
 */
export function levelsFromTable(
  table: TextTable,
  columns: LevelColumns,
  metresPerUnit = 1,
): Outcome<LevelsSurvey> {
  const problems: Problem[] = []
  const points = table.rows.flatMap((row, index) => {
    const line = table.lines[index] ?? index + 1
    const read = (column: number, name: string) => figure(table, row[column], { line, name, problems })
    const eastM = read(columns.east, 'east')
    const northM = read(columns.north, 'north')
    const levelM = read(columns.level, 'level')
    if (eastM === undefined || northM === undefined || levelM === undefined) return []
    const word = (column: number | undefined) =>
      column === undefined ? '' : (row[column] ?? '').slice(0, LONGEST_WORD)
    const mark = word(columns.mark)
    const code = word(columns.code)
    return [
      {
        ...(mark ? { mark } : {}),
        ...(code ? { code } : {}),
        eastM: eastM * metresPerUnit,
        northM: northM * metresPerUnit,
        levelM: levelM * metresPerUnit,
      },
    ]
  })
  if (problems.length > 0) return { ok: false, problems }
  return points.length < 3
    ? { ok: false, problems: [tooFew('levels', 3, points.length)] }
    : { ok: true, value: { kind: 'levels', points } }
}

/** Distance and level pairs from a table; the person says direction and width. */
export function stationsFromTable(
  table: TextTable,
  columns: ProfileColumns,
  metresPerUnit = 1,
): Outcome<ProfileSurvey['stations']> {
  const problems: Problem[] = []
  const stations = table.rows.flatMap((row, index) => {
    const line = table.lines[index] ?? index + 1
    const distanceM = figure(table, row[columns.distance], { line, name: 'distance', problems })
    const levelM = figure(table, row[columns.level], { line, name: 'level', problems })
    return distanceM === undefined || levelM === undefined
      ? []
      : [{ distanceM: distanceM * metresPerUnit, levelM: levelM * metresPerUnit }]
  })
  if (problems.length > 0) return { ok: false, problems }
  return stations.length < 2
    ? { ok: false, problems: [tooFew('stations', 2, stations.length)] }
    : { ok: true, value: stations }
}

/** Letters kept of a mark or a code. */
const LONGEST_WORD = 60

interface Reading {
  readonly line: number
  readonly name: string
  readonly problems: Problem[]
}

function figure(table: TextTable, text: string | undefined, reading: Reading): number | undefined {
  const value = toNumber(text ?? '', table.decimalMark, table.thousandsMark)
  if (value === undefined)
    reading.problems.push({
      where: `line ${reading.line}, ${reading.name}`,
      what: text ? `“${text}” is not a number.` : `There is no ${reading.name}.`,
      mend: `Write the ${reading.name} as a plain number such as 12.35, or take the line out.`,
    })
  return value
}

const tooFew = (what: string, needed: number, found: number): Problem => ({
  where: 'table',
  what: `Only ${found} usable ${what}.`,
  mend: `At least ${needed} are needed.`,
})
