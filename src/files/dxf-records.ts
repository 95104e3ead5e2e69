import type { Problem } from '#core/units'

/** What stands between two group codes 0: an entity, a vertex, a section mark. */
export interface DxfRecord {
  /** Value of its group code 0, in capitals. */
  readonly type: string
  /** Line of the file that names it. */
  readonly line: number
  readonly codes: readonly number[]
  readonly values: readonly string[]
}

interface Growing {
  readonly type: string
  readonly line: number
  readonly codes: number[]
  readonly values: string[]
}

/** Group code of a remark, which may stand anywhere. */
const REMARK = 999

/**
 * Goes through a text DXF record by record.
 *
 * @param text - the file: pairs of lines, a group code and its value
 * @param visit - is given each record that starts with group code 0
 * @returns what is wrong with the file; undefined when it is whole
 */
export function eachRecord(text: string, visit: (record: DxfRecord) => void): Problem | undefined {
  const lines = lineReader(text.includes('\n') ? text : text.replaceAll('\r', '\n'))
  let record: Growing = { type: '', line: 0, codes: [], values: [] }
  for (let pair = nextPair(lines); pair !== undefined; pair = nextPair(lines)) {
    if ('what' in pair) return pair
    if (pair.code === 0) {
      if (record.type !== '') visit(record)
      record = { type: pair.value.trim().toUpperCase(), line: lines.line(), codes: [], values: [] }
      if (record.type === 'EOF') return undefined
    } else if (pair.code !== REMARK) {
      record.codes.push(pair.code)
      record.values.push(pair.value)
    }
  }
  // Some programs forget the end mark; a drawing that ends with a whole section is whole.
  if (record.type !== 'ENDSEC') return cutOff(lines.line())
  visit(record)
  return undefined
}

interface Lines {
  next: () => string | undefined
  line: () => number
}

/** A group code and its value; undefined at the end of the file. */
function nextPair(lines: Lines): { code: number; value: string } | Problem | undefined {
  const written = lines.next()
  if (written === undefined) return undefined
  const code = groupCode(written)
  const at = lines.line()
  const value = lines.next()
  if (code === undefined)
    return written.trim() === '' && value === undefined ? undefined : noCode(written, at)
  return value === undefined ? cutOff(at) : { code, value }
}

/** First value of a group code, up to an embedded object (group code 101). */
export function valueOf(record: DxfRecord, code: number): string | undefined {
  for (let at = 0; at < record.codes.length; at++) {
    if (record.codes[at] === code) return record.values[at]
    if (record.codes[at] === 101) return undefined
  }
  return undefined
}

/** All values of a group code, in order. */
export function valuesOf(record: DxfRecord, code: number): string[] {
  return record.values.filter((_, at) => record.codes[at] === code)
}

/** A whole number, such as flags; 0 when it is missing or no number. */
export function flagsOf(record: DxfRecord, code: number): number {
  const value = Number.parseInt(valueOf(record, code) ?? '0', 10)
  return Number.isSafeInteger(value) ? value : 0
}

/** Name of the layer a record is on. */
export function layerOf(record: DxfRecord): string {
  const name = (valueOf(record, 8) ?? '').trim()
  return name === '' ? '0' : name
}

function lineReader(text: string): Lines {
  let at = 0
  let count = 0
  return {
    next(): string | undefined {
      if (at >= text.length) return undefined
      const found = text.indexOf('\n', at)
      const end = found < 0 ? text.length : found
      const line = text.slice(at, end > at && text[end - 1] === '\r' ? end - 1 : end)
      at = end + 1
      count++
      return line
    },
    line: () => count,
  }
}

function groupCode(line: string): number | undefined {
  const trimmed = line.trim()
  return /^-?\d{1,4}$/.test(trimmed) ? Number(trimmed) : undefined
}

const noCode = (line: string, at: number): Problem => ({
  where: `line ${at}`,
  what: `A group code (a whole number) must stand here, but the line reads "${line.slice(0, 40)}".`,
  mend: 'The file is damaged or no DXF. Save it again as DXF (text) in the drawing program.',
})

const cutOff = (at: number): Problem => ({
  where: `line ${at}`,
  what: 'The drawing stops in the middle, without its end mark (EOF).',
  mend: 'It may have been cut off when it was copied or sent. Save or copy it again.',
})
