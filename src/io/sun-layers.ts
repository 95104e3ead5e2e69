import { sunRatios, type DayOnGround } from '#core/shade'
import { months, slopeAreaFactor, type Month } from '#core/units'
import { seasonWeights } from '#core/zones'
import type { GroundRow, GroundScene, LayerOption, LayerOptions, LayerRow, Scene } from './layer.types'
import { dayAsked, monthOf } from './plot-light'

/** What may be asked of a layer of one day. */
const ofDay: readonly LayerOption[] = [
  'dayOfYear',
  'sky',
  'linke',
  'albedo',
  'stepHours',
  'castShadows',
  'skyline',
]
const ENERGY = 'Wh per m² of slope'
const DAY =
  'Midsummer unless --date says else, under the usual sky of its month from the plan’s climate unless --sky clear'

/** Sun of one day on the ground: past its own slope, other ground, what stands there and far hills. */
export const dayRows: readonly GroundRow[] = [
  {
    name: 'sun-hours',
    unit: 'h',
    decimals: 2,
    method:
      'Hours of direct sun on a clear day past ground, things and far hills, each counted by the light that gets through; midsummer unless --date says else.',
    source: 'hofierka-suri-2002',
    takes: ofDay,
    ofGround: ({ plan, light }, options) =>
      light.day({ ...options, dayOfYear: dayAsked(plan, options) }).sunHours,
  },
  energyRow(
    'beam',
    'Direct radiation of a day; under a usual sky with the bright ring around the sun.',
    beamOf,
  ),
  energyRow(
    'diffuse',
    'Radiation of a day from the sky; under a usual sky without the ring around the sun.',
    (day) => day.diffuseWhPerM2,
  ),
  energyRow(
    'reflected',
    'Radiation of a day thrown up by the ground in front.',
    (day) => day.reflectedWhPerM2,
  ),
  energyRow('global', 'Direct, sky and reflected radiation of a day together.', globalOf),
]

/** Sun through the year: months, season, and the share of the sky. */
export const yearRows: readonly LayerRow[] = [
  {
    name: 'morning-hours',
    unit: 'h',
    decimals: 2,
    method:
      'The part of the sun’s hours before it is highest, on a clear mean day of the month of --date; midsummer when left out.',
    source: 'hofierka-suri-2002',
    takes: ['dayOfYear'],
    values: (scene, options) => scene.findings.sun.morningHours[monthAsked(scene, options)],
  },
  {
    name: 'dappled-hours',
    unit: 'h',
    decimals: 2,
    method:
      'Hours on the clock in which the sun comes through leaves or branches, on a clear mean day of the month of --date; midsummer when left out.',
    source: 'own-judgement',
    takes: ['dayOfYear'],
    values: (scene, options) => scene.findings.sun.dappledHours[monthAsked(scene, options)],
  },
  {
    name: 'sun-ratio',
    unit: 'ratio',
    decimals: 4,
    method:
      'Radiation over that of open level ground, per m² of plan, under the usual sky of the month of --date; midsummer when left out.',
    source: 'hay-davies-1980',
    takes: ['dayOfYear'],
    values: (scene, options) =>
      sunRatios(scene.findings.sun, scene.findings.terrain.slopeDeg)[monthAsked(scene, options)],
  },
  {
    name: 'season-share',
    unit: 'ratio',
    decimals: 4,
    method:
      'Radiation over that of open level ground, per m² of slope, under the usual sky: totals of the growing months, of the whole year where nothing grows.',
    source: 'duffie-beckman',
    values: seasonShare,
  },
  {
    name: 'sky-view',
    unit: 'ratio',
    decimals: 4,
    method:
      'Share of the sky that the cell sees over its own tilt, the ground around, far hills and what stands there, weighted by the cosine to its own plane; mean of the year where leaves come and go.',
    source: 'dozier-frew-1990',
    values: ({ findings }) => findings.sun.skyView,
  },
]

/** The unit of a layer as it was asked for. */
export function unitAsked({ unit }: { readonly unit: string }, { perPlan }: LayerOptions): string {
  return perPlan ? unit.replace('of slope', 'of plan') : unit
}

function beamOf(day: DayOnGround): Float32Array {
  return day.beamWhPerM2
}

function globalOf({ beamWhPerM2, diffuseWhPerM2, reflectedWhPerM2 }: DayOnGround): Float32Array {
  return beamWhPerM2.map((beamWh, cell) => beamWh + diffuseWhPerM2[cell]! + reflectedWhPerM2[cell]!)
}

function energyRow(name: string, what: string, pick: (day: DayOnGround) => Float32Array): GroundRow {
  return {
    name,
    unit: ENERGY,
    decimals: 1,
    method: `${what} ${DAY}; --per plan for m² of plan.`,
    source: 'hofierka-suri-2002',
    takes: [...ofDay, 'perPlan'],
    ofGround: (scene, options) => perArea(pick(scene.light.day(options)), scene, options),
  }
}

// A square metre of plan has more ground on it the steeper it is.
function perArea(perSlope: Float32Array, { facts }: GroundScene, { perPlan }: LayerOptions): Float32Array {
  if (!perPlan) return perSlope
  const { slopeDeg } = facts.steepness()
  return perSlope.map((wh, cell) => wh * slopeAreaFactor(slopeDeg[cell]!))
}

function monthAsked({ plan }: Scene, options: LayerOptions): Month {
  return monthOf(dayAsked(plan, options))
}

// The same reckoning as a zone's own figure, so that both can be laid side by side.
function seasonShare({ findings: { sun, terrain, climate } }: Scene): Float32Array {
  const season = seasonWeights(climate, sun.openLevel)
  const ratios = sunRatios(sun, terrain.slopeDeg)
  return sun.skyView.map((_, cell) => {
    const sum = months.reduce<number>((total, month) => total + season[month] * ratios[month][cell]!, 0)
    return sum / slopeAreaFactor(terrain.slopeDeg[cell]!)
  })
}
