import type { Surface } from '#core/survey'
import { edgeEntries } from '#core/terrain'
import type { EdgeStretch, GroundBeyond, UnitEdge } from '#core/water'
import type { Zoning } from '#core/zones'
import type { Plan } from './plan.schema'
import type { Beyond } from './plan-survey.schema'

/** The edges of the plot over which ground beyond sheds onto each zone, with what the person said lies there. */
export function zoneEdges({ survey }: Plan, surface: Surface, zoning: Zoning): readonly UnitEdge[] {
  const beyond = survey.beyond ?? []
  if (beyond.length === 0) return []
  const edges = zoning.zones.map(({ id }) => ({
    unitId: id,
    enteringM: 0,
    widths: new Map<Beyond, number>(),
  }))
  for (const { cell, widthM, stretch } of edgeEntries(surface, beyond)) {
    const edge = edges[zoning.zoneOfCell[cell] ?? -1]
    if (!edge) continue
    edge.enteringM += widthM
    if (stretch) edge.widths.set(stretch, (edge.widths.get(stretch) ?? 0) + widthM)
  }
  return edges.map(({ unitId, enteringM, widths }) => ({
    unitId,
    enteringM,
    stretches: [...widths].map(([stretch, widthM]) => edgeStretch(stretch, widthM)),
  }))
}

function edgeStretch({ id, name, what, uphillM = 0 }: Beyond, widthM: number): EdgeStretch {
  return { id, name, what: groundOf(what), widthM, uphillM }
}

// A watercourse carries its own water away.
const groundOf = (what: Beyond['what']): GroundBeyond | undefined =>
  what === 'watercourse' ? undefined : what
