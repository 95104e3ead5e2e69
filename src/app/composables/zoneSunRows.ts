import { sunRatios } from '#core/shade'
import type { Month } from '#core/units'
import type { Findings } from '#plan'

/** Sun of one zone in one month, in figures. */
export interface ZoneSunRow {
  readonly zoneId: string
  readonly letter: string
  readonly name: string
  readonly lightClass: string
  readonly sunHours: number
  readonly morningHours: number
  /** Radiation on a usual day, by the metre of slope and of plan [Wh/m²]. */
  readonly slopeWhPerM2: number
  readonly planWhPerM2: number
  /** Radiation of the growing season over that of open level ground, 1 when alike. */
  readonly seasonShare: number
  readonly heatLoad: number | undefined
  readonly heatLoadShaded: number | undefined
}

/** The sun of every zone in a month. */
export function zoneSunRows(
  findings: Findings,
  month: Month,
  classes: readonly { readonly id: string; readonly name: string }[],
): ZoneSunRow[] {
  const planWhPerM2 = planRadiation(findings, month)
  return findings.zoning.zones.flatMap((zone, at) => {
    const sun = findings.zoneSun[at]
    if (!sun) return []
    return [
      {
        zoneId: zone.id,
        letter: zone.letter,
        name: zone.name,
        lightClass: classes.find(({ id }) => id === sun.lightClass)?.name ?? sun.lightClass,
        sunHours: sun.sunHours[month],
        morningHours: sun.morningHours[month],
        slopeWhPerM2: sun.usualWhPerM2[month],
        planWhPerM2: planWhPerM2[at] ?? 0,
        seasonShare: zone.seasonSunRatio,
        heatLoad: sun.heatLoad,
        heatLoadShaded: sun.heatLoadShaded,
      },
    ]
  })
}

/** Radiation of each zone by the metre of plan, mean of its cells [Wh/m²]. */
function planRadiation({ sun, surface, terrain, zoning }: Findings, month: Month): number[] {
  const ratio = sunRatios(sun, terrain.slopeDeg)[month]
  const sums = zoning.zones.map(() => ({ areaM2: 0, ratioM2: 0 }))
  zoning.zoneOfCell.forEach((zone, cell) => {
    const [sum, share] = [sums[zone], surface.share[cell] ?? 0]
    if (!sum || !(share > 0)) return
    sum.areaM2 += share
    sum.ratioM2 += share * (ratio[cell] ?? 0)
  })
  const openWh = sun.openLevel[month].usualWhPerM2
  return sums.map(({ areaM2, ratioM2 }) => (areaM2 > 0 ? (openWh * ratioM2) / areaM2 : 0))
}
