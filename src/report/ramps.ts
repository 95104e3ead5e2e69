/** Even steps of colour for what varies down the slope; measured in tests/report/ramps.test.ts. */
export const ramps = {
  /** Parched to soaked. */
  wetness: ['#f9e6b9', '#c4cca6', '#92b1a3', '#6095a6', '#417592', '#285478', '#123560'],
  /** Shade to full sun. */
  sun: ['#373353', '#624b6a', '#8d647b', '#b28172', '#d99e61', '#f0c87b', '#fff295'],
  /** Level to steep. */
  gradient: ['#f3eee6', '#d7c3b0', '#bc997b', '#8f6e56', '#71503d', '#4e2f22'],
  /** Few hours to many. */
  hours: ['#f3e7f2', '#dcbace', '#c390ac', '#996680', '#7f4864', '#5f2644'],
  /** Drier to wetter; always printed with its sign. */
  change: ['#8f521b', '#b88958', '#d8c2a3', '#dfeaeb', '#93b9d4', '#5a8bb5', '#235488'],
} as const

export type RampName = keyof typeof ramps

/** The two words-on-fill colours, the same in both themes. */
const WORD_DARK = '#15211d'
const WORD_LIGHT = '#ffffff'

/**
 * Colour of a step of a ramp.
 *
 * @param ramp - which ramp
 * @param share - where the value lies between the ramp's ends, 0 to 1
 * @returns the step's colour, as #rrggbb
 * @throws RangeError when the share is outside 0 to 1
 */
export function rampColour(ramp: RampName, share: number): string {
  if (!(share >= 0 && share <= 1)) throw new RangeError(`rampColour: share must be 0 to 1, got ${share}`)
  const steps = ramps[ramp]
  return steps[Math.min(steps.length - 1, Math.floor(share * steps.length))] ?? steps[0]
}

/** Dark or light words on a fill, whichever reads better. */
export function wordOn(fill: string): string {
  return contrast(fill, WORD_DARK) >= contrast(fill, WORD_LIGHT) ? WORD_DARK : WORD_LIGHT
}

/**
 * Contrast ratio of two colours.
 *
 * @see WCAG 2.2, definitions of relative luminance and contrast ratio
 */
export function contrast(one: string, other: string): number {
  const [lighter, darker] = [luminance(one), luminance(other)].sort((a, b) => b - a)
  return ((lighter ?? 0) + 0.05) / ((darker ?? 0) + 0.05)
}

function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => linear(parseInt(colour.slice(at, at + 2), 16) / 255))
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0)
}

function linear(channel: number): number {
  return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4
}
