import { horizonOf } from '#core/shade'
import { accuracyRows } from './accuracy-layers'
import { aroundRows, seenRow } from './around-layers'
import { groundRows } from './ground-layers'
import type { GroundRow, Layer, LayerRow } from './layer.types'
import { dayLayer, sunRatioLayer } from './sun-layers'
import { zoneRows } from './zone-layers'

const sunRows: readonly LayerRow[] = [
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
const horizonRow: GroundRow = {
  name: 'horizon',
  unit: '°',
  decimals: 3,
  method:
    'Height of the skyline above horizontal towards --azimuth, ground of the plot alone; -90 with none that way.',
  source: 'dozier-1981',
  ofGround: ({ surface }, { azimuthDeg }) => {
    if (azimuthDeg === undefined) throw new RangeError('horizon: azimuthDeg [°] must be given, got none')
    return horizonOf(surface.frame, surface.levelM, surface.share, azimuthDeg)
  },
}

/** A layer that asks for nothing. */
const plain = { needsAzimuth: false, needsViewpoint: false } as const

/** Every grid that can be written out. */
export const layers: readonly Layer[] = [
  ...[...groundRows, ...aroundRows, ...accuracyRows, ...sunRows].map((row) => ({ ...row, ...plain })),
  { ...horizonRow, ...plain, needsAzimuth: true },
  { ...seenRow, ...plain, needsViewpoint: true },
  ...zoneRows.map((row) => ({ ...row, ...plain })),
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
