import type { Findings, Settlement } from '#plan'
import type { GroundPoint, SectionDanger, SectionObstacle, SectionZone, Stretch } from './section-view.types'

interface Drawn {
  readonly ground: readonly GroundPoint[]
  readonly zones: readonly SectionZone[]
  readonly obstacles: readonly SectionObstacle[]
}

/** A zone's steep stretch is where its ground reaches this share of its steep angle. */
const STEEP_SHARE = 0.85

/** Half the length of a danger that has a place but no extent [m]. */
const HALF_SPOT_M = 0.3

/** Dangers that have a place on the section; all of them stand in the list of things to settle. */
export function dangersOn(findings: Findings, drawn: Drawn): SectionDanger[] {
  return findings.toSettle.flatMap((entry) => {
    if (entry.kind !== 'danger') return []
    const stretch = stretchOf(entry, drawn)
    return stretch
      ? [{ id: entry.id, what: entry.what, mend: entry.mend, zoneId: entry.zoneId, ...stretch }]
      : []
  })
}

function stretchOf(entry: Settlement, drawn: Drawn): Stretch | undefined {
  const thing = drawn.obstacles.find((obstacle) => entry.id === `around-${obstacle.id}`)
  if (thing) return thing.kind === 'services' ? undefined : { fromM: thing.fromM, toM: thing.toM }
  const zone = drawn.zones.find((each) => each.id === entry.zoneId)
  if (zone && entry.id.startsWith('steep-')) return steepStretch(zone, drawn.ground)
  if (entry.atM !== undefined) return { fromM: entry.atM - HALF_SPOT_M, toM: entry.atM + HALF_SPOT_M }
  return zone?.spans[0]
}

function steepStretch(zone: SectionZone, ground: readonly GroundPoint[]): Stretch | undefined {
  const steep = ground.filter(
    ({ distanceM, slopeDeg }) =>
      slopeDeg >= zone.slopeDegSteep * STEEP_SHARE &&
      zone.spans.some((span) => distanceM >= span.fromM && distanceM <= span.toM),
  )
  const distances = steep.map((point) => point.distanceM)
  return distances.length === 0
    ? zone.spans[0]
    : { fromM: Math.min(...distances), toM: Math.max(...distances) }
}
