/** Longest text that may be a level [letters]: a number with the codes of its font. */
const LONGEST_LEVEL = 200

/** Letters of a text or name that are looked at. */
const LONGEST_TEXT = 1000

const LEVEL = /^[+±-]?\d{1,6}([.,]\d{1,6})?\s?m?$/

/**
 * The level that a text of a drawing states.
 *
 * @param written - the text with its formatting codes
 * @returns the level; undefined when the text is anything but one number, with "m" behind it or not
 */
export function levelInText(written: string): number | undefined {
  if (written.length > LONGEST_LEVEL) return undefined
  const plain = plainText(written).trim()
  if (!LEVEL.test(plain)) return undefined
  return Number(plain.replace('±', '').replace(',', '.').replace(/\s?m$/, ''))
}

/**
 * A text or name of a drawing without formatting codes.
 *
 * @param written - as in the file: %%p, \U+00B0, {\fArial;12.3}
 * @returns the letters that are seen
 */
export function plainText(written: string): string {
  if (!/[\\%{}]/.test(written)) return written.slice(0, LONGEST_TEXT)
  return written
    .slice(0, LONGEST_TEXT)
    .replace(/\\U\+([0-9a-f]{4})/gi, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)))
    .replace(/%%p/gi, '±')
    .replace(/%%[douk]/gi, '')
    .replace(/\\[P~]/g, ' ')
    .replace(/\\[LlOoKk]/g, '')
    .replace(/\\[A-Za-z][^;\\]{0,80};/g, '')
    .replace(/[{}]/g, '')
}
