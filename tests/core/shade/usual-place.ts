import { climateYear, type Climate } from '#core/climate'
import { sunOnPlane, sunRatios } from '#core/shade'
import { ruralLinke } from '#core/sun'
import { eachMonth, type Twelve } from '#core/units'

/** Watt-hours in a megajoule [Wh/MJ]. */
const WH_PER_MJ = 1e6 / 3600

/** A year like that of southern England. */
const temperate: Climate = {
  from: 'typed',
  elevationM: 50,
  coast: false,
  months: eachMonth((month) => {
    const season = -Math.cos(((month - 0.5) * Math.PI) / 6)
    return { tMinC: 6.5 + 5.5 * season, tMaxC: 15 + 7.5 * season, rainMm: 55 }
  }).slice(),
}

/** Sky and air of that climate at a latitude, 50 m above the sea. */
export function yearSky(latitudeDeg: number, linke: number | Twelve<number> = ruralLinke(latitudeDeg)) {
  const year = climateYear(temperate, { latitudeDeg, elevationM: 50 })
  return {
    site: { latitudeDeg, elevationM: 50, linke, albedo: 0.2 },
    usual: eachMonth((month) => ({
      levelWhPerM2: year[month].solarMjPerM2 * WH_PER_MJ,
      diffuseShare: year[month].diffuseShare,
    })),
    year,
  }
}

/** Ratios of a lone slope in that climate, month by month. */
export function ratiosOn(latitudeDeg: number, slopeDeg: number, aspectDeg: number): Twelve<number> {
  const sun = sunOnPlane({ slopeDeg, aspectDeg }, yearSky(latitudeDeg))
  const ratios = sunRatios(sun, Float64Array.of(slopeDeg))
  return eachMonth((month) => ratios[month][0]!)
}
