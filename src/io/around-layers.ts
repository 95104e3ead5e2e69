import { namedPositions, seenFrom } from '#core/terrain'
import { sightBlocks, type Plan } from '#plan'
import type { GroundRow, LayerRow } from './layer.types'

/** What lies around and on the ground: hollows and named positions. */
export const aroundRows: readonly (GroundRow | LayerRow)[] = [
  {
    name: 'hollow-depth',
    unit: 'm',
    decimals: 3,
    method: 'Depth of water that could stand in a hollow before it runs over its lip; 0 where none could.',
    source: 'barnes-2014',
    ofGround: ({ surface, facts }) =>
      facts.filledM().map((filledM, cell) => filledM - (surface.levelM[cell] ?? 0)),
  },
  {
    name: 'named-position',
    unit: 'class',
    decimals: 0,
    method: `Named position on the slope, from height between foot and crest, steepness and bend: ${namedPositions
      .map((name, at) => `${at + 1} ${name}`)
      .join(', ')}.`,
    source: 'ruhe-1975',
    values: ({ findings }) => findings.around.namedPosition,
  },
]

/** What can be seen from one viewpoint. */
export const seenRow: LayerRow = {
  name: 'seen',
  unit: '0 or 1',
  decimals: 0,
  method:
    'Cells whose middle can be seen from the viewpoint --from, over the ground and over houses, walls, fences and hedges: 1 seen, 0 not.',
  source: 'own-judgement',
  takes: ['from'],
  needs: ['from'],
  values: ({ plan, findings: { surface, terrain } }, { from }) =>
    seenFrom(surface, terrain, viewpointNamed(plan, from), sightBlocks(plan)).seen,
}

function viewpointNamed({ survey }: Plan, name: string | undefined) {
  const known = survey.viewpoints ?? []
  const found = known.find((one) => one.name === name || one.id === name)
  if (!found)
    throw new RangeError(
      `seen: from must be one of ${known.map((one) => one.name).join(', ') || 'no viewpoint'}, got ${String(name)}`,
    )
  return found
}
