import type { Surface } from '#core/survey'
import { degToGradient, toRadians } from '#core/units'
import type { Gradients } from './gradients'
import { clipped, sectionOf, type SectionLine } from './section'
import type { Section, Terrain } from './terrain.types'

/**
 * Cuts along further lines through ground whose facts are known already.
 *
 * @param surface - the ground
 * @param terrain - its slopes [°] and the directions it faces [°]
 * @param lines - where to cut, in plan metres [m]
 * @returns one section to a line, the higher end first; undefined for a line that misses the plot
 */
export function cutSections(
  surface: Surface,
  terrain: Pick<Terrain, 'slopeDeg' | 'aspectDeg'>,
  lines: readonly SectionLine[],
): readonly (Section | undefined)[] {
  if (lines.length === 0) return []
  const ground = { surface, slopes: gradientsOf(terrain), slopeDeg: terrain.slopeDeg }
  return lines.map((line) => (clipped(surface, line) ? sectionOf(ground, line) : undefined))
}

// Rise eastward and northward, from steepness and the direction faced; level cells face nowhere and rise nowhere.
function gradientsOf({ slopeDeg, aspectDeg }: Pick<Terrain, 'slopeDeg' | 'aspectDeg'>): Gradients {
  const east = new Float64Array(slopeDeg.length)
  const north = new Float64Array(slopeDeg.length)
  for (let cell = 0; cell < slopeDeg.length; cell++) {
    const facesDeg = aspectDeg[cell] ?? -1
    if (facesDeg < 0) continue
    const gradient = degToGradient(slopeDeg[cell] ?? 0)
    east[cell] = -gradient * Math.sin(toRadians(facesDeg))
    north[cell] = -gradient * Math.cos(toRadians(facesDeg))
  }
  return { east, north }
}
