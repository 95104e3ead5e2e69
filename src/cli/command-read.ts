import { surveySummary, unitNames, type PartSummary, type SurveyRead } from '#files'
import type { Arguments } from './arguments'
import { complainOf, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import { surveyFile } from './survey-file'

/** Prints what a survey file is understood to hold, and what looks wrong in it. */
export async function read(given: Arguments, console: Console): Promise<number> {
  const [file] = given.words
  if (file === undefined) throw new UsageError('read needs a survey file.')
  const understood = await surveyFile(file, given)
  if (!understood.ok) return complainOf(understood.problems, console)
  const text = given.flag('json') ? jsonOf(understood.value) : textOf(understood.value)
  writeText(given.text('out'), text, console)
  return exitCodes.done
}

function jsonOf(survey: SurveyRead): string {
  const { format, unit, levelUnit, crs, inDegrees, notes, doubts } = survey
  const summary = {
    format,
    unit,
    levelUnit,
    inDegrees: inDegrees ?? false,
    crs: crs && { name: crs.name, epsg: crs.epsg },
    parts: surveySummary(survey),
    columns: columnsOf(survey),
    notes,
    doubts,
  }
  return `${JSON.stringify(summary, (_, value: unknown) => (value === undefined ? null : value), 2)}\n`
}

/** Names of the columns read as mark, east, north, level and code. */
function columnsOf({ table }: SurveyRead): Readonly<Record<string, string>> | undefined {
  if (!table) return undefined
  const held = Object.entries(table.reading).filter(
    (entry): entry is [string, number] => entry[1] !== undefined,
  )
  return Object.fromEntries(held.map(([what, at]) => [what, table.columns[at] ?? `column ${at + 1}`]))
}

function textOf(survey: SurveyRead): string {
  const { format, crs, notes, doubts } = survey
  const columns = columnsOf(survey)
  return [
    `FORMAT  ${format}`,
    `UNIT    ${unitText(survey)}`,
    `SYSTEM  ${crs ? `${crs.name}${crs.epsg === undefined ? '' : ` (EPSG:${crs.epsg})`}` : 'not named'}`,
    ...(columns
      ? [
          `COLUMNS ${Object.entries(columns)
            .map(([what, name]) => `${what} from “${name}”`)
            .join(', ')}`,
        ]
      : []),
    '',
    'PARTS',
    ...surveySummary(survey).flatMap(partLines),
    ...section('NOTES', notes),
    ...section(
      'TO ASK',
      doubts.map(({ where, what, mend }) => `${where}: ${what} ${mend}`),
    ),
    '',
  ].join('\n')
}

function unitText({ unit, levelUnit, inDegrees }: SurveyRead): string {
  const named = unit === undefined ? 'not named' : unitNames[unit]
  if (inDegrees) return `degrees; levels ${named}`
  return levelUnit === undefined || levelUnit === unit ? named : `${named}; levels ${unitNames[levelUnit]}`
}

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)]

function partLines(part: PartSummary): string[] {
  const { extent, lowest, highest } = part
  return [
    `  ${part.name} (${part.id}), ${part.kind}: ${countsOf(part)}`,
    ...(extent
      ? [`    east ${extent.west} to ${extent.east}, north ${extent.south} to ${extent.north}`]
      : []),
    ...(lowest === undefined || highest === undefined ? [] : [`    levels ${lowest} to ${highest}`]),
  ]
}

function countsOf({ cells, empty, points, faces, breaklines, boundaryCorners }: PartSummary): string {
  if (cells)
    return `${cells.columns} × ${cells.rows} cells of ${cells.east}${cells.north === cells.east ? '' : ` × ${cells.north}`}, ${empty} without a level`
  const counts = [
    `${points} points`,
    ...(faces > 0 ? [`${faces} faces`] : []),
    ...(breaklines > 0 ? [`${breaklines} lines`] : []),
    ...(boundaryCorners > 0 ? [`a boundary of ${boundaryCorners} corners`] : []),
  ]
  return counts.join(', ')
}
