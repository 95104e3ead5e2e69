import type { SectionObstacle, SectionView } from '../section-view.types'
import { CROWN_SHARE } from './bank-plants'
import { drawnHeightM, EAVES_SHARE } from './obstacles'
import type { Box } from './path'
import { groundAt, type SectionScale } from './scale'

/** Something that stands in the light, as a box. */
export type Shape = Box

/** Share of a tree's height below its crown. */
const CLEAR_STEM = 0.24

/** Air that words keep on each side of what is built, for eaves and coursing [px]. */
const BUILT_AIR_PX = 7

/** The surveyed things on the section that throw shade: house, walls, hedges and trees. */
export function bankShape(view: SectionView, scale: SectionScale): Shape[] {
  return view.obstacles
    .filter((obstacle) => ['house', 'wall', 'hedge', 'tree'].includes(obstacle.kind))
    .map((obstacle) => {
      const middleM = (obstacle.fromM + obstacle.toM) / 2
      const heightM = drawnHeightM(obstacle)
      const groundM = groundAt(view.ground, middleM).heightM
      const tree = obstacle.kind === 'tree'
      const halfM = Math.max((obstacle.toM - obstacle.fromM) / 2, tree ? (heightM * CROWN_SHARE) / 2 : 0.05)
      return {
        leftPx: scale.axis.x(middleM - halfM),
        rightPx: scale.axis.x(middleM + halfM),
        topPx: scale.y(groundM + heightM),
        bottomPx: scale.y(groundM + (tree ? heightM * CLEAR_STEM : 0)),
      }
    })
}

/** Boxes of what is built, as far as the drawing shows it, for labels to keep off. */
export function builtBoxes(view: SectionView, scale: SectionScale): Box[] {
  const built = view.obstacles.filter((obstacle) =>
    ['house', 'wall', 'hedge', 'fence', 'downpipe'].includes(obstacle.kind),
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
  const halfM = Math.max((obstacle.toM - obstacle.fromM) / 2, 0.01)
  const offM = middleM < fromM ? fromM - middleM : Math.max(0, middleM - toM)
  const roof = obstacle.kind === 'house' ? 1 - (1 - EAVES_SHARE) * Math.min(1, offM / halfM) : 1
  const groundM = groundAt(view.ground, Math.min(view.lengthM, Math.max(0, middleM))).heightM
  return {
    leftPx: scale.axis.x(fromM),
    rightPx: Math.max(scale.axis.x(toM), scale.axis.x(fromM) + 4),
    topPx: scale.y(groundM + drawnHeightM(obstacle) * roof) - 4,
    bottomPx: scale.y(groundM),
  }
}
