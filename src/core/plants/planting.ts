import { toRadians } from '#core/units'
import type { PlantingWish } from './planting-wish'
import type { PlantTables, Site, ZonePlanting } from './plants.types'
import { timeStretch } from './closing'
import { costClass } from './cost'
import { coverByYear, monthsToCover } from './cover-over-time'
import { mixOf, type Mixed } from './mix'
import { zoneVerdicts } from './zone-verdicts'

/** Slope of a tread between terrace walls [°; common practice: near level, a little fall for water]. */
const TREAD_SLOPE_DEG = 2

/** Why a cover has no list of plants. */
const unplanted: Readonly<Partial<Record<PlantingWish['cover'], string>>> = {
  mown: 'Mown grass is sown or turfed: there are no plants to set.',
  leave: 'The zone is left as it is: nothing is planted.',
}

/**
 * What to plant in a zone: every plant weighed, a mix with numbers on the slope, how soon it covers, what it costs.
 *
 * @param site - what the zone offers
 * @param tables - plants, legal lists, poisonous plants
 * @param wish - the cover, who comes here, native share, height limit, plants wanted and not wanted
 * @returns plants offered (best first) and refused with reasons, the mix, cover by year [m²/m²] and months to
 *   cover [months]; lists are empty for covers that are not planted
 * @throws RangeError when the slope area is not above 0, the slope not 0 to below 90° or the native share not 0 to 1
 */
export function plantingOf(site: Site, tables: PlantTables, wish: PlantingWish): ZonePlanting {
  check(site, wish)
  const unplantedBecause = unplanted[wish.cover]
  if (unplantedBecause !== undefined) return nothingPlanted(site, unplantedBecause)
  const ground = wish.cover === 'terrace' ? onTreads(site) : site
  const verdicts = zoneVerdicts(ground, tables, wish)
  const mix = mixOf(verdicts, ground, wish)
  return {
    zoneId: site.zoneId,
    offered: verdicts
      .filter((verdict) => verdict.offered)
      .sort((one, other) => other.fit - one.fit || (one.plant.id < other.plant.id ? -1 : 1)),
    refused: verdicts.filter((verdict) => !verdict.offered),
    mix: mix.map(({ line }) => line),
    ...outlook(mix, ground),
    none: mix.length > 0 ? undefined : reasonForNone(wish),
  }
}

function check(site: Site, wish: PlantingWish): void {
  if (!(site.slopeAreaM2 > 0 && Number.isFinite(site.slopeAreaM2)))
    throw new RangeError(`plantingOf: slopeAreaM2 must be above 0, got ${site.slopeAreaM2}`)
  if (!(site.slopeDeg >= 0 && site.slopeDeg < 90))
    throw new RangeError(`plantingOf: slopeDeg must be 0 to below 90, got ${site.slopeDeg}`)
  if (!(wish.nativeShare >= 0 && wish.nativeShare <= 1))
    throw new RangeError(`plantingOf: nativeShare must be 0 to 1, got ${wish.nativeShare}`)
}

function nothingPlanted(site: Site, none: string): ZonePlanting {
  return {
    zoneId: site.zoneId,
    offered: [],
    refused: [],
    mix: [],
    monthsToCover: undefined,
    coverByYear: [],
    costClass: undefined,
    none,
  }
}

// Treads are near level, and their area is the zone's area in plan.
function onTreads(site: Site): Site {
  return {
    ...site,
    slopeDeg: Math.min(site.slopeDeg, TREAD_SLOPE_DEG),
    slopeAreaM2: site.slopeAreaM2 * Math.cos(toRadians(site.slopeDeg)),
  }
}

function outlook(
  mix: readonly Mixed[],
  site: Site,
): Pick<ZonePlanting, 'monthsToCover' | 'coverByYear' | 'costClass'> {
  const lines = mix.map(({ line, verdict }) => ({
    plant: verdict.plant,
    share: line.share,
    sown: line.seedG !== undefined,
    perZoneM2: line.share * line.perM2,
  }))
  const stretch = timeStretch(site)
  return {
    monthsToCover: monthsToCover(lines, stretch),
    coverByYear: mix.length > 0 ? coverByYear(lines, (stretch.from + stretch.to) / 2) : [],
    costClass: costClass(lines),
  }
}

function reasonForNone({ cover }: PlantingWish): string {
  return cover === 'meadow'
    ? 'No meadow grass of the table suits the zone, and flowers alone do not hold a slope: see why each plant is refused.'
    : 'No plant of the table that can be relied on suits the zone: see why each plant is refused.'
}
