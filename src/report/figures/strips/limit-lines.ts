import { overlaps, type Box } from '../../drawing/path'
import type { Axis } from '../../drawing/axis'
import { textWidthPx } from '../../drawing/text-width'
import { listed } from '../../words/figures-in-words'
import { slopeAt, type GradientProfile } from './gradient-marks'
import type { StripView } from './strip-view.types'

/** A limit across the strip, with its words. */
export interface LimitLine {
  readonly key: string
  readonly yPx: number
  readonly words: string
  readonly at: { readonly xPx: number; readonly yPx: number; readonly anchor: 'start' | 'end' }
  /** Where the words stand. */
  readonly box: Box
}

/** Type of the words, and air around them [px]. */
const TYPE_PX = 11
const AIR_PX = 5

interface Limit {
  readonly limitDeg: number
  readonly names: readonly string[]
}

/** Machines of one limit share a line. */
function limitsOf({ machines }: StripView): Limit[] {
  const degrees = [...new Set(machines.map(({ limitDeg }) => Math.round(limitDeg)))].sort((a, b) => a - b)
  return degrees.map((limitDeg) => ({
    limitDeg,
    names: machines.filter((machine) => Math.round(machine.limitDeg) === limitDeg).map(({ name }) => name),
  }))
}

/**
 * Limits in order of steepness. Words go right of the strip where there is room, else inside it at the flatter
 * end; they give way to the zones' figures, growing shorter until they touch none.
 */
export function limitLines(
  view: StripView,
  axis: Axis,
  widthPx: number,
  profile: Pick<GradientProfile, 'y' | 'figures'>,
): LimitLine[] {
  const limits = limitsOf(view)
  const roomPx = widthPx - axis.endPx - AIR_PX * 2
  const outside = limits.every((limit) => wordsWidthPx(wordings(limit)[0]) <= roomPx)
  const taken = profile.figures.map(({ text, at }) => boxOf(text, { ...at, anchor: 'middle' }))
  return limits.map((limit) => {
    const yPx = profile.y(limit.limitDeg)
    const tries = outside ? outsidePlaces(limit, axis, yPx) : insidePlaces(limit, view, axis, yPx)
    const free = tries.find(({ box }) => !taken.some((other) => overlaps(box, other)))
    const place = free ?? tries.at(-1)
    if (!place) throw new RangeError('limitLines: a limit has no place')
    taken.push(place.box)
    return { key: String(limit.limitDeg), yPx, ...place }
  })
}

type Placed = Pick<LimitLine, 'words' | 'at' | 'box'>

function outsidePlaces(limit: Limit, axis: Axis, yPx: number): Placed[] {
  const at = (byPx: number) => ({
    xPx: axis.endPx + AIR_PX + 1,
    yPx: yPx + 4 + byPx,
    anchor: 'start' as const,
  })
  // Limits close together are told above one another.
  return [0, -12, 12, -24].map((byPx) => placed(wordings(limit)[0], at(byPx)))
}

function insidePlaces(limit: Limit, view: StripView, axis: Axis, yPx: number): Placed[] {
  const left = { xPx: axis.startPx + AIR_PX, yPx: yPx - 3, anchor: 'start' as const }
  const right = { xPx: axis.endPx - AIR_PX, yPx: yPx - 3, anchor: 'end' as const }
  const flatLeft = slopeAt(view.stations, view.lengthM * 0.08) <= slopeAt(view.stations, view.lengthM * 0.92)
  const ends = flatLeft ? [left, right] : [right, left]
  const short = wordings(limit).filter(
    (words) => textWidthPx(words, 'sans', TYPE_PX) <= (axis.endPx - axis.startPx) * INSIDE_SHARE,
  )
  return [...short, `${limit.limitDeg}°`].flatMap((words) => ends.map((end) => placed(words, end)))
}

/** Words over the profile take no more than this share of it. */
const INSIDE_SHARE = 0.42

/** In full, then by the first two words of each name. */
function wordings({ names, limitDeg }: Limit): [string, string] {
  const twoWords = names.map((name) => name.split(' ').slice(0, 2).join(' '))
  return [`${listed(names)} ${limitDeg}°`, `${listed(twoWords)} ${limitDeg}°`]
}

function placed(words: string, at: LimitLine['at']): Placed {
  return { words, at, box: boxOf(words, at) }
}

function boxOf(
  words: string,
  at: { readonly xPx: number; readonly yPx: number; readonly anchor: 'start' | 'middle' | 'end' },
): Box {
  const widthPx = wordsWidthPx(words)
  const leftPx = at.xPx - { start: 0, middle: widthPx / 2, end: widthPx }[at.anchor]
  return { leftPx, rightPx: leftPx + widthPx, topPx: at.yPx - 10, bottomPx: at.yPx + 2 }
}

/** Wide enough for the strong face of the figures too [px]. */
function wordsWidthPx(words: string): number {
  return textWidthPx(words, 'sansBold', TYPE_PX + 1)
}
