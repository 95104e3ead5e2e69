import { eachMonth, northernTwin, type Month, type Twelve } from '#core/units'
import { requireSite } from '#core/sun'
import { cellPlanes } from './cell-planes'
import { darkSpell } from './dark-spell'
import { requireFit } from './day-shading'
import { lightClassOf, type LightClasses } from './light-class'
import { placeSky } from './place-sky'
import type { PlanPoint } from '#core/geometry'
import type { Shading, SunOnGround, SunTaker, TiltedCells, ZoneSun } from './shade.types'
import { skylinesAround, type Skylines } from './skylines'
import type { YearSky } from './sun-on-ground'
import { zoneAccounts, type MonthAccount } from './zone-account'
import { meansOfZones, middlesOfZones, planesOfZones, zoneWeights, type ZonedCells } from './zone-cells'
import { zoneHeatLoad } from './zone-heat-load'
import { FAR, FIRST_THING, GROUND, SEVERAL, takersOf } from './zone-takers'

/** Zones, and what their sun is read from besides the ground. */
interface SunnedZones extends ZonedCells {
  /** Sun on the cells of the same ground, under the same sky. */
  readonly sun: SunOnGround
  /** Skylines of the ground, where they are already known. */
  readonly skylines?: Skylines | undefined
  /** Light classes, in order. */
  readonly classes: LightClasses
}

/** Midsummer's month in the north: June. */
const NORTHERN_MIDSUMMER: Month = 5

/**
 * Sun of each zone: means of its cells by plan area, who takes the rest, and what follows from it.
 *
 * @param shading - ground, things and hills that can take the sun
 * @param cells - slope and aspect of each cell
 * @param sky - place, air and the usual sky of each month
 * @param of - zone of each cell, the sun on the cells, and light classes
 * @returns one to a zone
 * @throws RangeError when grids do not fit together, a zone has no cell inside the plot or no light class fits
 */
export function zoneSun(
  shading: Shading,
  cells: TiltedCells,
  sky: YearSky,
  of: SunnedZones,
): readonly ZoneSun[] {
  requireSite(sky.site)
  requireFit(shading.ground, cells)
  const { share } = shading.ground
  const weights = zoneWeights(of, share)
  const means = meansOfSun(of, share, weights)
  const planes = planesOfZones(of, share, cells, weights)
  const middles = middlesOfZones(of, shading.ground, weights)
  const accounts = zoneAccounts({
    zones: of,
    share,
    weights,
    planes: cellPlanes(cells, share),
    site: sky.site,
    things: shading.standing.length,
    inTheWay: takersOf(shading, of.skylines ?? skylinesAround(shading.ground)),
  })
  const midsummer = northernTwin(NORTHERN_MIDSUMMER, sky.site.latitudeDeg)
  return Array.from({ length: of.count }, (_, zone) => {
    const mean = means(zone)
    return {
      ...mean,
      openHours: eachMonth((month) => of.sun.openLevel[month].sunHours),
      takers: takersOfZone(shading, accounts, zone),
      litShares: eachMonth((month) => accounts[month].litShares[zone]!),
      lightClass: lightClassOf(
        {
          sunHours: mean.sunHours[midsummer],
          clearHours: accounts[midsummer].clearH[zone]!,
          leafyHours: accounts[midsummer].leafyH[zone]!,
        },
        of.classes,
      ),
      ...darkness(shading, cells, middles[zone]!, sky.site.latitudeDeg),
      ...zoneHeatLoad(planes[zone]!, sky, mean.usualWhPerM2),
    }
  })
}

// Means of the sun on the cells, for one zone after another.
function meansOfSun(of: SunnedZones, share: Float64Array, weights: Float64Array) {
  const { sun } = of
  const monthly = (values: Twelve<Float32Array>) => {
    const means = eachMonth((month) => meansOfZones(of, share, weights, values[month]))
    return (zone: number) => eachMonth((month) => means[month][zone]!)
  }
  const sunHours = monthly(sun.sunHours)
  const morningHours = monthly(sun.morningHours)
  const dappledHours = monthly(sun.dappledHours)
  const usualWhPerM2 = monthly(sun.usualWhPerM2)
  const skyView = meansOfZones(of, share, weights, sun.skyView)
  return (zone: number) => ({
    sunHours: sunHours(zone),
    morningHours: morningHours(zone),
    dappledHours: dappledHours(zone),
    usualWhPerM2: usualWhPerM2(zone),
    skyView: skyView[zone]!,
  })
}

function darkness(shading: Shading, cells: TiltedCells, middle: PlanPoint, latitudeDeg: number) {
  const place = placeSky(shading, cells, middle)
  if (place === undefined) throw new RangeError('zoneSun: the middle of a zone must be on the plot')
  return { middle, dark: darkSpell(place, latitudeDeg) }
}

// The account of one zone, the same takers in the same order for every zone.
function takersOfZone(
  { standing }: Shading,
  accounts: Twelve<MonthAccount>,
  zone: number,
): readonly SunTaker[] {
  const taken = (who: number, share: (month: Month) => number) =>
    eachMonth((month) => accounts[month].takenH[zone * (FIRST_THING + standing.length) + who]! * share(month))
  const all = () => 1
  const taker = (what: SunTaker['what'], name: string, hours: Twelve<number>) => ({
    what,
    thingId: undefined,
    name,
    hours,
  })
  return [
    taker(
      'own-slope',
      'its own slope',
      eachMonth((month) => accounts[month].ownSlopeH[zone]!),
    ),
    taker('ground', 'other ground of the plot', taken(GROUND, all)),
    taker('far', 'far hills', taken(FAR, all)),
    ...standing.map(({ id, name, through }, at) => ({
      ...taker(
        'thing',
        name,
        taken(FIRST_THING + at, (month) => Math.max(0, 1 - through[month])),
      ),
      thingId: id,
    })),
    taker('several', 'several at once', taken(SEVERAL, all)),
  ]
}
