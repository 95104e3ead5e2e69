import type { Outcome, Problem } from '#core/units'
import type { FarPlace } from './skyline'

/** Lines at fault that are told; more are counted. */
const MOST_TOLD = 5

/**
 * Directions and heights as they are pasted: two figures a line, apart by tabs, semicolons, spaces or, where the
 * decimals have points, by a comma. A first line without figures is a heading.
 */
export function readSkyline(text: string): Outcome<readonly FarPlace[]> {
  const lines = text.split(/\r?\n/).map((line, at) => ({ line: line.trim(), row: at + 1 }))
  const written = lines.filter(({ line }) => line !== '')
  const rows = /\d/.test(written[0]?.line ?? '') ? written : written.slice(1)
  const read = rows.map(({ line, row }) => ({ row, line, figures: figuresOf(line) }))
  const faults = read.filter(({ figures }) => figures === undefined)
  if (rows.length === 0) return { ok: false, problems: [nothing] }
  if (faults.length > 0) return { ok: false, problems: faults.slice(0, MOST_TOLD).map(faultOf) }
  return { ok: true, value: read.flatMap(({ figures }) => figures ?? []) }
}

function figuresOf(line: string): FarPlace | undefined {
  const cells = line
    .replace(/°/g, ' ')
    .split(/[\t;]|\s+/)
    .filter((cell) => cell !== '' && cell !== ',')
  const parts =
    cells.length === 1 ? line.replace(/°/g, '').split(',') : cells.map((cell) => cell.replace(/,$/, ''))
  const [azimuthDeg, angleDeg] = parts.map(figureOf)
  return parts.length !== 2 || azimuthDeg === undefined || angleDeg === undefined
    ? undefined
    : { azimuthDeg, angleDeg }
}

function figureOf(cell: string): number | undefined {
  const plain = cell
    .trim()
    .replace(',', '.')
    .replace(/^\u2212/, '-')
  const value = Number(plain)
  return plain === '' || !Number.isFinite(value) ? undefined : value
}

const nothing: Problem = {
  where: 'pasted lines',
  what: 'There is nothing in them.',
  mend: 'Write a direction and a height on each line, such as 135 6.5.',
}

const faultOf = ({ row, line }: { readonly row: number; readonly line: string }): Problem => ({
  where: `Line ${row}`,
  what: `“${line.slice(0, 40)}” is no direction and height.`,
  mend: 'Write two figures, such as 135 6.5.',
})
