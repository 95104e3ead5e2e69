import type { ZonePlanting } from '#core/plants'
import type { TableTwin } from '../../figures/strips/table-twin.types'
import { amountOf, flagWords, layerWords, monthsWords } from './planting-words'

/** The mix of a zone as an order list. */
export function mixTable(planting: ZonePlanting, zoneName: string): TableTwin {
  const verdicts = [...planting.offered, ...planting.refused]
  return {
    caption: `Plants for ${zoneName}`,
    columns: [
      'Plant',
      'Botanical name',
      'Layer',
      'Amount',
      'Apart',
      'Share',
      'Binding, of 5',
      'To cover',
      'Mind',
    ],
    rows: planting.mix.map((line) => {
      const verdict = verdicts.find(({ plant }) => plant.id === line.plantId)
      const { figure, unit } = amountOf(line)
      return [
        verdict?.plant.common ?? line.plantId,
        verdict?.plant.name ?? '',
        layerWords[line.layer],
        `${figure} ${unit}`,
        `${line.spacingM.toFixed(2)} m`,
        `${Math.round(line.share * 100)} %`,
        String(verdict?.bindingClass ?? ''),
        monthsWords(line.monthsToCover),
        verdict
          ? flagWords(verdict.flags, verdict.plant)
              .map(({ head, text }) => `${head}: ${text}`)
              .join(' ')
          : '',
      ]
    }),
    ...(planting.none && { note: planting.none }),
  }
}
