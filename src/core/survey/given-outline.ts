import { convexHull, ringAreaM2, signedAreaM2, tinRims, type Ring, type Tin } from '#core/geometry'
import type { SurfaceNote } from './surface.types'

/** Parts and gaps told of one by one [rims]; the rest are counted together. */
const MOST_TOLD = 10

/** Extent of triangles that came with a survey. */
export interface GivenOutline {
  readonly outline: Ring
  /** Gaps between the triangles, where nothing is known of the ground. */
  readonly gaps: readonly Ring[]
  readonly notes: readonly SurfaceNote[]
}

/**
 * The extent of triangles that came with a survey: the rim of their largest part, with its gaps.
 *
 * @param tin - the triangles, corners anticlockwise
 * @returns rim and gaps, and what is left out; the hull of all points when triangles lie over one another
 */
export function givenOutline(tin: Tin): GivenOutline {
  const rims = tinRims(tin)
  const outer = rims
    .filter((rim) => signedAreaM2(rim) > 0)
    .sort((one, other) => ringAreaM2(other) - ringAreaM2(one))
  const [outline, ...parts] = outer
  if (!outline) return { outline: convexHull(cornerPoints(tin)), gaps: [], notes: [] }
  const gaps = rims.filter((rim) => signedAreaM2(rim) < 0)
  return {
    outline,
    gaps,
    notes: [
      ...rimNotes(parts, 'A part of the survey’s triangles', 'does not touch the rest and is left out'),
      ...rimNotes(
        gaps,
        'A gap in the survey’s triangles',
        'is no ground unless a boundary or holes are drawn',
      ),
    ],
  }
}

function rimNotes(rims: readonly Ring[], what: string, why: string): SurfaceNote[] {
  const told = rims.slice(0, MOST_TOLD).map((rim): SurfaceNote => {
    const { eastM, northM } = rim[0]!
    const where = `near ${Number(eastM.toFixed(2))} m east, ${Number(northM.toFixed(2))} m north`
    return { kind: 'left-out', what: `${what} ${where} (${areaText([rim])}) ${why}.`, at: { eastM, northM } }
  })
  const rest = rims.slice(MOST_TOLD)
  if (rest.length === 0) return told
  const more = `${rest.length} more like it (${areaText(rest)} together): ${what.toLowerCase()} ${why}.`
  return [...told, { kind: 'left-out', what: more, at: undefined }]
}

function areaText(rims: readonly Ring[]): string {
  const areaM2 = rims.reduce((sum, rim) => sum + ringAreaM2(rim), 0)
  return `${Number(areaM2.toPrecision(4))} m²`
}

function cornerPoints({ points, corners }: Tin) {
  return [...new Set(corners)].flatMap((corner) => points[corner] ?? [])
}
