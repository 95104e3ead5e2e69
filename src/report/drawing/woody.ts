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
}

/** Back leaves, wood, and the leaves in front of it. */
export interface WoodyDrawing {
  readonly crown: Foliage
  readonly wood: readonly Wood[]
  readonly trunk: string
  /** Wash of the clumps that stand before the wood. */
  readonly front: string
}

/** Share of a tree's height below its lowest boughs, and where a shrub's leaves begin. */
const CLEAR_STEM = 0.24
const SHRUB_SKIRT = 0.16

/** Clumps of a crown: few when it is small on the sheet, so that it stays readable. */
const PX_PER_CLUMP = 5.2
const CLUMPS = { least: 7, most: 46 }

/** Size of a leaf lobe on the sheet [px]. */
const LOBE_PX = { least: 2.6, most: 6.5 }

/** A tree: scalloped crown on a flaring trunk. */
export function tree(size: WoodySize): WoodyDrawing {
  const random = seededRandom(size.seed)
  const clumps = fillEllipse(treeEllipse(size), random)
  const lean = (random() - 0.5) * 0.08 * size.widthPx
  const forkPx = size.heightPx * CLEAR_STEM
  const stem = [0, 0.5, 1, 1.6, 2.1].map((up) => ({
    xPx: size.base.xPx + lean * up * 0.5,
    yPx: size.base.yPx - forkPx * up,
  }))
  const thickPx = Math.max(1.4, size.heightPx * 0.045)
  return dress({
    clumps,
    wood: branches(stem, tipsOf(clumps, random), thickPx * 1.15),
    trunk: trunkOf(size.base, stem, thickPx),
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
    wood: branches(stem, tipsOf(clumps, random), Math.max(1, size.heightPx * 0.035)),
    trunk: '',
    random,
  })
}

interface Ellipse extends Px {
  readonly acrossPx: number
  readonly upPx: number
}

function treeEllipse({ base, heightPx, widthPx }: WoodySize): Ellipse {
  const upPx = (heightPx * (1 - CLEAR_STEM)) / 2
  return { xPx: base.xPx, yPx: base.yPx - heightPx + upPx, acrossPx: widthPx / 2, upPx }
}

function shrubEllipse({ base, heightPx, widthPx }: WoodySize): Ellipse {
  const upPx = (heightPx * (1 - SHRUB_SKIRT)) / 2
  return { xPx: base.xPx, yPx: base.yPx - heightPx + upPx, acrossPx: widthPx / 2, upPx }
}

/** Clumps spread over an ellipse, each as far as may be from the others. */
function fillEllipse(ellipse: Ellipse, random: () => number): Clump[] {
  const meanPx = Math.sqrt(ellipse.acrossPx * ellipse.upPx)
  const count = Math.round(Math.min(CLUMPS.most, Math.max(CLUMPS.least, (meanPx * 2) / PX_PER_CLUMP)))
  const radiusPx = meanPx * (0.2 + 1.05 / Math.sqrt(count + 6))
  const clumps: Clump[] = []
  for (let at = 0; at < count; at++) clumps.push(farthest(ellipse, clumps, radiusPx * 0.62, random))
  return clumps.map((clump) => ({ ...clump, radiusPx: clump.radiusPx * (0.85 + random() * 0.4) }))
}

/** Mitchell's best candidate: of several places, the one farthest from all before. */
function farthest(ellipse: Ellipse, before: readonly Clump[], radiusPx: number, random: () => number): Clump {
  let best: Clump | undefined
  let bestPx = -1
  for (let tries = 0; tries < 9; tries++) {
    const angle = random() * 2 * Math.PI
    const reach = Math.sqrt(random())
    const place = {
      xPx: ellipse.xPx + Math.cos(angle) * reach * Math.max(ellipse.acrossPx - radiusPx * 1.1, 1),
      yPx: ellipse.yPx + Math.sin(angle) * reach * Math.max(ellipse.upPx - radiusPx * 1.1, 1),
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
  const top = stem[2] ?? base
  const half = thickPx / 2
  const [x, y] = [base.xPx, base.yPx + 1]
  return (
    `M${n(x - thickPx * 1.15)} ${n(y)}Q${n(x - half * 1.1)} ${n(y - thickPx * 0.5)} ${n(x - half)} ${n(y - thickPx * 1.6)}` +
    `L${n(top.xPx - half * 0.85)} ${n(top.yPx)}H${n(top.xPx + half * 0.85)}` +
    `L${n(x + half)} ${n(y - thickPx * 1.6)}Q${n(x + half * 1.1)} ${n(y - thickPx * 0.5)} ${n(x + thickPx * 1.15)} ${n(y)}Z`
  )
}

interface Parts {
  readonly clumps: readonly Clump[]
  readonly wood: readonly Wood[]
  readonly trunk: string
  readonly random: () => number
}

function dress({ clumps, wood, trunk, random }: Parts): WoodyDrawing {
  const meanRadiusPx = clumps.reduce((sum, clump) => sum + clump.radiusPx, 0) / Math.max(clumps.length, 1)
  const lobePx = Math.min(LOBE_PX.most, Math.max(LOBE_PX.least, meanRadiusPx * 0.46))
  const inFront = clumps.filter(() => random() < 0.42)
  return {
    crown: foliage(clumps, lobePx, random),
    wood,
    trunk,
    front: foliage(inFront.map(smaller), lobePx, random).fill,
  }
}

function smaller(clump: Clump): Clump {
  return { ...clump, radiusPx: clump.radiusPx * 0.72 }
}
