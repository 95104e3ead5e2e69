import type { PlantVerdict } from '#core/plants'
import type { Findings } from '#plan'

/** Keys of every source that the report names: accounts, covers, planted plants, jobs, cautions, open points. */
export function citedKeys(findings: Findings): readonly string[] {
  const { zones, care, water, cautions, toSettle } = findings
  const rows = [
    ...zones.flatMap(({ scores, cover, planting }) => [
      ...Object.values(scores).flatMap(({ account }) => account.lines),
      ...cover.options.flatMap(({ fitness, cautions: own }) => [...fitness.lines, ...own]),
      ...cover.machines,
      ...planting.mix.flatMap(({ plantId }) => {
        const verdict = [...planting.offered, ...planting.refused].find(({ plant }) => plant.id === plantId)
        return verdict ? plantRows(verdict) : []
      }),
    ]),
    ...water.account.lines,
    ...care.zones.flatMap(({ jobs, keepOff, account }) => [...jobs, ...keepOff, ...account.lines]),
    ...cautions,
    ...toSettle,
  ]
  return [...new Set(rows.map(({ source }) => source))].sort()
}

function plantRows({ plant, reasons, flags }: PlantVerdict): readonly { readonly source: string }[] {
  return [plant, ...reasons, ...flags.legal, ...(flags.toxicity ? [flags.toxicity] : [])]
}
