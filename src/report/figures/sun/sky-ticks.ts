import { windName } from '#core/units'
import { n } from '../../drawing/path'
import type { SkyScale } from './sky-scale'

/** Heights told on the left, and directions told below [°]. */
const HEIGHT_DEG = 15
const WIND_DEG = 45
const TICK_DEG = { wide: 15, narrow: 45 } as const

/** The four winds, said strongest. */
const CARDINALS = ['N', 'E', 'S', 'W']

/** Marks of the sheet: rows of height, ticks and names of direction. */
export function skyTicks(scale: SkyScale, compact: boolean) {
  const { leftPx, rightPx, basePx } = scale
  const heights = Array.from(
    { length: Math.floor(scale.topDeg / HEIGHT_DEG) + 1 },
    (_, at) => at * HEIGHT_DEG,
  )
  const width = compact ? 'narrow' : 'wide'
  const ticks = asideSteps(scale, TICK_DEG[width])
  return {
    rows: heights
      .slice(1)
      .map((heightDeg) => `M${n(leftPx)} ${n(scale.y(heightDeg))}H${n(rightPx)}`)
      .join(''),
    d: ticks.map((aside) => `M${n(xOf(scale, aside))} ${n(basePx)}v5`).join(''),
    heights: heights.map((heightDeg) => ({ words: `${heightDeg}°`, yPx: scale.y(heightDeg) })),
    winds: asideSteps(scale, WIND_DEG).map((aside) => {
      const words = windWords((scale.middleDeg + aside + 360) % 360)
      return { words, key: aside, xPx: xOf(scale, aside), strong: CARDINALS.includes(words) }
    }),
  }
}

/** The right edge is the left one where the sheet goes all round: place by the way from the middle. */
function xOf({ leftPx, rightPx, halfDeg }: SkyScale, aside: number): number {
  return leftPx + ((aside + halfDeg) / (halfDeg * 2)) * (rightPx - leftPx)
}

function asideSteps({ halfDeg }: SkyScale, stepDeg: number): number[] {
  const count = Math.floor(halfDeg / stepDeg)
  return Array.from({ length: count * 2 + 1 }, (_, at) => (at - count) * stepDeg)
}

const WINDS: Readonly<Record<string, string>> = { north: 'N', south: 'S', east: 'E', west: 'W' }

/** "SW" for "south-west". */
function windWords(azimuthDeg: number): string {
  return windName(azimuthDeg)
    .split('-')
    .map((part) => WINDS[part] ?? part)
    .join('')
}
