import { boxIndex, type BoxIndex } from './box-index'
import { crosses } from './open-line'
import { overlaps, type Box, type Px } from './path'
import { textWidthPx, type Face } from './text-width'

type Tone = 'ink' | 'red' | 'water' | 'leaf'

/** Verdicts are set in the strong face, names of things in the ground in italic. */
type Voice = 'verdict' | 'name'

/** A label to be set: a strong line, a lighter one, and the place it speaks of. */
export interface LabelWish {
  readonly id: string
  readonly title: string
  readonly note: string | undefined
  readonly tone: Tone
  readonly voice: Voice
  /** Carries the solid triangle of a danger. */
  readonly warns: boolean
  /** Places it may point at [px], the best first; never empty. */
  readonly anchors: readonly Px[]
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
  /** What leaders had better not cross. */
  readonly shun: readonly Box[]
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
const STEPS_ASIDE = 16
const STEPS_AWAY = 34
const NEAREST_PX = 6

/** A label further than this from its place gets a leader [px]. */
const LEADER_FROM_PX = 16

/** What makes a place worse than one beside its anchor [px of distance]. */
const COSTS = {
  away: 1.25,
  leader: 14,
  slantedLeader: 40,
  crossedCrown: 170,
  otherAnchor: 9,
  noNote: 90,
  most: 190,
}

/**
 * Finds each label a place that touches no other label, no other's leader and nothing taken. A label may lose
 * its lighter line to stay near, and is left to the table when it would stand far off: two labels never overlap.
 */
export function placeLabels(wishes: readonly LabelWish[], room: LabelRoom): PlacedLabel[] {
  const placed: PlacedLabel[] = []
  const taken = boxIndex(room.taken)
  for (const wish of [...wishes].sort((one, other) => one.rank - other.rank)) {
    const full = placeOne(wish, { ...room, taken }, placed)
    const short = wish.note ? placeOne({ ...wish, note: undefined }, { ...room, taken }, placed) : undefined
    const best = short && (!full || short.cost + COSTS.noNote < full.cost) ? short : full
    if (best && (best.cost <= COSTS.most || wish.warns)) placed.push(best.label)
  }
  return placed
}

/** Size of a label, air included [px]. */
function labelSize(wish: LabelWish, room: Pick<LabelRoom, 'titlePx' | 'notePx'>) {
  const titleFace: Face = wish.voice === 'name' ? 'serifItalic' : 'sansBold'
  const widthPx = Math.max(
    textWidthPx(wish.title, titleFace, room.titlePx),
    wish.note ? textWidthPx(wish.note, 'sans', room.notePx) : 0,
  )
  const heightPx = room.titlePx * 1.2 + (wish.note ? room.notePx * 1.3 : 0)
  const markPx = wish.warns ? DANGER_MARK_PX : 0
  return { widthPx: widthPx + markPx + AIR_PX * 2, heightPx: heightPx + AIR_PX }
}

type IndexedRoom = Omit<LabelRoom, 'taken'> & { readonly taken: BoxIndex }

interface Found {
  readonly label: PlacedLabel
  readonly cost: number
}

function placeOne(wish: LabelWish, room: IndexedRoom, placed: readonly PlacedLabel[]): Found | undefined {
  let best: Found | undefined
  for (const place of places(wish)) {
    const limit = best?.cost ?? (wish.warns ? Infinity : COSTS.most)
    if (place.awayPx * COSTS.away >= limit) break
    if (distanceCost(place) >= limit) continue
    const found = tryPlace(wish, place, room)
    if (found && found.cost < limit && !placed.some((other) => clash(found.label, other))) best = found
  }
  return best
}

function tryPlace(wish: LabelWish, place: Place, room: IndexedRoom): Found | undefined {
  const box = boxAt(wish, labelSize(wish, room), place)
  if (!inside(box, room.bounds) || room.taken.hits(box)) return undefined
  const leader = leaderOf(wish, box, place.anchor)
  return { label: { ...wish, box, leader }, cost: distanceCost(place) + leaderCost(leader, room.shun) }
}

function distanceCost(place: Place): number {
  return Math.abs(place.asidePx) + place.awayPx * COSTS.away + place.choice * COSTS.otherAnchor
}

function leaderCost([from, to]: readonly Px[], shun: readonly Box[]): number {
  if (!from || !to) return 0
  const slanted = Math.abs(from.xPx - to.xPx) > 1 ? COSTS.slantedLeader : 0
  const crossed = shun.filter((box) => crosses(from, to, box)).length
  return COSTS.leader + slanted + crossed * COSTS.crossedCrown
}

/** Labels keep off each other, and off each other's leaders. */
function clash(one: PlacedLabel, other: PlacedLabel): boolean {
  return (
    overlaps(one.box, other.box) ||
    leads(one, other.box) ||
    leads(other, one.box) ||
    leadersMeet(one.leader, other.leader)
  )
}

/** Whether two leaders cross: each has the other's ends on both of its sides. */
function leadersMeet([a, b]: readonly Px[], [c, d]: readonly Px[]): boolean {
  if (!a || !b || !c || !d) return false
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
}

function side(from: Px, to: Px, place: Px): number {
  return (to.xPx - from.xPx) * (place.yPx - from.yPx) - (to.yPx - from.yPx) * (place.xPx - from.xPx)
}

function leads({ leader }: PlacedLabel, through: Box): boolean {
  const [from, to] = leader
  return from !== undefined && to !== undefined && crosses(from, to, through)
}

interface Place {
  readonly anchor: Px
  /** Which of the anchors: 0 is the best. */
  readonly choice: number
  readonly asidePx: number
  readonly awayPx: number
}

function* places(wish: LabelWish): Generator<Place> {
  for (let away = 0; away < STEPS_AWAY; away++)
    for (const [choice, anchor] of wish.anchors.entries())
      for (let aside = -STEPS_ASIDE; aside <= STEPS_ASIDE; aside++)
        yield { anchor, choice, asidePx: aside * STEP_ASIDE_PX, awayPx: NEAREST_PX + away * STEP_AWAY_PX }
}

function boxAt(wish: LabelWish, size: { widthPx: number; heightPx: number }, place: Place): Box {
  const leftPx = place.anchor.xPx - AIR_PX + place.asidePx
  const topPx =
    wish.side === 'above' ? place.anchor.yPx - place.awayPx - size.heightPx : place.anchor.yPx + place.awayPx
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

function leaderOf(wish: LabelWish, box: Box, anchor: Px): Px[] {
  const edgePx = wish.side === 'above' ? box.bottomPx : box.topPx
  const within = Math.min(box.rightPx - AIR_PX, Math.max(box.leftPx + AIR_PX, anchor.xPx))
  const near = { xPx: within, yPx: edgePx }
  return Math.hypot(near.xPx - anchor.xPx, near.yPx - anchor.yPx) <= LEADER_FROM_PX ? [] : [near, anchor]
}
