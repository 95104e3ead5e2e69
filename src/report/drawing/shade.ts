import type { Month } from '#core/units'
import type { SectionObstacle, SectionView } from '../section-view.types'
import { drawnHeightM, isBuilding, roofOf } from './obstacles'
import type { Box } from './path'
import { groundAt, type SectionScale } from './scale'

/** Something that stands in the light, as a box. */
export type Shape = Box

/** A thing that lets more light through than this throws no shade on the drawing, 0 to 1; own judgement. */
const SHADES_BELOW = 0.5

/** A gable is laid in so many slabs, each narrower than the one below [count]. */
const GABLE_SLABS = 6

/** Half of what a wall or fence is taken to be thick [m]. */
const HALF_THICK_M = 0.05

/** Air that words keep on each side of what is built, for eaves and coursing [px]. */
const BUILT_AIR_PX = 7

/** The surveyed things on the section that throw shade in a month, as the sun is reckoned with. */
export function bankShape(view: SectionView, scale: SectionScale, month: Month): Shape[] {
  return view.obstacles.flatMap((obstacle) => {
    const { standing } = obstacle
    return standing && standing.through[month] < SHADES_BELOW
      ? slabsOf(view, obstacle).map((slab) => boxOf(slab, scale))
      : []
  })
}

/** A box of the section [m]. */
interface Slab {
  readonly fromM: number
  readonly toM: number
  readonly lowM: number
  readonly highM: number
}

function slabsOf(view: SectionView, obstacle: SectionObstacle): Slab[] {
  const middleM = (obstacle.fromM + obstacle.toM) / 2
  const crown = obstacle.standing?.crown
  if (crown) return [{ ...crown, fromM: middleM - crown.wideM / 2, toM: middleM + crown.wideM / 2 }]
  const halfM = Math.max((obstacle.toM - obstacle.fromM) / 2, HALF_THICK_M)
  const [fromM, toM] = [middleM - halfM, middleM + halfM]
  const lowM = groundAt(view.ground, middleM).heightM
  if (!isBuilding(obstacle)) return [{ fromM, toM, lowM, highM: lowM + drawnHeightM(obstacle) }]
  const { eavesM, ridgeM, form } = roofOf(view, obstacle)
  if (form !== 'gable') return [{ fromM, toM, lowM, highM: ridgeM }]
  const slabs = Array.from({ length: GABLE_SLABS }, (_, at) => {
    const [low, high] = [at, at + 1].map((step) => eavesM + (step / GABLE_SLABS) * (ridgeM - eavesM))
    const half = halfM * (1 - (at + 0.5) / GABLE_SLABS)
    return { fromM: middleM - half, toM: middleM + half, lowM: low ?? eavesM, highM: high ?? ridgeM }
  })
  return [{ fromM, toM, lowM, highM: eavesM }, ...slabs]
}

function boxOf({ fromM, toM, lowM, highM }: Slab, scale: SectionScale): Shape {
  return {
    leftPx: scale.axis.x(fromM),
    rightPx: scale.axis.x(toM),
    topPx: scale.y(highM),
    bottomPx: scale.y(lowM),
  }
}

/** Boxes of what is built, as far as the drawing shows it, for labels to keep off. */
export function builtBoxes(view: SectionView, scale: SectionScale): Box[] {
  const built = view.obstacles.filter((obstacle) =>
    ['house', 'building', 'wall', 'hedge', 'fence', 'downpipe'].includes(obstacle.kind),
  )
  return built.map((obstacle) => {
    const box = builtBox(view, scale, obstacle)
    return { ...box, leftPx: box.leftPx - BUILT_AIR_PX, rightPx: box.rightPx + BUILT_AIR_PX }
  })
}

/** The part of a built thing that the drawing shows. A roof that is cut off is only as high as where it leaves. */
export function builtBox(view: SectionView, scale: SectionScale, obstacle: SectionObstacle): Box {
  const [fromM, toM] = [Math.max(obstacle.fromM, view.drawn.fromM), Math.min(obstacle.toM, view.drawn.toM)]
  const middleM = (obstacle.fromM + obstacle.toM) / 2
  const groundM = groundAt(view.ground, Math.min(view.lengthM, Math.max(0, middleM))).heightM
  return {
    leftPx: scale.axis.x(fromM),
    rightPx: Math.max(scale.axis.x(toM), scale.axis.x(fromM) + 4),
    topPx: scale.y(isBuilding(obstacle) ? shownRoofM(view, obstacle) : groundM + drawnHeightM(obstacle)) - 4,
    bottomPx: scale.y(groundM),
  }
}

/** Height of a roof as far as the drawing shows it; a gable that is cut off is only as high as where it leaves [m]. */
function shownRoofM(view: SectionView, obstacle: SectionObstacle): number {
  const { eavesM, ridgeM, form } = roofOf(view, obstacle)
  if (form !== 'gable') return ridgeM
  const middleM = (obstacle.fromM + obstacle.toM) / 2
  const halfM = Math.max((obstacle.toM - obstacle.fromM) / 2, 0.01)
  const offM = Math.max(0, view.drawn.fromM - middleM, middleM - view.drawn.toM)
  return ridgeM - (ridgeM - eavesM) * Math.min(1, offM / halfM)
}
