import type { SurveyMethod } from '#core/booking'

/** What every sheet asks for at its head, and what the kind of book asks besides. */
const always = ['Place', 'Day', 'Measured by', 'Weather'] as const
const asked: Readonly<Record<NonNullable<SurveyMethod['book']>, readonly string[]>> = {
  'level-book': ['First mark and its level [m]', 'Last mark and its level [m]', 'Unit of the staff'],
  chain: ['Starts at, level [m]', 'Compass bearing down the slope [°]', 'Width of the bank [m]'],
  steps: ['Span of a step [m]', 'Starts at, level [m]', 'Compass bearing down the slope [°]'],
  string: ['Starts at, level [m]', 'Compass bearing down the slope [°]', 'Width of the bank [m]'],
}

/**
 * Blanks at the head of a method's sheet.
 *
 * @param method - the method
 * @returns what to write there, units in brackets
 */
export function sheetHeads({ book }: SurveyMethod): readonly string[] {
  return [...always, ...(book === null ? ['Coordinate system and unit'] : asked[book])]
}
