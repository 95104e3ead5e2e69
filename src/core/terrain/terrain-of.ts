import type { Surface } from '#core/survey'
import { groundFacts } from './ground-facts'
import type { SheddingStretch } from './inflow'
import { sectionOf, type SectionLine } from './section'
import type { Terrain } from './terrain.types'
import { times } from './times'
import { upslopeAreaM2 } from './upslope-area'

/**
 * The facts of the ground: steepness, direction faced, bends, the ways water takes and the place on the slope.
 *
 * @param surface - the ground as a grid of cells
 * @param sectionLine - where the person wants the section; down the fall through the middle when left out
 * @param beyond - what was described of the ground beyond the boundary: what sheds onto the plot counts as upslope area
 * @returns facts of every cell and the section
 * @throws RangeError when the section line misses the plot; ask `sectionProblem` first
 */
export function terrainOf(
  surface: Surface,
  sectionLine?: SectionLine,
  beyond: readonly SheddingStretch[] = [],
): Terrain {
  const facts = groundFacts(surface, beyond)
  const { slopeDeg, aspectDeg } = facts.steepness()
  const form = facts.form()
  const flow = facts.flow()
  return {
    slopeDeg,
    aspectDeg,
    filledM: facts.filledM(),
    upslopeAreaM2: upslopeAreaM2(times(facts.sources(), surface.frame.cellM ** 2), flow),
    inflowM2: facts.inflowM2(),
    heightAboveFootM: facts.heightAboveFootM(),
    position: facts.position(),
    formDown: form.down,
    formAcross: form.across,
    section: sectionOf({ surface, slopes: facts.slopes(), slopeDeg }, sectionLine),
    flow,
  }
}
