/** Space that keeps a figure and its unit on one line. */
const TIED = '\u00A0'

/**
 * A figure with its unit, rounded as a gardener would say it.
 *
 * @param value - the figure, in `unit`
 * @param unit - unit as written, such as "m²"
 * @param decimals - decimals to keep; left out, whole from 10 up and one decimal below
 */
export function withUnit(value: number, unit: string, decimals = Math.abs(value) < 9.95 ? 1 : 0): string {
  const glue = unit === '°' || unit === '' ? '' : TIED
  return `${grouped(value, decimals)}${glue}${unit}`
}

/** A number with thousands apart and a true minus sign. */
export function grouped(value: number, decimals = 0): string {
  const plain = Math.abs(value).toFixed(decimals)
  const [whole = '0', rest] = plain.split('.')
  const apart = whole.replace(/\B(?=(\d{3})+$)/g, ',')
  const negative = value < 0 && Number(plain) !== 0
  return `${negative ? '\u2212' : ''}${apart}${rest ? `.${rest}` : ''}`
}

/** Names in a row: "A, B and C". */
export function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`
}

/** A count with its noun: "1 zone", "3 zones". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${grouped(count)}${TIED}${count === 1 ? one : many}`
}

/** Money from minor units, as "EUR 1,234". */
export function money(minor: number, currency: string): string {
  return `${currency}${TIED}${grouped(minor / 100)}`
}
