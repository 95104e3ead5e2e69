import type { LengthUnit } from './survey-read.types'

/** Length of each unit [m]; the foot by the agreement of 1959, the US survey foot by the Mendenhall order of 1893. */
export const unitLengthM: Readonly<Record<LengthUnit, number>> = {
  m: 1,
  cm: 0.01,
  mm: 0.001,
  ft: 0.3048,
  'us-ft': 1200 / 3937,
  in: 0.0254,
}

/** What each unit is called in a sentence. */
export const unitNames: Readonly<Record<LengthUnit, string>> = {
  m: 'metres',
  cm: 'centimetres',
  mm: 'millimetres',
  ft: 'feet',
  'us-ft': 'US survey feet',
  in: 'inches',
}

/** Words that name a unit in headings and in files. */
const words: readonly { readonly unit: LengthUnit; readonly word: RegExp }[] = [
  {
    unit: 'us-ft',
    word: /^(us-?ft|ftus|us[ _-]?survey[ _-]?f(oo|ee)t|f(oo|ee)t[ _-]?us|ussurveyfoot|sft)$/i,
  },
  { unit: 'ft', word: /^(ft|f(oo|ee)t|'|′|international[ _-]?f(oo|ee)t)$/i },
  { unit: 'in', word: /^(in|inch(es)?|"|″)$/i },
  { unit: 'mm', word: /^(mm|millimet(re|er)s?)$/i },
  { unit: 'cm', word: /^(cm|centimet(re|er)s?)$/i },
  { unit: 'm', word: /^(m|met(re|er)s?|mtr)$/i },
]

/**
 * The unit that a word names.
 *
 * @param word - such as "m", "ft", "USSurveyFoot"
 * @returns the unit, or undefined
 */
export function unitOfWord(word: string): LengthUnit | undefined {
  return words.find((one) => one.word.test(word.trim()))?.unit
}
