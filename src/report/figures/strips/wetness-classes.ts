import { ramps } from '../../ramps'

/** How wet a month is called, from parched to soaked. */
export const wetnessWords = ['parched', 'dry', 'dryish', 'fresh', 'moist', 'wet', 'soaked'] as const

export type WetnessStep = 0 | 1 | 2 | 3 | 4 | 5 | 6

/**
 * Where one word ends and the next begins: water that plants can take over what the soil can hold, mean of the
 * month [ratio]; 1 is field capacity. Our own judgement, and said under every drawing that uses them.
 */
export const wetnessLimits = [0.2, 0.35, 0.55, 0.85, 1.02, 1.2] as const

/** The step of a month, 0 parched to 6 soaked. */
export function wetnessStep(fullness: number): WetnessStep {
  return wetnessLimits.filter((limit) => fullness >= limit).length as WetnessStep
}

export function wetnessWord(fullness: number): string {
  return wetnessWords[wetnessStep(fullness)]
}

export function wetnessColour(fullness: number): string {
  return ramps.wetness[wetnessStep(fullness)]
}

/** The scale in words, for keys and notes. */
export function wetnessKeyWords(): string {
  const percent = wetnessLimits.map((limit) => Math.round(limit * 100))
  return `Mean water in the soil, of what it can hold for plants: parched under ${percent[0]} %, dry under ${percent[1]} %, dryish under ${percent[2]} %, fresh under ${percent[3]} %, moist to ${percent[4]} %, wet to ${percent[5]} %, soaked above.`
}
