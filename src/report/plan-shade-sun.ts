import { seasonWeights } from '#core/zones'
import { sunRatios } from '#core/shade'
import { monthNames, months, toRadians } from '#core/units'
import type { Findings } from '#plan'
import type { ShadingRow } from './plan-shade.types'
import { changeNames, CHANGE_LIMITS_H } from './words/change-classes'

/** Limits of hours of direct sun [h]; those of 1, 3 and 6 h are the limits of light classes. */
const HOURS_LIMITS_H = [0, 1, 3, 4.5, 6, 8, 10] as const

/** Limits of radiation against open level ground, and of the sky that is seen [%]. */
const SEASON_LIMITS_PERCENT = [0, 40, 60, 75, 90, 100, 110] as const
const SKY_LIMITS_PERCENT = [0, 30, 50, 65, 80, 90, 95] as const

const PERCENT = 100

const monthRows: readonly ShadingRow[] = months.map((month) => ({
  id: `sun-${String(month + 1).padStart(2, '0')}`,
  name: `direct sun on a clear day in ${monthNames[month]}`,
  group: 'sun',
  unit: 'h',
  ramp: 'sun',
  limits: HOURS_LIMITS_H,
  values: (_plan, { sun }) => sun.sunHours[month],
}))

const yearRows: readonly ShadingRow[] = [
  {
    id: 'sun-season',
    name: 'sun of the growing season, of open level ground',
    group: 'sun',
    unit: '%',
    ramp: 'sun',
    limits: SEASON_LIMITS_PERCENT,
    values: (_plan, findings) => seasonPercent(findings),
  },
  {
    id: 'sky',
    name: 'sky that is seen',
    group: 'sun',
    unit: '%',
    ramp: 'sun',
    limits: SKY_LIMITS_PERCENT,
    values: (_plan, { sun }) => sun.skyView.map((share) => share * PERCENT),
  },
]

/** Sun by the month, of the season, the sky, and what each trial would bring. */
export function sunRows({ trials }: Findings): readonly ShadingRow[] {
  return [
    ...monthRows,
    ...yearRows,
    ...trials.map(({ trialId, name, midsummerGainH }): ShadingRow => ({
      id: `trial-${trialId}`,
      name: `sun at midsummer after “${name}”`,
      group: 'trials',
      unit: 'h',
      ramp: 'change',
      limits: CHANGE_LIMITS_H,
      words: changeNames,
      values: () => midsummerGainH,
    })),
  ]
}

/** Radiation of the growing months per metre of slope over that of open level ground [%]. */
function seasonPercent({ sun, terrain, climate }: Findings): Float64Array {
  const season = seasonWeights(climate, sun.openLevel)
  const ratios = sunRatios(sun, terrain.slopeDeg)
  return terrain.slopeDeg.map((slopeDeg, cell) => {
    const sum = months.reduce<number>((total, month) => total + season[month] * (ratios[month][cell] ?? 0), 0)
    return sum * Math.cos(toRadians(slopeDeg)) * PERCENT
  })
}
