import type { Surface } from '#core/survey'
import type { Terrain } from './terrain.types'

/** Named positions on a slope, from its top to its bottom. */
export const namedPositions = ['crest', 'shoulder', 'backslope', 'footslope', 'toe'] as const

type NamedPosition = (typeof namedPositions)[number]

/** Above and below these positions the ground is crest and toe whatever its shape [ratio]; own judgement. */
const CREST_FROM = 0.9
const TOE_TO = 0.1

/** Gentle ground beyond these positions is crest and toe too [ratio]; own judgement. */
const GENTLE_CREST_FROM = 0.65
const GENTLE_TOE_TO = 0.35

/** Shoulders lie above it, footslopes below it [ratio]. */
const MIDDLE = 0.5

/** Ground is gentle when less steep than this share of the plot's mean gradient [ratio]; own judgement. */
const GENTLE_SHARE = 0.5

/** A bend counts when it turns the slope by as much as this over the length of the section [rad]; own judgement, some 20°. */
const TURN_OVER_SLOPE = 0.35

/**
 * The named position of every cell on its slope, from its height between foot and crest, its steepness and its bend down
 * the slope: crest and toe are the gentle ends, the shoulder bends outwards above the middle, the footslope bends inwards
 * below it, the backslope is what lies between.
 *
 * @param surface - the ground
 * @param terrain - its facts
 * @returns for each cell 0 outside the plot, else 1 + its place in `namedPositions` [count]
 * @see Ruhe 1975, Geomorphology; Schoeneberger et al. 2012, Field Book for Describing and Sampling Soils (order and shapes; from memory)
 */
export function namedPositionOf(surface: Surface, terrain: Terrain): Uint8Array {
  const gentleDeg = gentleBelowDeg(surface, terrain)
  const bend = TURN_OVER_SLOPE / terrain.section.lengthM
  return Uint8Array.from(surface.share, (share, cell) => {
    if (!(share > 0)) return 0
    const form = { position: terrain.position[cell]!, down: terrain.formDown[cell]! }
    const gentle = terrain.slopeDeg[cell]! < gentleDeg
    return 1 + namedPositions.indexOf(nameOf(form, gentle, bend))
  })
}

function nameOf(form: { position: number; down: number }, gentle: boolean, bend: number): NamedPosition {
  const { position, down } = form
  if (position > (gentle ? GENTLE_CREST_FROM : CREST_FROM)) return 'crest'
  if (position < (gentle ? GENTLE_TOE_TO : TOE_TO)) return 'toe'
  if (position > MIDDLE && down > bend) return 'shoulder'
  return position < MIDDLE && down < -bend ? 'footslope' : 'backslope'
}

function gentleBelowDeg({ share }: Surface, { slopeDeg }: Terrain): number {
  let [rise, whole] = [0, 0]
  for (let cell = 0; cell < share.length; cell++) {
    if (!share[cell]) continue
    rise += share[cell]! * Math.tan((slopeDeg[cell]! * Math.PI) / 180)
    whole += share[cell]!
  }
  return (Math.atan((GENTLE_SHARE * rise) / whole) * 180) / Math.PI
}
