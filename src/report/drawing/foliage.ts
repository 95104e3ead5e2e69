import { circle, n, type Px } from './path'

/** A rounded clump of leaves. */
export interface Clump extends Px {
  readonly radiusPx: number
}

/** A mass of clumps as three paths: wash, scalloped edge, engraved shade. */
export interface Foliage {
  readonly fill: string
  readonly edge: string
  readonly shade: string
}

/** A clump hides another's edge once it covers this share of its own radius squared. */
const HIDES = 0.97

/** Light comes from the upper left: how much right and down count towards shade. */
const SHADE_RIGHT = 0.55
const SHADE_DOWN = 0.85

/** Leaf marks of a clump halfway into the shade. */
const MARKS = 4.2

/** Fraction of a lobe's chord that its arc takes as radius: a little over a half makes a shallow scallop. */
const SCALLOP = 0.56

/** Draws clumps as one crown: only the outer edges show, and marks gather on the shade side. */
export function foliage(clumps: readonly Clump[], lobePx: number, random: () => number): Foliage {
  const centre = middleOf(clumps)
  return {
    fill: clumps.map((clump) => circle(clump, clump.radiusPx * 1.06)).join(''),
    edge: clumps.map((clump) => edgeOf(clump, clumps, lobePx)).join(''),
    shade: clumps.map((clump) => shadeOf(clump, centre, lobePx, random)).join(''),
  }
}

interface Middle extends Px {
  readonly reachPx: number
}

function middleOf(clumps: readonly Clump[]): Middle {
  const count = Math.max(clumps.length, 1)
  const xPx = clumps.reduce((sum, clump) => sum + clump.xPx, 0) / count
  const yPx = clumps.reduce((sum, clump) => sum + clump.yPx, 0) / count
  const reachPx = Math.max(
    1,
    ...clumps.map((clump) => Math.hypot(clump.xPx - xPx, clump.yPx - yPx) + clump.radiusPx),
  )
  return { xPx, yPx, reachPx }
}

function edgeOf(clump: Clump, all: readonly Clump[], lobePx: number): string {
  const lobes = Math.max(7, Math.round((2 * Math.PI * clump.radiusPx) / lobePx))
  let path = ''
  let penDown = false
  for (let lobe = 0; lobe < lobes; lobe++) {
    const middle = around(clump, ((lobe + 0.5) / lobes) * 2 * Math.PI, 1.02)
    const hidden = all.some((other) => other !== clump && covers(other, middle))
    if (hidden) {
      penDown = false
      continue
    }
    if (!penDown) path += move(around(clump, (lobe / lobes) * 2 * Math.PI, 1))
    path += scallop(clump, lobes, lobe)
    penDown = true
  }
  return path
}

function scallop(clump: Clump, lobes: number, lobe: number): string {
  const end = around(clump, ((lobe + 1) / lobes) * 2 * Math.PI, 1)
  const chordPx = 2 * clump.radiusPx * Math.sin(Math.PI / lobes)
  const radius = n(chordPx * SCALLOP)
  return `A${radius} ${radius} 0 0 1 ${n(end.xPx)} ${n(end.yPx)}`
}

function shadeOf(clump: Clump, centre: Middle, lobePx: number, random: () => number): string {
  const shade =
    (SHADE_RIGHT * (clump.xPx - centre.xPx) + SHADE_DOWN * (clump.yPx - centre.yPx)) / centre.reachPx
  const marks = Math.round((shade + 0.4) * MARKS * (0.5 + random()))
  let path = ''
  for (let mark = 0; mark < marks; mark++) path += leafMark(clump, lobePx, random)
  return path
}

/** A short run of lobes inside the clump, on its own lower right. */
function leafMark(clump: Clump, lobePx: number, random: () => number): string {
  const lobes = 2 + Math.floor(random() * 3)
  const reach = 0.3 + random() * 0.62
  const start = -0.35 + random() * 1.5
  const turn = (lobePx * 0.8) / Math.max(clump.radiusPx * reach, 1)
  const radius = n(lobePx * 0.46)
  let path = move(around(clump, start, reach))
  for (let lobe = 1; lobe <= lobes; lobe++) {
    const end = around(clump, start + lobe * turn, reach)
    path += `A${radius} ${radius} 0 0 1 ${n(end.xPx)} ${n(end.yPx)}`
  }
  return path
}

function covers(clump: Clump, place: Px): boolean {
  const acrossPx = place.xPx - clump.xPx
  const downPx = place.yPx - clump.yPx
  return acrossPx * acrossPx + downPx * downPx < clump.radiusPx * clump.radiusPx * HIDES
}

function around(clump: Clump, angleRad: number, reach: number): Px {
  return {
    xPx: clump.xPx + Math.cos(angleRad) * clump.radiusPx * reach,
    yPx: clump.yPx + Math.sin(angleRad) * clump.radiusPx * reach,
  }
}

function move(place: Px): string {
  return `M${n(place.xPx)} ${n(place.yPx)}`
}
