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

interface SunDisc {
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

/** Rays stand at least this far apart, are this long at most, and are tried at shares of it [px]. */
const RAYS = {
  midsummer: { apartPx: 84, longPx: 150 },
  midwinter: { apartPx: 84, longPx: 104 },
} as const
const LENGTHS = [1, 0.8, 0.6, 0.45, 0.32] as const

/** A ray starts this far over the ground; less of one than this is not drawn [px]. */
const OVER_GROUND_PX = 3
const LEAST_RAY_PX = 18

/** Places tried in the open sky are this far apart, and the ray of a sun there is this long [px]. */
const SKY_STEP_PX = 14
const SKY_RAY_PX = 34

/** Draws the rays of every noon clear of words, and finds its sun a free place at the end of one of them. */
export function placeSuns(lights: readonly NoonLight[], room: SunRoom): DrawnSun[] {
  const words = room.labels.map(({ box }) => box)
  const taken = boxIndex([...room.taken, ...room.keepClear, ...words])
  const discs: SunDisc[] = []
  const stood: Box[] = []
  const drawn = lights.map((light) => {
    const open = longestRays(light, [...room.keepClear, ...words])
    const disc = placeDisc(light, open, { ...room, taken, stood }) ?? inSky(light, { ...room, taken, stood })
    if (disc) {
      discs.push(disc)
      stood.push(disc.box, boxBetween(disc.ray.foot, disc.ray.end))
    }
    return { light, disc, words: sunWords(light), spread: spreadRays(open, light.sun.when, disc) }
  })
  return drawn.map(({ spread, ...sun }) => ({
    ...sun,
    rays: spread.flatMap((ray) => around(ray, discs)).join(''),
  }))
}

function sunWords({ sun }: NoonLight): string {
  return `${sun.when} noon, ${Math.round(sun.heightDeg)}° high`
}

interface Ray {
  readonly foot: Px
  /** The end towards the sun. */
  readonly end: Px
  readonly longPx: number
}

/** From every place in the light, the longest ray that meets no word. */
function longestRays({ feet, direction, sun }: NoonLight, words: readonly Box[]): Ray[] {
  return feet.flatMap((place) => {
    const foot = along(place, direction, OVER_GROUND_PX)
    const rays = LENGTHS.map((share) => {
      const longPx = RAYS[sun.when].longPx * share
      return { foot, end: along(place, direction, longPx), longPx }
    })
    const open = rays.find(({ end }) => !words.some((box) => crosses(foot, end, box)))
    return open ? [open] : []
  })
}

/** A few of the rays, evenly apart, the longer ones of each neighbourhood first, and the sun's own for certain. */
function spreadRays(rays: readonly Ray[], when: 'midsummer' | 'midwinter', disc: OnRay | undefined): Ray[] {
  const { apartPx } = RAYS[when]
  const chosen = disc ? [disc.ray] : []
  for (const ray of [...rays].sort((one, other) => other.longPx - one.longPx))
    if (chosen.every(({ foot }) => Math.abs(foot.xPx - ray.foot.xPx) >= apartPx)) chosen.push(ray)
  return chosen
}

type OnRay = SunDisc & { readonly ray: Ray }

/** Where no ray of the ground has room for its sun, the sun stands in the open sky over a short ray of its own. */
function inSky(light: NoonLight, room: DiscRoom): OnRay | undefined {
  const { bounds } = room
  for (let yPx = bounds.topPx + SKY_STEP_PX; yPx < bounds.bottomPx; yPx += SKY_STEP_PX)
    for (let xPx = bounds.leftPx + SKY_STEP_PX; xPx < bounds.rightPx; xPx += SKY_STEP_PX) {
      const disc = discAt({ xPx, yPx }, sunWords(light), light.direction.xPx < 0)
      const end = along(disc.at, light.direction, -SUN_PX)
      const foot = along(end, light.direction, -SKY_RAY_PX)
      if (isFree(disc.box, room) && isFree(boxBetween(foot, end), room))
        return { ...disc, ray: { foot, end, longPx: SKY_RAY_PX } }
    }
  return undefined
}

function boxBetween(one: Px, other: Px): Box {
  return {
    leftPx: Math.min(one.xPx, other.xPx),
    rightPx: Math.max(one.xPx, other.xPx),
    topPx: Math.min(one.yPx, other.yPx),
    bottomPx: Math.max(one.yPx, other.yPx),
  }
}

type DiscRoom = Omit<SunRoom, 'taken'> & { readonly taken: BoxIndex; readonly stood: readonly Box[] }

/** The sun at the end of a ray where it and its words are free; midsummer looks from the left, midwinter the right. */
function placeDisc(light: NoonLight, rays: readonly Ray[], room: DiscRoom): OnRay | undefined {
  const { sun, direction } = light
  const inTurn = sun.when === 'midsummer' ? [...rays] : [...rays].reverse()
  for (const ray of inTurn.sort((one, other) => other.longPx - one.longPx))
    for (const wordsToRight of [true, false]) {
      const at = along(ray.end, direction, SUN_PX)
      const disc = discAt(at, sunWords(light), wordsToRight)
      if (isFree(disc.box, room)) return { ...disc, ray }
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

function isFree(box: Box, { bounds, taken, stood, labels }: DiscRoom): boolean {
  return (
    box.leftPx >= bounds.leftPx &&
    box.rightPx <= bounds.rightPx &&
    box.topPx >= bounds.topPx &&
    !taken.hits(box) &&
    !stood.some((other) => overlaps(other, box)) &&
    !labels.some(({ leader: [from, to] }) => from && to && crosses(from, to, box))
  )
}

/** A ray is broken where the words of a sun stand. */
function around({ foot, end }: Ray, discs: readonly SunDisc[]): string[] {
  const boxes = discs.map(({ box }) => box)
  return openParts(foot, end, boxes, LEAST_RAY_PX).map((part) => polyline(part))
}

function along(from: Px, direction: Px, lengthPx: number): Px {
  return { xPx: from.xPx + direction.xPx * lengthPx, yPx: from.yPx + direction.yPx * lengthPx }
}
