import { lengthFromText, type WrittenUnit } from '#core/booking'

/** What the figures of a column are written in. */
export type ColumnUnit = WrittenUnit | 'mm' | 'in'

/** Words that name a unit in a heading. */
const words: readonly { readonly unit: ColumnUnit; readonly word: RegExp }[] = [
  { unit: 'ft-in', word: /^(ft-?in|ft[ ,]in|feet( and |, )inches|'\s*")$/i },
  { unit: 'us-ft', word: /^(us-?ft|ftus|us survey f(oo|ee)t)$/i },
  { unit: 'ft', word: /^(ft|f(oo|ee)t|')$/i },
  { unit: 'in', word: /^(in|inch(es)?|")$/i },
  { unit: 'mm', word: /^(mm|millimet(re|er)s?)$/i },
  { unit: 'cm', word: /^(cm|centimet(re|er)s?)$/i },
  { unit: 'm', word: /^(m|met(re|er)s?)$/i },
]

/**
 * The unit that a heading names.
 *
 * @param text - such as "m" or "feet"
 * @returns the unit, or undefined when it is none of ours
 */
export function columnUnitOf(text: string): ColumnUnit | undefined {
  return words.find(({ word }) => word.test(text.trim()))?.unit
}

/**
 * A length of a column.
 *
 * @param text - the cell
 * @param unit - what the column is written in
 * @returns the length [m], or undefined when it is none
 */
export function columnLengthM(text: string, unit: ColumnUnit): number | undefined {
  if (unit !== 'mm' && unit !== 'in') return lengthFromText(text, unit)
  return lengthFromText(`${text} ${unit}`, 'm') ?? lengthFromText(/[a-z'"]/i.test(text) ? text : '', 'm')
}

/**
 * Unit of distances and places in a book: readings in centimetres stand beside distances in metres.
 *
 * @param unit - unit of the readings
 * @returns unit of the distances
 */
export function placeUnitOf(unit: WrittenUnit): WrittenUnit {
  return unit === 'cm' ? 'm' : unit
}
