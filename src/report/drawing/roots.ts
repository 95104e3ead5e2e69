import type { Plant } from '#core/plants'
import { n, type Px } from './path'

/** A root system on the sheet. */
export interface RootSize {
  readonly base: Px
  /** Deepest root [px]. */
  readonly deepPx: number
  /** Depth that holds the bulk of the roots [px]. */
  readonly bulkPx: number
  /** Half the width of the plant above [px]. */
  readonly reachPx: number
  /** Fall of the ground, px down for each px to the right. */
  readonly fall: number
}

type Habit = Plant['rootHabit'][number]
type Draw = (size: RootSize, random: () => number) => string

/** A root system, drawn to its real depth in the way it holds ground. */
export function rootSystem(habit: Habit, size: RootSize, random: () => number): string {
  return drawings[habit](size, random)
}

const fibrous: Draw = (size, random) => fan(size, { strands: 9, deep: 1, wide: 0.7 }, random)
const tussock: Draw = (size, random) => fan(size, { strands: 12, deep: 1, wide: 0.45 }, random)
const heart: Draw = (size, random) => fan(size, { strands: 7, deep: 0.95, wide: 0.9 }, random)

const plate: Draw = (size, random) => {
  const flat = fan({ ...size, deepPx: size.bulkPx * 0.7 }, { strands: 6, deep: 0.7, wide: 1.5 }, random)
  return flat + [-0.7, 0, 0.7].map((side) => sinker(size, side * size.reachPx, random)).join('')
}

const tap: Draw = (size, random) => sinker(size, 0, random) + sideRoots(size, 5, random)
const tapBranched: Draw = (size, random) =>
  sinker(size, 0, random) +
  sideRoots(size, 6, random) +
  fan(size, { strands: 4, deep: 0.75, wide: 0.7 }, random)

/** Runs under the ground and roots as it goes. */
const runner: Draw = (size, random) => {
  const wide = Math.max(size.reachPx * 1.5, 8)
  const shallow = Math.min(size.bulkPx * 0.22 + 1.5, 7)
  const at = (share: number): Px => ({
    xPx: size.base.xPx + share * wide,
    yPx: size.base.yPx + shallow + share * wide * size.fall,
  })
  let path = `M${n(at(-1).xPx)} ${n(at(-1).yPx)}L${n(at(1).xPx)} ${n(at(1).yPx)}`
  for (const share of [-0.8, -0.4, 0, 0.4, 0.8]) {
    const foot = at(share)
    const deepPx = (share === 0 ? size.deepPx : size.bulkPx) - shallow
    path += fan(
      { ...size, base: foot, deepPx, reachPx: wide * 0.25 },
      { strands: 3, deep: 1, wide: 0.8 },
      random,
    )
  }
  return path
}

const bulb: Draw = (size, random) => {
  const low = { xPx: size.base.xPx, yPx: size.base.yPx + Math.min(4, size.bulkPx * 0.5) }
  const bead = `M${n(low.xPx - 1.6)} ${n(low.yPx)}a1.6 1.9 0 1 0 3.2 0a1.6 1.9 0 1 0 -3.2 0`
  return bead + fan({ ...size, base: low }, { strands: 4, deep: 0.9, wide: 0.5 }, random)
}

const drawings: Readonly<Record<Habit, Draw>> = {
  fibrous,
  tussock,
  heart,
  plate,
  tap,
  'tap-branched': tapBranched,
  'rhizome-short': fibrous,
  'rhizome-running': runner,
  stolon: runner,
  'node-rooting': runner,
  layering: runner,
  suckering: runner,
  'tuber-bulb': bulb,
}

interface Fan {
  readonly strands: number
  /** Depth and reach of the fan, as shares of the system's own. */
  readonly deep: number
  readonly wide: number
}

function fan(size: RootSize, { strands, deep, wide }: Fan, random: () => number): string {
  let path = ''
  for (let at = 0; at < strands; at++) {
    const side = strands === 1 ? 0 : (at / (strands - 1) - 0.5) * 2
    const across = side * size.reachPx * wide * (0.75 + random() * 0.4)
    const straight = size.deepPx * deep * (1 - 0.55 * Math.abs(side)) * (0.8 + random() * 0.2)
    const down = straight + across * size.fall
    path += `M${n(size.base.xPx)} ${n(size.base.yPx)}q${n(across * 0.55)} ${n(down * 0.3)} ${n(across)} ${n(down)}`
    if (down > 10) path += twig(size.base, { xPx: across, yPx: down }, random)
  }
  return path
}

/** A finer root that leaves its strand two thirds of the way. */
function twig(base: Px, end: Px, random: () => number): string {
  const x = base.xPx + end.xPx * 0.68
  const y = base.yPx + end.yPx * 0.55
  return `M${n(x)} ${n(y)}q${n(end.xPx * 0.1 + (random() - 0.5) * 4)} ${n(end.yPx * 0.12)} ${n((random() - 0.3) * 0.3 * end.xPx)} ${n(end.yPx * 0.26)}`
}

function sinker(size: RootSize, asidePx: number, random: () => number): string {
  const deep = asidePx === 0 ? size.deepPx : size.deepPx * (0.6 + random() * 0.25)
  const wobble = (random() - 0.5) * 4
  return `M${n(size.base.xPx + asidePx)} ${n(size.base.yPx + (asidePx === 0 ? 0 : size.bulkPx * 0.3))}q${n(wobble)} ${n(deep * 0.5)} 0 ${n(deep * (asidePx === 0 ? 1 : 0.8))}`
}

function sideRoots(size: RootSize, count: number, random: () => number): string {
  let path = ''
  for (let at = 0; at < count; at++) {
    const down = (size.deepPx * (at + 0.6)) / (count + 1)
    const across =
      (at % 2 === 0 ? 1 : -1) * size.reachPx * (0.85 - (at / count) * 0.6) * (0.7 + random() * 0.4)
    path += `M${n(size.base.xPx)} ${n(size.base.yPx + down)}q${n(across * 0.5)} ${n(size.deepPx * 0.02)} ${n(across)} ${n(size.deepPx * 0.13)}`
  }
  return path
}
