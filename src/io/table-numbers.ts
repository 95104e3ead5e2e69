/** How a table writes its numbers. */
export interface NumberStyle {
  readonly decimalMark: '.' | ','
  /** What stands between thousands, where it was seen. */
  readonly thousandsMark: '.' | ',' | undefined
  /** True when commas could be decimal marks or stand between thousands, and nothing tells which. */
  readonly unclear: boolean
}

/** Shapes of written numbers that tell what a comma and a point mean. */
const shapes = {
  commaThousands: /^[-+]?\d{1,3}(,\d{3})+\.\d+$|^[-+]?\d{1,3}(,\d{3}){2,}$/,
  pointThousands: /^[-+]?\d{1,3}(\.\d{3})+,\d+$|^[-+]?\d{1,3}(\.\d{3}){2,}$/,
  commaDecimal: /^[-+]?\d*,\d+$/,
  pointDecimal: /^[-+]?\d*\.\d+$/,
  eitherComma: /^[-+]?[1-9]\d{0,2},\d{3}$/,
} as const

/**
 * Tells decimal mark and thousands mark from the cells of a table.
 *
 * @param cells - the table's cells
 * @returns the style, and whether it is unclear
 */
export function numberStyleOf(cells: readonly string[]): NumberStyle {
  const plain = cells.map(withoutGaps)
  const seen = (shape: RegExp) => plain.some((cell) => shape.test(cell))
  const commas = plain.filter((cell) => shapes.commaDecimal.test(cell))
  const either = commas.length > 0 && commas.every((cell) => shapes.eitherComma.test(cell))
  if (seen(shapes.commaThousands)) return style('.', ',', commas.length > 0 && !either)
  if (seen(shapes.pointThousands)) return style(',', '.', false)
  const points = seen(shapes.pointDecimal)
  if (commas.length === 0) return style('.', undefined, false)
  if (either) return points ? style('.', ',', true) : style(',', undefined, true)
  return style(',', undefined, points)
}

const style = (
  decimalMark: '.' | ',',
  thousandsMark: '.' | ',' | undefined,
  unclear: boolean,
): NumberStyle => ({ decimalMark, thousandsMark, unclear })

/** Blanks and apostrophes that some write between thousands. */
const withoutGaps = (text: string): string => text.trim().replace(/(?<=\d)[\s'’](?=\d{3}(\D|$))/g, '')

/**
 * A figure as written, with either decimal mark.
 *
 * @param text - such as "12.5", "-3,25", "4 ", "1,234.5"
 * @param decimalMark - the table's decimal mark
 * @param thousandsMark - what stands between thousands, if anything but a blank or apostrophe
 * @returns the number, or undefined when the text is not one
 */
export function toNumber(
  text: string,
  decimalMark: '.' | ',',
  thousandsMark?: '.' | ',',
): number | undefined {
  const whole =
    thousandsMark === undefined ? withoutGaps(text) : withoutGaps(text).split(thousandsMark).join('')
  const plain = (decimalMark === ',' ? whole.replace(',', '.') : whole).replace(/^\u2212/, '-')
  if (!/^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(plain)) return undefined
  const value = Number(plain)
  return Number.isFinite(value) ? value : undefined
}

/** Whether a cell looks like a number in any style. */
export function looksNumeric(cell: string): boolean {
  const plain = withoutGaps(cell)
  return toNumber(plain, '.') !== undefined || Object.values(shapes).some((shape) => shape.test(plain))
}
