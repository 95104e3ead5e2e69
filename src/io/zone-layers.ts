import { scoreNames, type ScoreName } from '#core/scores'
import type { Findings } from '#plan'
import type { LayerRow } from './layer.types'

const scoreWords: Readonly<Record<ScoreName, string>> = {
  wetness: '0 parched to 100 soaked',
  sun: '0 none to 100 all there is',
  erosion: '0 safe to 100 washing away',
  frost: '0 hardly any to 100 severe',
  working: 'difficulty of working, 0 easy to 100 impossible',
}

/** What each cell's zone is and scores. */
export const zoneRows: readonly LayerRow[] = [
  zoneRow(
    {
      name: 'zone',
      unit: 'number',
      decimals: 0,
      method: 'Number of the zone, 1 for A, 2 for B and so on.',
      source: 'own-judgement',
    },
    (_findings, zone) => zone + 1,
  ),
  ...scoreNames.map((name) =>
    zoneRow(
      {
        name,
        unit: 'points of 100',
        decimals: 0,
        method: `Score of the cell’s zone by the rules of data/rules: ${scoreWords[name]}.`,
        source: 'own-judgement',
      },
      ({ zones }, zone) => zones[zone]?.scores[name].value,
    ),
  ),
  zoneRow(
    {
      name: 'dry-days',
      unit: 'days a year',
      decimals: 1,
      method: 'Days when plants of the cell’s zone run short of water in a usual year.',
      source: 'fao-56',
    },
    ({ zones }, zone) => zones[zone]?.facts.dryDays,
  ),
  zoneRow(
    {
      name: 'wet-days',
      unit: 'days a year',
      decimals: 1,
      method: 'Days when the root zone of the cell’s zone stands above field capacity in a usual year.',
      source: 'fao-56',
    },
    ({ zones }, zone) => zones[zone]?.facts.wetDays,
  ),
]

/** A layer that has one value for each zone. */
function zoneRow(
  row: Omit<LayerRow, 'values'>,
  valueOf: (findings: Findings, zoneIndex: number) => number | undefined,
): LayerRow {
  return {
    ...row,
    values: ({ findings }) =>
      Array.from(findings.zoning.zoneOfCell, (zone) => (zone < 0 ? 0 : (valueOf(findings, zone) ?? 0))),
  }
}
