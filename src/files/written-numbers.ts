/** Largest figure taken for a coordinate, in any unit: beyond it lies no place on earth in millimetres. */
const LARGEST_COORDINATE = 1e11

const NUMBER = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d{1,3})?$/i
const DECIMAL_COMMA = /^[+-]?\d+,\d+$/

/**
 * The numbers of a list as XML files write them, between white space.
 *
 * @param text - the list; a comma is a decimal comma where numbers stand apart by white space, else it parts them
 * @returns the numbers, or undefined when anything in it is no number
 */
export function numbersIn(text: string): number[] | undefined {
  const trimmed = text.trim()
  if (trimmed === '') return []
  const words = wordsOf(trimmed)
  const numbers: number[] = []
  for (const word of words) {
    const number = numberOf(word)
    if (number === undefined) return undefined
    numbers.push(number)
  }
  return numbers
}

/** One number, with a dot or a decimal comma; undefined when it is none or too large for a coordinate. */
export function numberOf(word: string): number | undefined {
  const dotted = DECIMAL_COMMA.test(word) ? word.replace(',', '.') : word
  if (!NUMBER.test(dotted)) return undefined
  const number = Number(dotted)
  return Math.abs(number) <= LARGEST_COORDINATE ? number : undefined
}

/** "1,5 2,5 3" holds decimal commas; "1.5,2.5,3", "1, 2, 3" and "1,2,3" hold commas that part numbers. */
function wordsOf(text: string): string[] {
  if (!text.includes(',')) return text.split(/\s+/)
  const spaced = text.split(/\s+/)
  if (!text.includes('.') && spaced.length > 1 && spaced.every((word) => /^[^,]+(,[^,]+)?$/.test(word)))
    return spaced
  return text.split(/[\s,]+/).filter((word) => word !== '')
}
