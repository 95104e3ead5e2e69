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
import { meansOfZones, middlesOfZones, planesOfZones, zoneParts, type ZonedCells } from './zone-cells'
import { zoneHeatLoad } from './zone-heat-load'
import { zoneLitShares } from './zone-lit-shares'
import { FAR, FIRST_THING, NOBODY, OWN_SLOPE, SEVERAL, takersOf } from './zone-takers'

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
  const zones = { zoneOfCell: of.zoneOfCell, count: of.count }
  const parts = zoneParts(zones, shading.ground.share)
  const skylines = of.skylines ?? skylinesAround(shading.ground)
  const planes = cellPlanes(cells, shading.ground.share)
  const { latitudeDeg } = sky.site
  const means = meansOfSun(of, parts)
  const zonePlanes = planesOfZones(zones, parts, cells)
  const middles = middlesOfZones(zones, parts, shading.ground.frame)
  const litShares = zoneLitShares({ shading, skylines, zones, planes, parts, latitudeDeg })
  const accounts = zoneAccounts({
    zones,
    parts,
    planes,
    site: sky.site,
    things: shading.standing.length,
    inTheWay: takersOf(shading, skylines),
  })
  const midsummer = northernTwin(NORTHERN_MIDSUMMER, latitudeDeg)
  return Array.from({ length: of.count }, (_, zone) => {
    const mean = means(zone)
    return {
      ...mean,
      openHours: eachMonth((month) => of.sun.openLevel[month].sunHours),
      takers: takersOfZone(shading, accounts, zone),
      litShares: eachMonth((month) => litShares[month][zone]!),
      lightClass: lightClassOf(
        {
          sunHours: mean.sunHours[midsummer],
          clearHours: accounts[midsummer].clearH[zone]!,
          leafyHours: accounts[midsummer].leafyH[zone]!,
        },
        of.classes,
      ),
      ...darkness(shading, cells, middles[zone]!, latitudeDeg),
      ...zoneHeatLoad(zonePlanes[zone]!, sky, mean.usualWhPerM2),
    }
  })
}

// Means of the sun on the cells, for one zone after another.
function meansOfSun(of: SunnedZones, parts: Float64Array) {
  const { sun } = of
  const means = (values: Float32Array) => meansOfZones(of, parts, (cell) => values[cell]!)
  const monthly = (values: Twelve<Float32Array>) => {
    const found = eachMonth((month) => means(values[month]))
    return (zone: number) => eachMonth((month) => found[month][zone]!)
  }
  const sunHours = monthly(sun.sunHours)
  const morningHours = monthly(sun.morningHours)
  const dappledHours = monthly(sun.dappledHours)
  const usualWhPerM2 = monthly(sun.usualWhPerM2)
  const skyView = means(sun.skyView)
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
    eachMonth(
      (month) => accounts[month].bookedH[zone * (FIRST_THING + standing.length) + who]! * share(month),
    )
  const all = () => 1
  const taker = (what: SunTaker['what'], name: string, hours: Twelve<number>) => ({
    what,
    thingId: undefined,
    name,
    hours,
  })
  return [
    taker('own-slope', 'its own slope', taken(OWN_SLOPE, all)),
    taker('ground', 'other ground of the plot', taken(NOBODY, all)),
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
