import type { Ring } from '#core/geometry'
import type { PlanView } from '../section-view.types'
import { crosses } from './open-line'
import { overlaps, type Box, type Px } from './path'
import { endBox, sectionEnds, type SectionEnd } from './plan-ends'
import { KEY_STRIP_PX, type PlanScale } from './plan-scale'
import { around, boxOf, edgePx, gapPx, isInside, isWithin } from './rings'

/** A zone's letter: within its zone, or outside the plot with a line to it. */
interface PlanLetter {
  readonly zoneId: string
  readonly letter: string
  readonly at: Px
  /** From the letter to its zone; empty when it stands in it. */
  readonly leader: readonly Px[]
}

/** Radius of a letter's ring, and air around it [px]. */
export const LETTER_PX = 9
const AIR_PX = 1.5

/** Places tried in a zone, across and down. */
const TRIES = 18

/** How far outside letters stand from their zone, and how far aside they are tried [px]. */
const OUT_PX = [4, 6, 8, 10, 12, 16, 22, 32] as const
const ASIDE_PX = [0, -11, 11, -22, 22, -34, 34] as const

/** How much a place off the middle of its zone counts against one further out. */
const OFF_MIDDLE = 0.4

/** What is written on the plan, each with its own place. */
export interface PlanLetters {
  readonly zones: readonly PlanLetter[]
  readonly ends: readonly SectionEnd[]
}

/** Finds every letter of the plan a place where it touches no other letter and no house. */
export function planLetters(view: PlanView, scale: PlanScale, size: PlanSize): PlanLetters {
  const things = view.obstacles
    .filter(({ kind }) => kind === 'house' || kind === 'building')
    .map(({ ring }) => boxOf(placesOf(ring, scale)))
  const ends = sectionEnds(view, scale, things)
  const room: Room = {
    boundary: view.boundary.map((point) => scale.at(point)),
    bounds: { leftPx: 0, topPx: 0, rightPx: size.widthPx, bottomPx: size.heightPx - KEY_STRIP_PX },
    things,
    taken: ends.map(endBox),
  }
  const zones = view.zones.map((zone) => shapeOf(zone.id, zone.letter, placesOf(zone.ring, scale)))
  const placed: PlanLetter[] = []
  for (const zone of [...zones].sort((one, other) => one.clearPx - other.clearPx)) {
    const letter = within(zone, room, placed) ?? outside(zone, room, placed)
    if (letter) placed.push(letter)
  }
  return { zones: placed, ends }
}

interface PlanSize {
  readonly widthPx: number
  readonly heightPx: number
}

interface Room {
  readonly boundary: readonly Px[]
  readonly bounds: Box
  readonly things: readonly Box[]
  readonly taken: readonly Box[]
}

interface Inner extends Px {
  /** Distance to the nearest edge of the zone [px]. */
  readonly clearPx: number
}

interface Shape {
  readonly zoneId: string
  readonly letter: string
  readonly inner: readonly Inner[]
  readonly middle: Px
  /** The widest room within it [px]. */
  readonly clearPx: number
}

function placesOf(ring: Ring, scale: PlanScale): Px[] {
  return ring.map((point) => scale.at(point))
}

function shapeOf(zoneId: string, letter: string, ring: readonly Px[]): Shape {
  const box = boxOf(ring)
  const inner: Inner[] = []
  for (let across = 0; across < TRIES; across++)
    for (let down = 0; down < TRIES; down++) {
      const place = {
        xPx: box.leftPx + ((across + 0.5) / TRIES) * (box.rightPx - box.leftPx),
        yPx: box.topPx + ((down + 0.5) / TRIES) * (box.bottomPx - box.topPx),
      }
      if (isInside(place, ring)) inner.push({ ...place, clearPx: edgePx(place, ring) })
    }
  const count = Math.max(inner.length, 1)
  return {
    zoneId,
    letter,
    inner,
    middle: {
      xPx: inner.reduce((sum, { xPx }) => sum + xPx, 0) / count,
      yPx: inner.reduce((sum, { yPx }) => sum + yPx, 0) / count,
    },
    clearPx: Math.max(0, ...inner.map(({ clearPx }) => clearPx)),
  }
}

/** The place nearest the middle of the zone whose ring fits in it. */
function within(shape: Shape, room: Room, placed: readonly PlanLetter[]): PlanLetter | undefined {
  const fits = shape.inner
    .filter(({ clearPx }) => clearPx >= LETTER_PX + AIR_PX)
    .sort((one, other) => gapPx(one, shape.middle) - gapPx(other, shape.middle))
  const at = fits.find((place) => isFree(place, [], { room, placed }))
  return at && { zoneId: shape.zoneId, letter: shape.letter, at, leader: [] }
}

/** The nearest place off the plot, above or below the zone, from which a line runs to it. */
function outside(shape: Shape, room: Room, placed: readonly PlanLetter[]): PlanLetter | undefined {
  const places = rim(shape.inner)
    .flatMap((end) => outPlaces(end, shape.middle))
    .sort((one, other) => one.costPx - other.costPx)
  const found = places.find(({ at, leader }) => {
    const off = !isInside(at, room.boundary) && edgePx(at, room.boundary) >= LETTER_PX + AIR_PX
    return off && isFree(at, leader, { room, placed }) && !onThing(at, room)
  })
  return found && { zoneId: shape.zoneId, letter: shape.letter, at: found.at, leader: found.leader }
}

/** The highest and the lowest place of each column: a line from outside needs to reach no further. */
function rim(inner: readonly Inner[]): Inner[] {
  return inner.filter(({ xPx }, at) => inner[at - 1]?.xPx !== xPx || inner[at + 1]?.xPx !== xPx)
}

interface OutPlace {
  readonly at: Px
  readonly leader: readonly Px[]
  readonly costPx: number
}

function outPlaces(end: Inner, middle: Px): OutPlace[] {
  return [-1, 1].flatMap((up) =>
    OUT_PX.flatMap((outPx) =>
      ASIDE_PX.map((asidePx) => {
        const at = { xPx: end.xPx + asidePx, yPx: end.yPx + up * (LETTER_PX + outPx) }
        const costPx =
          outPx + Math.abs(asidePx) + Math.abs(at.xPx - middle.xPx) * OFF_MIDDLE - end.clearPx / 2
        return { at, leader: leaderTo(at, end), costPx }
      }),
    ),
  )
}

function leaderTo(at: Px, end: Px): Px[] {
  const share = LETTER_PX / gapPx(at, end)
  const start = {
    xPx: at.xPx + (end.xPx - at.xPx) * share,
    yPx: at.yPx + (end.yPx - at.yPx) * share,
  }
  return [start, end]
}

interface Others {
  readonly room: Room
  readonly placed: readonly PlanLetter[]
}

function isFree(at: Px, [from, to]: readonly Px[], { room, placed }: Others): boolean {
  const own = ringBox(at)
  const others = [...room.taken, ...placed.map((letter) => ringBox(letter.at))]
  return (
    isWithin(own, room.bounds) &&
    !others.some((box) => overlaps(box, own) || (from && to && crosses(from, to, box))) &&
    !placed.some(({ leader: [start, end] }) => start && end && crosses(start, end, own))
  )
}

function onThing(at: Px, { things }: Room): boolean {
  return things.some((box) => overlaps(box, ringBox(at)))
}

function ringBox(at: Px): Box {
  return around(at, LETTER_PX + AIR_PX, LETTER_PX + AIR_PX)
}
