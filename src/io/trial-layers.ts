import type { Findings } from '#plan'
import type { LayerRow } from './layer.types'

/** What a trial would bring. */
export const trialRow: LayerRow = {
  name: 'trial-gain',
  unit: 'h',
  decimals: 2,
  method:
    'Hours of direct sun at midsummer that the trial --trial would bring, less those of the plan as it is; negative where it would take some.',
  source: 'hofierka-suri-2002',
  takes: ['trial'],
  needs: ['trial'],
  values: ({ findings }, { trial }) => trialNamed(findings, trial).midsummerGainH,
}

function trialNamed({ trials }: Findings, name: string | undefined) {
  const found = trials.find((one) => one.name === name || one.trialId === name)
  if (!found)
    throw new RangeError(
      `trial-gain: trial must be one of ${trials.map((one) => one.name).join(', ') || 'no trial'}, got ${String(name)}`,
    )
  return found
}
