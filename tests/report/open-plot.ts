import type { Findings } from '#plan'
import { planShade, planShadings } from '#report'
import { demos } from './hung'

const CELLS = 100

/** Ground of 10 m by 10 m, a cell to the metre, all of one slope. */
export function openPlot({ slopeDeg, aspectDeg }: { slopeDeg: number; aspectDeg: number }) {
  const first = demos[0]
  if (!first) throw new Error('there must be a demo')
  const { surface, terrain } = first.findings
  const own: Pick<Findings, 'surface' | 'terrain'> = {
    surface: {
      ...surface,
      frame: { westM: 0, southM: 0, columns: 10, rows: 10, cellM: 1 },
      share: new Float64Array(CELLS).fill(1),
      levelM: new Float64Array(CELLS),
    },
    terrain: {
      ...terrain,
      slopeDeg: new Float64Array(CELLS).fill(slopeDeg),
      aspectDeg: new Float64Array(CELLS).fill(aspectDeg),
    },
  }
  return own
}

/** Words of the classes of a shading of the first demo. */
export function limitsOf(id: string): string[] {
  const first = demos[0]
  const known = first && planShadings(first.findings).some((shading) => shading.id === id)
  const shade = first && known ? planShade(first.plan, first.findings, id) : undefined
  return (shade?.classes ?? []).map(({ words }) => words.replace(/\u00A0/g, ' '))
}
