import { horizonOf } from '#core/sun'
import { scoreNames, type ScoreName } from '#core/scores'
import type { Findings } from '#plan'
import { dayLayer, sunRatioLayer, type Scene, type SunOptions } from './sun-layers'

/** A grid that can be written out, in plain words. */
export interface Layer {
  readonly name: string
  readonly unit: string
  /** Decimals written. */
  readonly decimals: number
  /** One sentence: what it is and how it comes about. */
  readonly method: string
  /** A key of data/sources.json. */
  readonly source: string
  /** True when it looks in a direction that must be given. */
  readonly needsAzimuth: boolean
  /** One value per cell of the surface's frame; read only inside the plot. */
  values(scene: Scene, options: LayerOptions): ArrayLike<number>
}

/** What a person may ask of a layer. */
export interface LayerOptions extends SunOptions {
  /** Direction looked towards, clockwise from true north [°]. */
  readonly azimuthDeg?: number
}

type Row = Pick<Layer, 'name' | 'unit' | 'decimals' | 'method' | 'source' | 'values'>

const groundRows: readonly Row[] = [
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

const sunRows: readonly Row[] = [
  {
    name: 'sun-hours',
    unit: 'h',
    decimals: 2,
    method: 'Hours of direct sun on a clear day, ground shading itself; midsummer unless --date says else.',
    source: 'hofierka-suri-2002',
    values: dayLayer((day) => day.sunHours),
  },
  {
    name: 'beam',
    unit: 'Wh per m² of slope',
    decimals: 1,
    method: 'Direct radiation of a clear day; midsummer unless --date says else.',
    source: 'hofierka-suri-2002',
    values: dayLayer((day) => day.beamWhPerM2),
  },
  {
    name: 'diffuse',
    unit: 'Wh per m² of slope',
    decimals: 1,
    method: 'Radiation from the sky on a clear day; midsummer unless --date says else.',
    source: 'hofierka-suri-2002',
    values: dayLayer((day) => day.diffuseWhPerM2),
  },
  {
    name: 'reflected',
    unit: 'Wh per m² of slope',
    decimals: 1,
    method: 'Radiation thrown up by the ground in front on a clear day; midsummer unless --date says else.',
    source: 'hofierka-suri-2002',
    values: dayLayer((day) => day.reflectedWhPerM2),
  },
  {
    name: 'global',
    unit: 'Wh per m² of slope',
    decimals: 1,
    method: 'Direct, sky and reflected radiation together on a clear day; midsummer unless --date says else.',
    source: 'hofierka-suri-2002',
    values: dayLayer((day) =>
      day.beamWhPerM2.map(
        (beam, cell) => beam + (day.diffuseWhPerM2[cell] ?? 0) + (day.reflectedWhPerM2[cell] ?? 0),
      ),
    ),
  },
  {
    name: 'sun-ratio',
    unit: 'ratio',
    decimals: 4,
    method:
      'Radiation over that of open level ground, per m² of plan, under the usual sky of the month of --date.',
    source: 'duffie-beckman',
    values: sunRatioLayer,
  },
  {
    name: 'sky-view',
    unit: 'ratio',
    decimals: 4,
    method: 'Share of the sky that the cell sees over its own tilt and the ground around it.',
    source: 'dozier-frew-1990',
    values: ({ findings }) => findings.sun.skyView,
  },
]

/** The skyline in one direction. */
const horizonRow: Row = {
  name: 'horizon',
  unit: '°',
  decimals: 3,
  method:
    'Height of the skyline above horizontal towards --azimuth, ground of the plot alone; -90 with none that way.',
  source: 'dozier-1981',
  values: ({ findings: { surface } }, { azimuthDeg }) => {
    if (azimuthDeg === undefined) throw new RangeError('horizon: azimuthDeg [°] must be given, got none')
    return horizonOf(surface.frame, surface.levelM, surface.share, azimuthDeg)
  },
}

/** A layer that has one value for each zone. */
function zoneRow(
  row: Omit<Row, 'values'>,
  valueOf: (findings: Findings, zoneIndex: number) => number | undefined,
): Row {
  return {
    ...row,
    values: ({ findings }) =>
      Array.from(findings.zoning.zoneOfCell, (zone) => (zone < 0 ? 0 : (valueOf(findings, zone) ?? 0))),
  }
}

const scoreWords: Readonly<Record<ScoreName, string>> = {
  wetness: '0 parched to 100 soaked',
  sun: '0 none to 100 all there is',
  erosion: '0 safe to 100 washing away',
  frost: '0 hardly any to 100 severe',
  working: 'difficulty of working, 0 easy to 100 impossible',
}

const zoneRows: readonly Row[] = [
  zoneRow(
    {
      name: 'zone',
      unit: 'number',
      decimals: 0,
      method: 'Number of the zone, 1 for A, 2 for B and so on.',
      source: 'own-judgement',
    },
    (_findings, zone) => zone + 1,
  ),
  ...scoreNames.map((name) =>
    zoneRow(
      {
        name,
        unit: 'points of 100',
        decimals: 0,
        method: `Score of the cell’s zone by the rules of data/rules: ${scoreWords[name]}.`,
        source: 'own-judgement',
      },
      ({ zones }, zone) => zones[zone]?.scores[name].value,
    ),
  ),
  zoneRow(
    {
      name: 'dry-days',
      unit: 'days a year',
      decimals: 1,
      method: 'Days when plants of the cell’s zone run short of water in a usual year.',
      source: 'fao-56',
    },
    ({ zones }, zone) => zones[zone]?.facts.dryDays,
  ),
  zoneRow(
    {
      name: 'wet-days',
      unit: 'days a year',
      decimals: 1,
      method: 'Days when the root zone of the cell’s zone stands above field capacity in a usual year.',
      source: 'fao-56',
    },
    ({ zones }, zone) => zones[zone]?.facts.wetDays,
  ),
]

/** Every grid that can be written out. */
export const layers: readonly Layer[] = [
  ...[...groundRows, ...sunRows].map((row) => ({ ...row, needsAzimuth: false })),
  { ...horizonRow, needsAzimuth: true },
  ...zoneRows.map((row) => ({ ...row, needsAzimuth: false })),
]

/** A layer's values in rows for JSON: null outside the plot. */
export function cellsOf(
  values: ArrayLike<number>,
  share: Float64Array,
  decimals: number,
): readonly (number | null)[] {
  return Array.from(share, (part, cell) =>
    part > 0 ? Number((values[cell] ?? 0).toFixed(decimals)) + 0 : null,
  )
}
