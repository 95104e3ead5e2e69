import type { LayerRow } from './layer.types'

/** The ground and where its water goes. */
export const groundRows: readonly LayerRow[] = [
  {
    name: 'level',
    unit: 'm',
    decimals: 3,
    method: 'Level of the ground above the survey’s own datum, read from its triangles or grid.',
    source: 'yours',
    values: ({ findings }) => findings.surface.levelM,
  },
  {
    name: 'slope',
    unit: '°',
    decimals: 5,
    method: 'Angle of the ground from horizontal, from a cell and its eight neighbours (Horn 1981).',
    source: 'horn-1981',
    values: ({ findings }) => findings.terrain.slopeDeg,
  },
  {
    name: 'aspect',
    unit: '°',
    decimals: 4,
    method: 'Direction the ground faces, clockwise from true north; -1 where level (Horn 1981).',
    source: 'horn-1981',
    values: ({ findings }) => findings.terrain.aspectDeg,
  },
  {
    name: 'filled',
    unit: 'm',
    decimals: 3,
    method: 'Level with every hollow filled to its lip, so that water finds a way out.',
    source: 'barnes-2014',
    values: ({ findings }) => findings.terrain.filledM,
  },
  {
    name: 'upslope-area',
    unit: 'm²',
    decimals: 2,
    method:
      'Plan area whose water passes through the cell, its own included, shared among all lower neighbours.',
    source: 'freeman-1991',
    values: ({ findings }) => findings.terrain.upslopeAreaM2,
  },
  {
    name: 'height-above-foot',
    unit: 'm',
    decimals: 3,
    method: 'Height above the place where the cell’s water leaves the plot or stops.',
    source: 'own-judgement',
    values: ({ findings }) => findings.terrain.heightAboveFootM,
  },
  {
    name: 'position',
    unit: 'ratio',
    decimals: 4,
    method: 'Place on the slope, 0 at the foot to 1 at the crest, by height along the flow of water.',
    source: 'own-judgement',
    values: ({ findings }) => findings.terrain.position,
  },
  {
    name: 'form-down',
    unit: '1/m',
    decimals: 5,
    method: 'Curvature down the slope: positive where it steepens and sheds, negative where it eases.',
    source: 'zevenbergen-thorne-1987',
    values: ({ findings }) => findings.terrain.formDown,
  },
  {
    name: 'form-across',
    unit: '1/m',
    decimals: 5,
    method: 'Curvature across the slope: positive on a nose, negative in a hollow that gathers water.',
    source: 'zevenbergen-thorne-1987',
    values: ({ findings }) => findings.terrain.formAcross,
  },
]
