import { overlaps, type Box, type Px } from './path'
import { textWidthPx, type Face } from './text-width'

export type Tone = 'ink' | 'red' | 'water' | 'leaf'

/** Verdicts are set in the strong face, names of things in the ground in italic. */
export type Voice = 'verdict' | 'name'

/** A label to be set: a strong line, a lighter one, and the place it speaks of. */
export interface LabelWish {
  readonly id: string
  readonly title: string
  readonly note: string | undefined
  readonly tone: Tone
  readonly voice: Voice
  /** The place it speaks of [px]. */
  readonly anchor: Px
  /** Above the anchor or below it, as far as there is room. */
  readonly side: 'above' | 'below'
  /** Lower goes first. */
  readonly rank: number
}

/** A label with its place. */
export interface PlacedLabel extends LabelWish {
  readonly box: Box
  /** From label to anchor; empty when it stands beside it. */
  readonly leader: readonly Px[]
}

/** Where labels may go, and what they must keep off. */
export interface LabelRoom {
  readonly bounds: Box
  readonly taken: readonly Box[]
  readonly titlePx: number
  readonly notePx: number
}

/** Air around a label [px]. */
const AIR_PX = 4

/** Room for the triangle that a danger carries [px]. */
const DANGER_MARK_PX = 18

/** How far apart the tried places are [px]. */
const STEP_ASIDE_PX = 14
const STEP_AWAY_PX = 10
const STEPS_ASIDE = 18
const STEPS_AWAY = 34

/** A label further than this from its place gets a leader [px]. */
const LEADER_FROM_PX = 16

/** Weight of moving away against moving aside. */
const AWAY_WEIGHT = 1.25

/**
 * Finds each label a place that touches no other label and nothing taken. A label that finds none is tried
 * without its lighter line, and is left to the table when even that does not fit: two labels never overlap.
 */
export function placeLabels(wishes: readonly LabelWish[], room: LabelRoom): PlacedLabel[] {
  const placed: PlacedLabel[] = []
  for (const wish of [...wishes].sort((one, other) => one.rank - other.rank)) {
    const label = placeOne(wish, room, placed) ?? placeOne({ ...wish, note: undefined }, room, placed)
    if (label) placed.push(label)
  }
  return placed
}

/** Size of a label, air included [px]. */
export function labelSize(wish: LabelWish, room: Pick<LabelRoom, 'titlePx' | 'notePx'>) {
  const titleFace: Face = wish.voice === 'name' ? 'serifItalic' : 'sansBold'
  const widthPx = Math.max(
    textWidthPx(wish.title, titleFace, room.titlePx),
    wish.note ? textWidthPx(wish.note, 'sans', room.notePx) : 0,
  )
  const heightPx = room.titlePx * 1.2 + (wish.note ? room.notePx * 1.3 : 0)
  const markPx = wish.tone === 'red' ? DANGER_MARK_PX : 0
  return { widthPx: widthPx + markPx + AIR_PX * 2, heightPx: heightPx + AIR_PX }
}

function placeOne(wish: LabelWish, room: LabelRoom, placed: readonly PlacedLabel[]): PlacedLabel | undefined {
  const size = labelSize(wish, room)
  const taken = [...room.taken, ...placed.map((label) => label.box)]
  let best: Box | undefined
  let bestCost = Infinity
  for (const place of places(wish)) {
    const cost = Math.abs(place.asidePx) + place.awayPx * AWAY_WEIGHT
    if (cost >= bestCost) continue
    const box = boxAt(wish, size, place)
    if (!inside(box, room.bounds) || taken.some((other) => overlaps(box, other))) continue
    best = box
    bestCost = cost
  }
  return best && { ...wish, box: best, leader: leaderOf(wish, best) }
}

interface Place {
  readonly asidePx: number
  readonly awayPx: number
}

function* places(wish: LabelWish): Generator<Place> {
  const start = wish.side === 'above' ? 6 : 8
  for (let away = 0; away < STEPS_AWAY; away++)
    for (let aside = 0; aside <= STEPS_ASIDE; aside++)
      for (const sign of aside === 0 ? [1] : [1, -1])
        yield { asidePx: sign * aside * STEP_ASIDE_PX, awayPx: start + away * STEP_AWAY_PX }
}

function boxAt(wish: LabelWish, size: { widthPx: number; heightPx: number }, place: Place): Box {
  const leftPx = wish.anchor.xPx - AIR_PX + place.asidePx
  const topPx =
    wish.side === 'above' ? wish.anchor.yPx - place.awayPx - size.heightPx : wish.anchor.yPx + place.awayPx
  return { leftPx, topPx, rightPx: leftPx + size.widthPx, bottomPx: topPx + size.heightPx }
}

function inside(box: Box, bounds: Box): boolean {
  return (
    box.leftPx >= bounds.leftPx &&
    box.rightPx <= bounds.rightPx &&
    box.topPx >= bounds.topPx &&
    box.bottomPx <= bounds.bottomPx
  )
}

function leaderOf(wish: LabelWish, box: Box): Px[] {
  const near = {
    xPx: Math.min(box.rightPx - AIR_PX, Math.max(box.leftPx, wish.anchor.xPx)),
    yPx: wish.side === 'above' ? box.bottomPx : box.topPx,
  }
  const gapPx = Math.hypot(near.xPx - wish.anchor.xPx, near.yPx - wish.anchor.yPx)
  if (gapPx <= LEADER_FROM_PX) return []
  const upright = { xPx: wish.anchor.xPx, yPx: near.yPx }
  return upright.xPx >= box.leftPx && upright.xPx <= box.rightPx
    ? [upright, wish.anchor]
    : [near, wish.anchor]
}
