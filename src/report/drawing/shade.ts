import type { SectionView } from '../section-view.types'
import { CROWN_SHARE } from './bank-plants'
import { drawnHeightM } from './obstacles'
import type { Box } from './path'
import { groundAt, type SectionScale } from './scale'

/** Something that stands in the light, as a box. */
export type Shape = Box

/** Share of a tree's height below its crown. */
const CLEAR_STEM = 0.24

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
