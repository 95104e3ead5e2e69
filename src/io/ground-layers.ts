import { slopeAreaFactor, toRadians } from '#core/units'
import { flowRows } from './flow-layers'
import type { GroundRow, GroundScene } from './layer.types'

/** Ground flatter than this has no “1 in n” [m/m]: a millimetre in a thousand kilometres. */
const LEVEL_GRADIENT = 1e-9

const CLASSES = '1 ridge, 2 upper slope, 3 middle slope, 4 flat, 5 lower slope, 6 valley'

const shapeRows: readonly GroundRow[] = [
  {
    name: 'level',
    unit: 'm',
    decimals: 3,
    method: 'Level of the ground above the survey’s own datum, read from its triangles or grid.',
    source: 'yours',
    ofGround: ({ surface }) => surface.levelM,
  },
  {
    name: 'slope',
    unit: '°',
    decimals: 5,
    method: 'Angle of the ground from horizontal, from a cell and its eight neighbours (Horn 1981).',
    source: 'horn-1981',
    ofGround: ({ facts }) => facts.steepness().slopeDeg,
  },
  {
    name: 'aspect',
    unit: '°',
    decimals: 4,
    method: 'Direction the ground faces, clockwise from true north; -1 where level (Horn 1981).',
    source: 'horn-1981',
    ofGround: ({ facts }) => facts.steepness().aspectDeg,
  },
  {
    name: 'slope-percent',
    unit: '%',
    decimals: 3,
    method: 'Rise of the ground for 100 of level distance (Horn 1981).',
    source: 'horn-1981',
    ofGround: (scene) => eachGradient(scene, (gradient) => 100 * gradient),
  },
  {
    name: 'slope-ratio',
    unit: '1 in n',
    decimals: 2,
    method: 'Level distance for a rise of 1, the n of “1 in n” (Horn 1981); -1 where level.',
    source: 'horn-1981',
    ofGround: (scene) => eachGradient(scene, (gradient) => (gradient < LEVEL_GRADIENT ? -1 : 1 / gradient)),
  },
  {
    name: 'slope-area',
    unit: 'm²',
    decimals: 4,
    method: 'Area of the cell’s part inside the plot, measured on the slope: plan area over the cosine.',
    source: 'horn-1981',
    ofGround: ({ surface, facts }) => {
      const { slopeDeg } = facts.steepness()
      const cellM2 = surface.frame.cellM ** 2
      return surface.share.map((share, cell) => share * cellM2 * slopeAreaFactor(slopeDeg[cell] ?? 0))
    },
  },
  {
    name: 'tpi',
    unit: 'm',
    decimals: 4,
    method:
      'Topographic position: level less the mean level within --radius CELLS, the cell itself counted, the window cut at the boundary; a sixteenth of the plot’s width when left out.',
    source: 'guisan-1999',
    takes: ['radiusCells'],
    ofGround: ({ facts }, { radiusCells }) =>
      radiusCells === undefined ? facts.standings().small.indexM : facts.standing(radiusCells),
  },
  {
    name: 'standing-near',
    unit: 'class',
    decimals: 0,
    method: `Position by the level within a sixteenth of the plot’s width: ${CLASSES}.`,
    source: 'weiss-2001',
    ofGround: ({ facts }) => facts.standings().small.classes,
  },
  {
    name: 'standing-far',
    unit: 'class',
    decimals: 0,
    method: `Position by the level within a quarter of the plot’s width: ${CLASSES}.`,
    source: 'weiss-2001',
    ofGround: ({ facts }) => facts.standings().large.classes,
  },
  {
    name: 'form-down',
    unit: '1/m',
    decimals: 5,
    method:
      'Curvature down the slope (profile curvature): positive where it steepens and sheds, negative where it eases.',
    source: 'zevenbergen-thorne-1987',
    ofGround: ({ facts }) => facts.form().down,
  },
  {
    name: 'form-across',
    unit: '1/m',
    decimals: 5,
    method:
      'Curvature of the upright cut across the slope (tangential; plan curvature times the sine of the slope): positive on a nose, negative in a hollow that gathers water.',
    source: 'zevenbergen-thorne-1987',
    ofGround: ({ facts }) => facts.form().across,
  },
]

/** The ground and where its water goes. */
export const groundRows: readonly GroundRow[] = [...shapeRows, ...flowRows]

function eachGradient({ facts }: GroundScene, of: (gradient: number) => number): Float64Array {
  return facts.steepness().slopeDeg.map((slopeDeg) => of(Math.tan(toRadians(slopeDeg))))
}
