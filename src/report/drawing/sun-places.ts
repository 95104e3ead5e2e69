import { boxIndex, type BoxIndex } from './box-index'
import type { PlacedLabel } from './labels'
import { crosses, openParts } from './open-line'
import { overlaps, polyline, type Box, type Px } from './path'
import type { NoonLight } from './sun-rays'
import { textWidthPx } from './text-width'

/** A noon's light as it is drawn: its rays, and its sun where that has room. */
export interface DrawnSun {
  readonly light: NoonLight
  readonly rays: string
  readonly words: string
  /** Undefined when the sun and its words find no free place; the caption then has the words. */
  readonly disc: SunDisc | undefined
}

export interface SunDisc {
  readonly at: Px
  readonly wordsAt: Px
  readonly box: Box
}

/** Where suns may stand, and what they and their rays keep off. */
export interface SunRoom {
  readonly bounds: Box
  /** Parts of the sheet that rays do not enter: the answer, the small plan. */
  readonly keepClear: readonly Box[]
  /** Ground, crowns and buildings, which suns stand clear of. */
  readonly taken: readonly Box[]
  readonly labels: readonly PlacedLabel[]
}

/** Radius of the drawn sun, size of its words, and air around them [px]. */
export const SUN_PX = 7
const WORDS_PX = 12
const AIR_PX = 5

/** A ray starts this far over the ground, and is left out when less of it can be seen [px]. */
const OVER_GROUND_PX = 3
const LEAST_RAY_PX = 18

/** A sun is tried at these shares of its ray's length: far off first. */
const TRIED = [1, 0.88, 0.76, 0.64, 0.52, 0.4] as const

/** Draws the rays of every noon clear of words, and finds its sun a free place at the end of one of them. */
export function placeSuns(lights: readonly NoonLight[], room: SunRoom): DrawnSun[] {
  const taken = boxIndex([...room.taken, ...room.keepClear, ...room.labels.map(({ box }) => box)])
  const discs: (SunDisc | undefined)[] = []
  for (const light of lights) discs.push(placeDisc(light, { ...room, taken }, discs))
  const words = [...room.labels.map(({ box }) => box), ...discs.flatMap((disc) => (disc ? [disc.box] : []))]
  return lights.map((light, at) => ({
    light,
    words: sunWords(light),
    disc: discs[at],
    rays: light.feet.map((foot) => rayPath(light, foot, { keepClear: room.keepClear, words })).join(''),
  }))
}

function sunWords({ sun }: NoonLight): string {
  return `${sun.when} noon, ${Math.round(sun.heightDeg)}° high`
}

type IndexedRoom = Omit<SunRoom, 'taken'> & { readonly taken: BoxIndex }

function placeDisc(
  light: NoonLight,
  room: IndexedRoom,
  others: readonly (SunDisc | undefined)[],
): SunDisc | undefined {
  const feet = light.sun.when === 'midsummer' ? light.feet : [...light.feet].reverse()
  for (const share of TRIED)
    for (const foot of feet)
      for (const wordsToRight of [true, false]) {
        const at = along(foot, light.direction, light.longPx * share + SUN_PX + OVER_GROUND_PX)
        const disc = discAt(at, sunWords(light), wordsToRight)
        if (isFree(disc.box, room, others) && openRay(light, foot, at, room)) return disc
      }
  return undefined
}

function discAt(at: Px, words: string, wordsToRight: boolean): SunDisc {
  const widePx = textWidthPx(words, 'sans', WORDS_PX)
  const nearPx = SUN_PX + AIR_PX
  return {
    at,
    wordsAt: { xPx: wordsToRight ? at.xPx + nearPx : at.xPx - nearPx - widePx, yPx: at.yPx + 4 },
    box: {
      leftPx: at.xPx - nearPx - (wordsToRight ? 0 : widePx),
      rightPx: at.xPx + nearPx + (wordsToRight ? widePx : 0),
      topPx: at.yPx - nearPx,
      bottomPx: at.yPx + nearPx,
    },
  }
}

function isFree(box: Box, room: IndexedRoom, others: readonly (SunDisc | undefined)[]): boolean {
  const { bounds } = room
  return (
    box.leftPx >= bounds.leftPx &&
    box.rightPx <= bounds.rightPx &&
    box.topPx >= bounds.topPx &&
    !room.taken.hits(box) &&
    !others.some((other) => other && overlaps(other.box, box)) &&
    !room.labels.some(({ leader: [from, to] }) => from && to && crosses(from, to, box))
  )
}

/** A sun stands on a ray that runs from it to the ground without a break. */
function openRay({ direction }: NoonLight, foot: Px, at: Px, room: IndexedRoom): boolean {
  const from = along(foot, direction, OVER_GROUND_PX)
  return ![...room.keepClear, ...room.labels.map(({ box }) => box)].some((box) => crosses(from, at, box))
}

interface Clear {
  readonly keepClear: readonly Box[]
  readonly words: readonly Box[]
}

/** A ray ends where it would enter the answer or the plan, and is broken where words stand. */
function rayPath(light: NoonLight, foot: Px, { keepClear, words }: Clear): string {
  const start = along(foot, light.direction, OVER_GROUND_PX)
  const end = along(foot, light.direction, light.longPx)
  const lowest = openParts(start, end, keepClear)[0]
  if (!lowest || lowest[0].yPx !== start.yPx) return ''
  return openParts(...lowest, words, LEAST_RAY_PX)
    .map((part) => polyline(part))
    .join('')
}

function along(from: Px, direction: Px, lengthPx: number): Px {
  return { xPx: from.xPx + direction.xPx * lengthPx, yPx: from.yPx + direction.yPx * lengthPx }
}
