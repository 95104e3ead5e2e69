import { branches, type Wood } from './branches'
import { foliage, type Clump, type Foliage } from './foliage'
import { n, type Px } from './path'
import { seededRandom } from './seeded'

/** A woody plant on the sheet: where it stands and how big it is there. */
export interface WoodySize {
  readonly base: Px
  readonly heightPx: number
  readonly widthPx: number
  readonly seed: string
  /** Share of a tree's height below its lowest boughs. */
  readonly clearShare?: number
}

/** Back leaves, wood, and the leaves in front of it. */
export interface WoodyDrawing {
  readonly crown: Foliage
  readonly wood: readonly Wood[]
  readonly trunk: string
  /** Wash of the clumps that stand before the wood. */
  readonly front: string
}

/** Share of a tree's height below its lowest boughs where it is not known. */
export const CLEAR_STEM = 0.24
/** A tree stands on a stem of at least this share, and its stem runs this far into the crown [ratio]. */
const LEAST_CLEAR = 0.05
const STEM_IN_CROWN = 0.34
/** Where a shrub's leaves begin. */
const SHRUB_SKIRT = 0.16

/** Sheet area per clump [px²]: few clumps when a crown is small, so that it stays readable. */
const PX2_PER_CLUMP = 150
const CLUMPS = { least: 7, most: 96 }

/** How often clumps cover the crown: a little sky shows through a tree. */
const COVERS = 1.9

/** Smaller shrubs and trees show no boughs [px]. */
const WOOD_FROM_PX = { shrub: 16, tree: 64 }

/** A tree as high as this shows its boughs in full; a smaller one hides more of them in its leaves [px]. */
const FULL_TREE_PX = 220

/** Share of clumps that stand before the wood: of the smallest crowns, and of those drawn in full. */
const IN_FRONT = { small: 0.85, full: 0.3 }

/** Thickness of a tree's boughs against its trunk: of the smallest, and of those drawn in full. */
const BOUGH_SHARE = { small: 0.45, full: 1.1 }

/** Size of a leaf lobe on the sheet [px]. */
const LOBE_PX = { least: 2.6, most: 5.6 }

/** A tree: scalloped crown on a flaring trunk. */
export function tree(size: WoodySize): WoodyDrawing {
  const random = seededRandom(size.seed)
  const clumps = fillEllipse(treeEllipse(size), random)
  const lean = (random() - 0.5) * 0.08 * size.widthPx
  const clear = Math.max(LEAST_CLEAR, size.clearShare ?? CLEAR_STEM)
  const forkPx = size.heightPx * clear
  // The stem runs on into the crown.
  const into = ((1 - clear) * STEM_IN_CROWN) / clear
  const stem = [0, 0.5, 1, 1 + into * 0.55, 1 + into].map((up) => ({
    xPx: size.base.xPx + lean * up * 0.5,
    yPx: size.base.yPx - forkPx * up,
  }))
  const thickPx = Math.max(1.4, size.heightPx * 0.045)
  return dress({
    clumps,
    wood:
      size.heightPx < WOOD_FROM_PX.tree
        ? []
        : branches(stem, tipsOf(clumps, random), thickPx * sized(size, BOUGH_SHARE)),
    trunk: trunkOf(size.base, stem, thickPx),
    inFront: sized(size, IN_FRONT),
    random,
  })
}

/** A shrub: a scalloped dome on several stems from the ground. */
export function shrub(size: WoodySize): WoodyDrawing {
  const random = seededRandom(size.seed)
  const clumps = fillEllipse(shrubEllipse(size), random)
  const foot = { xPx: size.base.xPx, yPx: size.base.yPx + 1 }
  const stem = [foot, { xPx: foot.xPx, yPx: foot.yPx - size.heightPx * 0.06 }]
  return dress({
    clumps,
    wood:
      size.heightPx < WOOD_FROM_PX.shrub
        ? []
        : branches(stem, tipsOf(clumps, random), Math.max(1, size.heightPx * 0.035)),
    trunk: '',
    inFront: IN_FRONT.full,
    random,
  })
}

/** From the value for the smallest to the one for plants that are drawn in full. */
function sized({ heightPx }: WoodySize, { small, full }: { small: number; full: number }): number {
  const share = (heightPx - WOOD_FROM_PX.tree) / (FULL_TREE_PX - WOOD_FROM_PX.tree)
  return small + Math.min(1, Math.max(0, share)) * (full - small)
}

interface Ellipse extends Px {
  readonly acrossPx: number
  readonly upPx: number
}

function treeEllipse({ base, heightPx, widthPx, clearShare = CLEAR_STEM }: WoodySize): Ellipse {
  const upPx = (heightPx * (1 - clearShare)) / 2
  return { xPx: base.xPx, yPx: base.yPx - heightPx + upPx, acrossPx: widthPx / 2, upPx }
}

function shrubEllipse({ base, heightPx, widthPx }: WoodySize): Ellipse {
  const upPx = (heightPx * (1 - SHRUB_SKIRT)) / 2
  return { xPx: base.xPx, yPx: base.yPx - heightPx + upPx, acrossPx: widthPx / 2, upPx }
}

/** Clumps spread over an ellipse, each as far as may be from the others. */
function fillEllipse(ellipse: Ellipse, random: () => number): Clump[] {
  const meanPx = Math.sqrt(ellipse.acrossPx * ellipse.upPx)
  const count = Math.round(Math.min(CLUMPS.most, Math.max(CLUMPS.least, (meanPx * meanPx) / PX2_PER_CLUMP)))
  const radiusPx = meanPx * Math.sqrt(COVERS / count)
  const clumps: Clump[] = []
  for (let at = 0; at < count; at++) clumps.push(farthest(ellipse, clumps, radiusPx, random))
  return clumps.map((clump) => ({ ...clump, radiusPx: clump.radiusPx * (0.78 + random() * 0.4) }))
}

/** Mitchell's best candidate: of several places, the one farthest from all before. */
function farthest(ellipse: Ellipse, before: readonly Clump[], radiusPx: number, random: () => number): Clump {
  let best: Clump | undefined
  let bestPx = -1
  for (let tries = 0; tries < 9; tries++) {
    const angle = random() * 2 * Math.PI
    const reach = Math.sqrt(random())
    const place = {
      xPx: ellipse.xPx + Math.cos(angle) * reach * Math.max(ellipse.acrossPx - radiusPx * 0.9, 1),
      yPx: ellipse.yPx + Math.sin(angle) * reach * Math.max(ellipse.upPx - radiusPx * 0.9, 1),
      radiusPx,
    }
    const gapPx = Math.min(
      Infinity,
      ...before.map((clump) => Math.hypot(clump.xPx - place.xPx, clump.yPx - place.yPx)),
    )
    if (gapPx > bestPx) {
      best = place
      bestPx = gapPx
    }
  }
  return best ?? { ...ellipse, radiusPx }
}

/** Twigs end at the clumps and at a few places within them. */
function tipsOf(clumps: readonly Clump[], random: () => number): Px[] {
  return clumps.flatMap((clump) => [
    clump,
    {
      xPx: clump.xPx + (random() - 0.5) * clump.radiusPx * 1.3,
      yPx: clump.yPx - random() * clump.radiusPx * 0.7,
    },
  ])
}

function trunkOf(base: Px, stem: readonly Px[], thickPx: number): string {
  const top = stem[3] ?? base
  const half = thickPx / 2
  const [x, y] = [base.xPx, base.yPx + 1]
  return (
    `M${n(x - thickPx * 1.15)} ${n(y)}Q${n(x - half * 1.1)} ${n(y - thickPx * 0.5)} ${n(x - half)} ${n(y - thickPx * 1.6)}` +
    `L${n(top.xPx - half * 0.7)} ${n(top.yPx)}H${n(top.xPx + half * 0.7)}` +
    `L${n(x + half)} ${n(y - thickPx * 1.6)}Q${n(x + half * 1.1)} ${n(y - thickPx * 0.5)} ${n(x + thickPx * 1.15)} ${n(y)}Z`
  )
}

interface Parts {
  readonly clumps: readonly Clump[]
  readonly wood: readonly Wood[]
  readonly trunk: string
  /** Share of the clumps that stand before the wood. */
  readonly inFront: number
  readonly random: () => number
}

function dress({ clumps, wood, trunk, inFront, random }: Parts): WoodyDrawing {
  const meanRadiusPx = clumps.reduce((sum, clump) => sum + clump.radiusPx, 0) / Math.max(clumps.length, 1)
  const lobePx = Math.min(LOBE_PX.most, Math.max(LOBE_PX.least, meanRadiusPx * 0.42))
  const before = clumps.filter(() => random() < inFront)
  return {
    crown: foliage(clumps, lobePx, random),
    wood,
    trunk,
    front: foliage(before.map(smaller), lobePx, random).fill,
  }
}

function smaller(clump: Clump): Clump {
  return { ...clump, radiusPx: clump.radiusPx * 0.72 }
}
