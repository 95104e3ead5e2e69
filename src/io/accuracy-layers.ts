import type { LayerRow } from './layer.types'

/** How good the surface is. */
export const accuracyRows: readonly LayerRow[] = [
  {
    name: 'level-error',
    unit: 'm',
    decimals: 4,
    method:
      'Standard error of the level: of the measured points with the weights the cell was read with, and of the ground between them.',
    source: 'journel-huijbregts-1978',
    values: ({ findings }) => findings.accuracy.levelSdM,
  },
  {
    name: 'slope-error',
    unit: '°',
    decimals: 3,
    method:
      'Standard error of the slope, carried from the errors of the levels it is read from and of the ground between them.',
    source: 'jcgm-100-2008',
    values: ({ findings }) => findings.accuracy.slopeSdDeg,
  },
]
