import { climateYear, coldAirC, demandOnSlope, hardWinterC, type MonthClimate } from '#core/climate'
import {
  gatherFacts,
  lightClassOf,
  moistureClassOf,
  scoreZone,
  type ScoreFacts,
  type Scores,
} from '#core/scores'
import { coarseTexture, soilProperties, type SoilProperties } from '#core/soil'
import type { Site } from '#core/plants'
import { sunOnPlane, sunRatios } from '#core/shade'
import { heatLoad } from '#core/sun'
import { daysInMonth, degToGradient, eachMonth, months, slopeAreaFactor, type Twelve } from '#core/units'
import { slopePlaces, soilLoss, typicalSlope, waterYear, type WaterUnit, type WaterYear } from '#core/water'
import { seasonWeights } from '#core/zones'
import { sunSite, usualSky } from './ground-stages'
import { isWetThenDry } from './judge-zone'
import type { Spot, SpotFindings, SpotForm } from './spot.types'
import type { Tables } from './tables.types'
import { skyOf } from './zone-stages'

/** What grows on a place before anything is chosen, as on a zone. */
const COVER_BEFORE_CHOICE = 'meadow'

/** Curvature that stands for a bend the eye can see: a circle of 20 m radius [1/m]; own judgement. */
const SEEN_BEND_PER_M = 0.05

const bends: Readonly<Record<SpotForm, number>> = {
  concave: -SEEN_BEND_PER_M,
  straight: 0,
  convex: SEEN_BEND_PER_M,
}

/** Latitude up to which heat load holds [°] (McCune & Keon 2002). */
const HEAT_LOAD_TO_DEG = 60

/**
 * Scores one place without a survey: the sun of its own tilt under an open sky, the water of its place on a typical
 * slope of 20 m, and the same rules as for zones.
 *
 * @param spot - the place
 * @param tables - every table of data/
 * @returns facts, scores and what a plant finds there
 * @throws RangeError when a figure of the place is out of its range
 */
export function assessSpot(spot: Spot, tables: Tables): SpotFindings {
  const { id, latitudeDeg, slopeDeg } = spot
  const climate = climateYear(spot.climate, spot)
  const sun = sunOn(spot, climate)
  const soil = soilProperties(spot.soil, tables.soil)
  const facts = factsOf(spot, { climate, sun, soil }, tables)
  const scores = scoreZone(facts, tables.scores, {}, `place ${id}`)
  const hot = Math.abs(latitudeDeg) <= HEAT_LOAD_TO_DEG
  return {
    id,
    soil,
    facts,
    scores,
    heatLoad: hot ? heatLoad(latitudeDeg, slopeDeg, spot.aspectDeg ?? 0) : undefined,
    site: siteOf(spot, { facts, scores, soil }, tables),
  }
}

interface SpotSun {
  readonly sunHours: Twelve<number>
  /** Radiation over open level ground, per m² of plan [ratio]. */
  readonly ratio: Twelve<number>
  /** The same over the growing season, per m² of slope [ratio]. */
  readonly seasonRatio: number
}

function sunOn(
  { latitudeDeg, elevationM, slopeDeg, aspectDeg }: Spot,
  climate: Twelve<MonthClimate>,
): SpotSun {
  const sun = sunOnPlane(
    { slopeDeg, aspectDeg: aspectDeg ?? 0 },
    { site: sunSite({ site: { latitudeDeg, elevationM } }), usual: usualSky(climate) },
  )
  const ratios = sunRatios(sun, Float64Array.of(slopeDeg))
  const ratio = eachMonth((month) => ratios[month][0] ?? 0)
  const season = seasonWeights(climate, sun.openLevel)
  const mean = months.reduce<number>((sum, month) => sum + season[month] * ratio[month], 0)
  return {
    sunHours: eachMonth((month) => sun.sunHours[month][0] ?? 0),
    ratio,
    seasonRatio: mean / slopeAreaFactor(slopeDeg),
  }
}

interface Known {
  readonly climate: Twelve<MonthClimate>
  readonly sun: SpotSun
  readonly soil: SoilProperties
}

/** The piece of the typical slope that a position falls into. */
const pieceAt = (position: number): number =>
  Math.min(slopePlaces.length - 1, Math.floor((1 - position) * slopePlaces.length))

function factsOf(spot: Spot, { climate, sun, soil }: Known, tables: Tables): ScoreFacts {
  const units = unitsOf(spot, { climate, sun, soil })
  const piece = pieceAt(spot.position)
  const loss = soilLoss(
    {
      soil,
      lengthM: units.slice(0, piece + 1).reduce((sum, { lengthM }) => sum + lengthM, 0),
      slopeDeg: spot.slopeDeg,
      rainMm: eachMonth((month) => climate[month].rainMm),
    },
    tables.soil,
    tables.water,
  )
  const lossAt = (stage: 'bare' | 'covered') => loss.find((one) => one.stage === stage)?.tPerHaYear ?? 0
  return gatherFacts({
    zone: {
      slopeDegMean: spot.slopeDeg,
      slopeDegSteep: spot.slopeDeg,
      position: spot.position,
      formDown: bends[spot.formDown],
      formAcross: bends[spot.formAcross],
      seasonSunRatio: sun.seasonRatio,
      sunHours: sun.sunHours,
    },
    soil,
    water: yearOf(units, piece, { climate, tables }),
    climate,
    latitudeDeg: spot.latitudeDeg,
    heightAboveFootM: spot.position * typicalFallM(spot),
    soilLoss: { bareTPerHa: lossAt('bare'), coveredTPerHa: lossAt('covered') },
    hardWinterC: hardWinterC(climate),
  })
}

function unitsOf({ slopeDeg }: Spot, { climate, sun, soil }: Known): readonly WaterUnit[] {
  return typicalSlope({
    soil,
    slopeDeg,
    cover: COVER_BEFORE_CHOICE,
    referenceEtMm: eachMonth((month) =>
      Math.max(0, demandOnSlope(climate[month], sun.ratio[month]) * daysInMonth[month]),
    ),
  })
}

function yearOf(
  units: readonly WaterUnit[],
  piece: number,
  { climate, tables }: { readonly climate: Twelve<MonthClimate>; readonly tables: Tables },
): WaterYear {
  const year = waterYear(units, skyOf(climate), tables.water, { aboveM: 0 }).units[piece]
  if (!year) throw new RangeError(`assessSpot: the typical slope has no piece ${piece}`)
  return year
}

/** Length of the typical slope that stands in for a survey [m plan], as of the water of a typical slope. */
const TYPICAL_LENGTH_M = 20

const typicalFallM = ({ slopeDeg }: Spot): number => TYPICAL_LENGTH_M * degToGradient(slopeDeg)

interface Judged {
  readonly facts: ScoreFacts
  readonly scores: Scores
  readonly soil: SoilProperties
}

function siteOf(spot: Spot, { facts, scores, soil }: Judged, tables: Tables): Site {
  return {
    zoneId: spot.id,
    wetness: scores.wetness.value,
    moistureClass: moistureClassOf(scores.wetness.value, tables.scores),
    wetWinterDrySummer: isWetThenDry(facts),
    wetDays: facts.airlessDays,
    midsummerSunHours: facts.midsummerSunHours,
    lightClass: lightClassOf(facts.midsummerSunHours, tables.scores),
    ph: soil.ph,
    texture: coarseTexture(soil.textureClass, tables.soil),
    soilDepthM: soil.depthM,
    hardWinterC: facts.hardWinterC - coldAirC((1 - spot.position) * typicalFallM(spot), spot.position),
    slopeDeg: spot.slopeDeg,
    slopeAreaM2: slopeAreaFactor(spot.slopeDeg),
    region: spot.plantRegion,
    legalRegion: spot.legalRegion,
  }
}
