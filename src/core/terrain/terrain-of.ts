import type { Surface } from '#core/survey'
import { edgeFalls } from './edge-falls'
import { fillHollows } from './fill-hollows'
import { flowShares } from './flow-shares'
import { gradients } from './gradients'
import { heightAboveFootM } from './height-above-foot'
import { upslopeAreaM2 } from './upslope-area'
import { neighbourhood } from './neighbours'
import { sectionOf, type SectionLine } from './section'
import { slopeAspect } from './slope-aspect'
import { slopeForm } from './slope-form'
import { slopePosition } from './slope-position'
import type { Terrain } from './terrain.types'

/**
 * The facts of the ground: steepness, direction faced, bends, the ways water takes and the place on the slope.
 *
 * @param surface - the ground as a grid of cells
 * @param sectionLine - where the person wants the section; down the fall through the middle when left out
 * @returns facts of every cell and the section
 * @throws RangeError when the section line misses the plot; ask `sectionProblem` first
 */
export function terrainOf(surface: Surface, sectionLine?: SectionLine): Terrain {
  const hood = neighbourhood(surface)
  const slopes = gradients(surface, hood)
  const { slopeDeg, aspectDeg } = slopeAspect(slopes)
  const form = slopeForm(surface, hood, slopes)
  const filled = fillHollows(surface.levelM, hood)
  const edge = edgeFalls(surface, hood, slopes)
  const flow = flowShares(surface, hood, filled, edge.leaves)
  const drained = { filledM: filled.filledM, hood, flow, edge }
  const cellM2 = surface.frame.cellM ** 2
  return {
    slopeDeg,
    aspectDeg,
    filledM: filled.filledM,
    upslopeAreaM2: upslopeAreaM2(
      surface.share.map((share) => share * cellM2),
      flow,
    ),
    heightAboveFootM: heightAboveFootM(drained),
    position: slopePosition(drained),
    formDown: form.down,
    formAcross: form.across,
    section: sectionOf({ surface, slopes, slopeDeg }, sectionLine),
    flow,
  }
}
