import { n, type Px } from './path'

/** Wood of one thickness. */
export interface Wood {
  readonly d: string
  readonly widthPx: number
}

interface Joint extends Px {
  readonly parent: number
  /** Way along the wood from the foot [px]. */
  readonly wayPx: number
  tips: number
}

/**
 * How dear a long way through the wood is against a short new branch: 0 gives a straggling tree, 1 a broom.
 *
 * @see Cuntz et al. 2010, "One rule to grow them all", PLoS Computational Biology 6(8): balancing factor
 */
const WAY_BALANCE = 0.45

/** Branches thicken with the square root of the tips they feed, as in the pipe model of Shinozaki et al. 1964. */
const PIPE_POWER = 0.55

/** Thickest to thinnest wood, in steps of this width, so that one tree is a few paths [px]. */
const WIDTH_STEP_PX = 0.5
const TWIG_PX = 0.5

/** Grows wood from the points of a stem to every tip, each tip joined where its way to the foot stays short. */
export function branches(stem: readonly Px[], tips: readonly Px[], thickestPx: number): Wood[] {
  const joints = stemJoints(stem)
  joinAll(joints, tips)
  for (let at = joints.length - 1; at > 0; at--) {
    const joint = joints[at]
    const parent = joint && joints[joint.parent]
    if (joint && parent) parent.tips += Math.max(joint.tips, 1)
  }
  return byWidth(joints, stem.length, thickestPx)
}

function stemJoints(stem: readonly Px[]): Joint[] {
  let wayPx = 0
  return stem.map((place, at) => {
    const before = stem[at - 1]
    if (before) wayPx += Math.hypot(place.xPx - before.xPx, place.yPx - before.yPx)
    return { ...place, parent: at - 1, wayPx, tips: 0 }
  })
}

interface Waiting {
  readonly tip: Px
  parent: number
  cost: number
}

/** Prim's way of growing a least tree, one tip at a time. */
function joinAll(joints: Joint[], tips: readonly Px[]): void {
  const waiting: Waiting[] = tips.map((tip) => ({ tip, parent: 0, cost: Infinity }))
  const upper = Math.floor(joints.length / 2)
  for (let at = upper; at < joints.length; at++) offer(waiting, joints, at)
  while (waiting.length > 0) {
    const next = waiting.reduce((best, each, at) => (each.cost < (waiting[best]?.cost ?? 0) ? at : best), 0)
    const chosen = waiting.splice(next, 1)[0]
    const parent = chosen && joints[chosen.parent]
    if (!chosen || !parent) return
    joints.push({
      ...chosen.tip,
      parent: chosen.parent,
      wayPx: parent.wayPx + gapPx(parent, chosen.tip),
      tips: 0,
    })
    offer(waiting, joints, joints.length - 1)
  }
}

function offer(waiting: Waiting[], joints: readonly Joint[], at: number): void {
  const joint = joints[at]
  if (!joint) return
  for (const each of waiting) {
    const cost = gapPx(joint, each.tip) + WAY_BALANCE * joint.wayPx
    if (cost < each.cost) {
      each.cost = cost
      each.parent = at
    }
  }
}

function byWidth(joints: readonly Joint[], stemLength: number, thickestPx: number): Wood[] {
  const most = Math.max(1, joints[0]?.tips ?? 1)
  const paths = new Map<number, string>()
  joints.forEach((joint, at) => {
    const parent = joints[joint.parent]
    if (!parent || at < stemLength) return
    const exact = Math.max(TWIG_PX, thickestPx * ((joint.tips + 1) / most) ** PIPE_POWER)
    const width = Math.round(exact / WIDTH_STEP_PX) * WIDTH_STEP_PX
    paths.set(width, (paths.get(width) ?? '') + bough(parent, joint))
  })
  return [...paths].sort(([a], [b]) => b - a).map(([widthPx, d]) => ({ d, widthPx }))
}

/** Boughs leave their joint rising and bend outwards. */
function bough(from: Px, to: Px): string {
  const midX = from.xPx + (to.xPx - from.xPx) * 0.42
  const midY = from.yPx + (to.yPx - from.yPx) * 0.62
  return `M${n(from.xPx)} ${n(from.yPx)}Q${n(midX)} ${n(midY)} ${n(to.xPx)} ${n(to.yPx)}`
}

function gapPx(one: Px, other: Px): number {
  return Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx)
}
