import type { GroundRow } from './layer.types'

/** Where the water of the ground goes. */
export const flowRows: readonly GroundRow[] = [
  {
    name: 'filled',
    unit: 'm',
    decimals: 3,
    method: 'Level with every hollow filled to its lip, so that water finds a way out.',
    source: 'barnes-2014',
    ofGround: ({ facts }) => facts.filledM(),
  },
  {
    name: 'upslope-area',
    unit: 'm²',
    decimals: 2,
    method:
      'Plan area whose water passes through the cell, its own included, shared among all lower neighbours.',
    source: 'freeman-1991',
    ofGround: ({ facts }) => facts.upslopeAreaM2(),
  },
  {
    name: 'accumulation',
    unit: 'cells',
    decimals: 3,
    method:
      'Cells whose water passes through the cell, its own included and a cut cell counting its part, shared among all lower neighbours by (drop / distance)^1.1.',
    source: 'freeman-1991',
    ofGround: ({ facts }) => facts.accumulation(),
  },
  {
    name: 'accumulation-d8',
    unit: 'cells',
    decimals: 3,
    method: 'The same when each cell hands all its water to the one neighbour down the steepest way (D8).',
    source: 'o-callaghan-mark-1984',
    ofGround: ({ facts }) => facts.accumulationD8(),
  },
  {
    name: 'accumulation-dinf',
    unit: 'cells',
    decimals: 3,
    method:
      'The same when each cell’s water goes down the steepest of its eight triangles, shared between the two neighbours beside that direction (D-infinity).',
    source: 'tarboton-1997',
    ofGround: ({ facts }) => facts.accumulationDinf(),
  },
  {
    name: 'flow-direction-d8',
    unit: '°',
    decimals: 0,
    method:
      'Direction of the one neighbour down the steepest way, clockwise from north in steps of 45; -1 where water leaves the plot.',
    source: 'o-callaghan-mark-1984',
    ofGround: ({ facts }) => Float32Array.from(facts.steepestWays(), (way) => (way < 0 ? way : way * 45)),
  },
  {
    name: 'specific-catchment-area',
    unit: 'm²/m',
    decimals: 3,
    method: 'Plan area whose water passes through a metre of contour: the upslope area over the cell’s side.',
    source: 'beven-kirkby-1979',
    ofGround: ({ facts }) => facts.catchmentM(),
  },
  {
    name: 'wetness-index',
    unit: 'ln m',
    decimals: 4,
    method:
      'Logarithm of specific catchment area over gradient, on ground generalised to 16 m or a tenth of the plot’s width, whichever is less.',
    source: 'larson-2022',
    ofGround: ({ facts }) => facts.wetnessIndex(),
  },
  {
    name: 'wetness-index-raw',
    unit: 'ln m',
    decimals: 4,
    method: 'The same on the cells as they are: poor on fine cells, kept to compare with other programs.',
    source: 'beven-kirkby-1979',
    ofGround: ({ facts }) => facts.wetnessIndexRaw(),
  },
  {
    name: 'height-above-foot',
    unit: 'm',
    decimals: 3,
    method: 'Height above the place where the cell’s water leaves the plot or stops.',
    source: 'own-judgement',
    ofGround: ({ facts }) => facts.heightAboveFootM(),
  },
  {
    name: 'position',
    unit: 'ratio',
    decimals: 4,
    method: 'Place on the slope, 0 at the foot to 1 at the crest, by height along the flow of water.',
    source: 'own-judgement',
    ofGround: ({ facts }) => facts.position(),
  },
  {
    name: 'relative-position',
    unit: 'ratio',
    decimals: 4,
    method:
      'Height between the place where the cell’s water leaves, 0, and the highest from which water comes to it, 1; every top is a crest.',
    source: 'own-judgement',
    ofGround: ({ facts }) => facts.relativePosition(),
  },
]
