import { daysInMonth, eachMonth } from '#core/units'
import type { RootZone } from './root-zone'
import { retentionMm } from './runoff'
import type { WaterUnit } from './water.types'

/**
 * Sealed ground such as a road or a roof as a store: what its curve number keeps back stands on it until it dries off;
 * nothing soaks in, and nothing goes sideways through soil.
 *
 * @param unit - the ground
 * @param curveNumber - its curve number [-], above 0 to below 100
 * @returns the store, ready to be run day by day
 * @see TR-55 (1986), eq. 2-4
 */
export function sealedZone(unit: WaterUnit, curveNumber: number): RootZone {
  const keptMm = retentionMm(curveNumber)
  return {
    holdsMm: keptMm,
    fullMm: keptMm,
    airlessMm: keptMm,
    retention: () => keptMm,
    drains: { sideways: 0, down: 0 },
    seepage: () => 0,
    demandMmPerDay: eachMonth((month) => unit.referenceEtMm[month] / daysInMonth[month]),
    easyShare: eachMonth(() => WETTED_SHARE),
  }
}

/** Standing water dries off unhindered until this share of it is gone [0 to 1]; own judgement. */
const WETTED_SHARE = 0.9
