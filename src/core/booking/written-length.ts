/** Units that lengths of a field book are written in. */
export type WrittenUnit = 'm' | 'cm' | 'ft' | 'ft-in' | 'us-ft'

/** Foot of the agreement of 1959 [m], exact. */
export const FOOT_M = 0.3048
/** US survey foot [m], from the Mendenhall order of 1893: 1200/3937 m. */
export const US_SURVEY_FOOT_M = 1200 / 3937
/** Inches in a foot [in]. */
const FOOT_IN = 12

/** Length of a plain number's unit [m]; where feet and inches are written, a plain number counts feet. */
const plainUnitM: Readonly<Record<WrittenUnit, number>> = {
  m: 1,
  cm: 0.01,
  ft: FOOT_M,
  'ft-in': FOOT_M,
  'us-ft': US_SURVEY_FOOT_M,
}

/**
 * A length as it stands in a field book. A unit written beside the figure counts before the book's own; a comma is a
 * decimal mark.
 *
 * @param text - such as "1.234", "123,4 cm", `5' 3 1/2"`, "5 ft 3 in" and, in a book of feet and inches, "5-3 1/2"
 * @param unit - what a figure without a unit is written in
 * @returns the length [m], or undefined when it cannot be read as one
 */
export function lengthFromText(text: string, unit: WrittenUnit): number | undefined {
  const { sign, rest } = signOf(tidy(text))
  const valueM = metric(rest) ?? plain(rest, unit) ?? feetAndInches(rest, unit)
  return valueM === undefined ? undefined : sign * valueM + 0
}

// Keyboards and phones write the same mark in several ways.
function tidy(text: string): string {
  return text
    .trim()
    .replace(/[\u2018\u2019\u2032]/g, "'")
    .replace(/[\u201C\u201D\u2033]|''/g, '"')
    .replace(/^[\u2212\u2013]/, '-')
    .replace(/(?<=\d),(?=\d)/, '.')
}

// The sign belongs to the whole length, inches included.
function signOf(text: string): { sign: number; rest: string } {
  if (text.startsWith('-')) return { sign: -1, rest: text.slice(1).trim() }
  return { sign: 1, rest: text.replace(/^\+/, '').trim() }
}

const FIGURE = String.raw`(?:\d+\.?\d*|\.\d+)`

const metricUnits: readonly { readonly word: RegExp; readonly unitM: number }[] = [
  { word: new RegExp(`^(${FIGURE})\\s*(?:m|met(?:re|er)s?)$`, 'i'), unitM: 1 },
  { word: new RegExp(`^(${FIGURE})\\s*cm$`, 'i'), unitM: 0.01 },
  { word: new RegExp(`^(${FIGURE})\\s*mm$`, 'i'), unitM: 0.001 },
]

function metric(text: string): number | undefined {
  for (const { word, unitM } of metricUnits) {
    const figure = word.exec(text)?.[1]
    if (figure !== undefined) return Number(figure) * unitM
  }
  return undefined
}

const plainFigure = new RegExp(`^${FIGURE}$`)

function plain(text: string, unit: WrittenUnit): number | undefined {
  return plainFigure.test(text) ? Number(text) * plainUnitM[unit] : undefined
}

const INCHES = String.raw`(?:\d+[ -]\d+\/\d+|\d+\/\d+|${FIGURE})`
const FEET_MARK = String.raw`(?:'|f(?:oo|ee)?t\.?)`
const INCH_MARK = String.raw`(?:"|in(?:ch(?:es)?)?\.?)`
const feetWithMark = new RegExp(
  `^(${FIGURE})\\s*${FEET_MARK}(?:\\s*-?\\s*(${INCHES})\\s*${INCH_MARK}?)?$`,
  'i',
)
const inchesAlone = new RegExp(`^(${INCHES})\\s*${INCH_MARK}$`, 'i')
const feetDashInches = new RegExp(`^(\\d+)\\s*-\\s*(${INCHES})$`)

function feetAndInches(text: string, unit: WrittenUnit): number | undefined {
  const footM = unit === 'us-ft' ? US_SURVEY_FOOT_M : FOOT_M
  const alone = inchesAlone.exec(text)?.[1]
  if (alone !== undefined) return scaled(inchesOf(alone), footM / FOOT_IN)
  const match = feetWithMark.exec(text) ?? (unit === 'ft-in' ? feetDashInches.exec(text) : null)
  return match ? scaled(feetOf(match), footM) : undefined
}

function feetOf([, feet, inches]: RegExpExecArray): number | undefined {
  const inchesIn = inchesOf(inches ?? '0')
  return inchesIn === undefined || inchesIn >= FOOT_IN ? undefined : Number(feet) + inchesIn / FOOT_IN
}

// Whole inches, decimal inches or inches with a fraction.
function inchesOf(text: string): number | undefined {
  const [, whole = '0', over, under] = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text) ?? []
  if (over === undefined || under === undefined) return Number(text)
  return Number(over) < Number(under) ? Number(whole) + Number(over) / Number(under) : undefined
}

const scaled = (value: number | undefined, by: number): number | undefined =>
  value === undefined ? undefined : value * by

/** Decimals that the unit is written with: a millimetre, or what comes nearest to it [number of decimals]. */
const decimals: Readonly<Record<Exclude<WrittenUnit, 'ft-in'>, number>> = { m: 3, cm: 1, ft: 3, 'us-ft': 3 }
/** Parts of an inch that are written: sixteenths, as on a tape [parts of an inch]. */
const TAPE_PARTS = 16

/**
 * A length as a field book writes it, without its unit unless it is feet and inches.
 *
 * @param valueM - the length, finite [m]
 * @param unit - what to write it in
 * @param inchParts - smallest part of an inch written: 16 for sixteenths [parts of an inch]
 * @returns such as "1.234" or `5' 3 1/2"`
 * @throws RangeError when the length is not finite
 */
export function lengthToText(valueM: number, unit: WrittenUnit, inchParts = TAPE_PARTS): string {
  if (!Number.isFinite(valueM)) throw new RangeError(`lengthToText: valueM must be finite, got ${valueM}`)
  if (unit === 'ft-in') return feetAndInchesText(valueM, inchParts)
  return (valueM / plainUnitM[unit]).toFixed(decimals[unit]).replace(/^-(0(?:\.0+)?)$/, '$1')
}

function feetAndInchesText(valueM: number, inchParts: number): string {
  const parts = Math.round((Math.abs(valueM) / FOOT_M) * FOOT_IN * inchParts)
  const feet = Math.floor(parts / (FOOT_IN * inchParts))
  const inchesParts = parts - feet * FOOT_IN * inchParts
  const whole = Math.floor(inchesParts / inchParts)
  const fraction = fractionText(inchesParts - whole * inchParts, inchParts)
  const inches = whole > 0 && fraction !== '' ? `${whole} ${fraction}` : fraction || String(whole)
  return `${valueM < 0 && parts > 0 ? '-' : ''}${feet}' ${inches}"`
}

function fractionText(over: number, under: number): string {
  if (over === 0) return ''
  return over % 2 === 0 ? fractionText(over / 2, under / 2) : `${over}/${under}`
}
