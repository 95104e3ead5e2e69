import { daysInMonth, eachMonth, type Twelve } from '#core/units'
import type { SoilProperties } from '#core/soil'
import type { EdgeStretch, WaterUnit } from './water.types'
import type { WaterTables } from './water-tables.schema'
import { slopedCurveNumber } from './curve-number'
import { drainShares, type DrainShares } from './drain-shares'
import { easyShareAt } from './plant-use'
import { retentionByWetness } from './retention-by-wetness'
import { rootedDepth } from './rooted-depth'
import { sealedZone } from './sealed-zone'
import { seepageByFullness } from './seepage'

/** Everything about a unit's rooting depth that does not change from day to day. */
export interface RootZone {
  /** Water for plants at field capacity [mm]. */
  readonly holdsMm: number
  /** Water above the wilting point when every pore is full [mm]. */
  readonly fullMm: number
  /** Water above the wilting point from which roots are short of air [mm]. */
  readonly airlessMm: number
  /** Retention by water held [mm]; undefined on level terrace beds, which shed only what they can not hold. */
  readonly retention: ((waterMm: number) => number) | undefined
  readonly drains: DrainShares
  readonly seepage: (fullness: number) => number
  /** What the cover would use [mm/d], month by month. */
  readonly demandMmPerDay: Twelve<number>
  /** Share taken up before plants slow down [0 to 1], month by month. */
  readonly easyShare: Twelve<number>
}

/** Soil shallower than this ends on rock or pan [m]: NEH 630 table 7-1 counts deeper soil as open below. */
const DEEP_M = 1

/** Conductivity of rock or pan over that of the soil above it [ratio]: own judgement. */
const PAN_SHARE = 0.3

/**
 * The rooting depth of a unit, ready to be run day by day.
 *
 * @param unit - the unit
 * @param tables - water tables
 * @returns its holding, shedding, draining and use
 * @throws RangeError when the unit's slope, length or soil is outside its range
 */
export function rootZone(unit: WaterUnit, tables: WaterTables): RootZone {
  if (unit.beyond) return zoneBeyond(unit, unit.beyond, tables)
  return zoneOf(unit, tables, coverRow(tables.curveNumbers, unit.cover)[unit.soil.hydrologicGroup])
}

function zoneOf(unit: WaterUnit, tables: WaterTables, tableCurveNumber: number): RootZone {
  const { soil, cover } = unit
  const use = coverRow(tables.coverUse, cover)
  const rooted = rootedDepth(soil, use.rootM)
  const holdsMm = soil.availableWaterMm * rooted.share
  const drainableMm = soil.drainableMm * rooted.share
  const fullMm = holdsMm + drainableMm
  const slopeDeg = cover === 'terrace' ? 0 : unit.slopeDeg
  const curveNumber = slopedCurveNumber(tableCurveNumber, slopeDeg)
  const demandMmPerDay = eachMonth(
    (month) => (use.coefficient * unit.referenceEtMm[month]) / daysInMonth[month],
  )
  return {
    holdsMm,
    fullMm,
    airlessMm: airlessFromMm({ holdsMm, fullMm }, rooted.mm),
    retention: cover === 'terrace' ? undefined : retentionByWetness(curveNumber, holdsMm, fullMm),
    drains: drainShares({
      conductivityMmPerH: soil.conductivityMmPerH,
      baseMmPerH: baseMmPerH(soil, rooted.depthM),
      slopeDeg,
      lengthM: unit.lengthM,
      drainableMm,
      drainablePorosity: drainableMm / rooted.mm,
    }),
    seepage: seepageByFullness(soil, rooted.depthM, { slopeDeg, lengthM: unit.lengthM }),
    demandMmPerDay,
    easyShare: eachMonth((month) => easyShareAt(use.easyShare, demandMmPerDay[month])),
  }
}

// Ground beyond the boundary: its own curve number and cover on the unit's soil, or sealed.
function zoneBeyond(unit: WaterUnit, { what }: EdgeStretch, tables: WaterTables): RootZone {
  const row = tables.beyond.find((one) => one.what === what)
  if (!row) throw new RangeError(`rootZone: the table has no row for ${String(what)} beyond the boundary`)
  const curveNumber = row[unit.soil.hydrologicGroup]
  return row.sealed
    ? sealedZone(unit, curveNumber)
    : zoneOf({ ...unit, cover: row.cover }, tables, curveNumber)
}

/** Share of a soil's volume that must be air for roots to breathe [0 to 1]: Wesseling & van Wijk 1957, from memory. */
const LEAST_AIR_SHARE = 0.1

/**
 * Water from which a root zone is short of air: a tenth of its volume is left to air, or, in clays whose pores are finer
 * than that, as soon as water stands above field capacity.
 *
 * @param store - water at field capacity and with every pore full, above the wilting point [mm]
 * @param store.holdsMm - at field capacity [mm], 0 or more
 * @param store.fullMm - with every pore full [mm], at least holdsMm
 * @param rootedMm - depth of the root zone [mm], above 0
 * @returns water above the wilting point [mm]
 * @throws RangeError when the store holds more than it has pores for
 * @see Wesseling & van Wijk 1957, in Drainage of Agricultural Lands (from memory)
 */
export function airlessFromMm(
  store: { readonly holdsMm: number; readonly fullMm: number },
  rootedMm: number,
): number {
  const { holdsMm, fullMm } = store
  if (!(fullMm >= holdsMm && rootedMm > 0))
    throw new RangeError(
      `airlessFromMm: ${holdsMm} of ${fullMm} mm in a depth of ${rootedMm} mm makes no sense`,
    )
  return Math.max(holdsMm, fullMm - LEAST_AIR_SHARE * rootedMm)
}

// Roots that reach rock or pan stand on it; elsewhere the soil goes on below them.
function baseMmPerH(soil: SoilProperties, rootedM: number): number {
  const onPan = soil.depthM < DEEP_M && rootedM === soil.depthM
  return soil.conductivityMmPerH * (onPan ? PAN_SHARE : 1)
}

function coverRow<Row extends { cover: string }>(rows: readonly Row[], cover: string): Row {
  const row = rows.find((one) => one.cover === cover)
  if (row === undefined) throw new RangeError(`rootZone: the table has no row for the cover ${cover}`)
  return row
}
