import { createSSRApp, h } from 'vue'
import { renderToString } from 'vue/server-renderer'
import { describe, expect, it } from 'vitest'
import { demos, loadTables } from '#io'
import { createDeriver, openPlan, type Findings } from '#plan'
import { SmallSections } from '#report'
import { smallSections } from '../../src/report/drawing/small-sections'

const WIDTH_PX = 800

/** The designer's garden with two further sections, one of them off the plot. */
function findingsWithSections(): Findings {
  const demo = demos.find(({ id }) => id === 'garden-falling-to-the-house')
  const opened = openPlan(demo?.text ?? '')
  if (!opened.ok) throw new Error('the demo opens')
  const first = createDeriver(loadTables()).derive(opened.value)
  if (!first.ok) throw new Error('the demo is derived')
  const { from, to } = first.value.terrain.section
  const shifted = ({ eastM, northM }: { eastM: number; northM: number }, byM: number) => ({
    eastM: eastM + byM,
    northM: northM + byM / 4,
  })
  const sections = [
    { id: 'b', name: 'B', from: shifted(from, 2), to: shifted(to, 2) },
    { id: 'c', name: 'C', from: shifted(from, 5000), to: shifted(to, 5000) },
  ]
  const plan = { ...opened.value, survey: { ...opened.value.survey, sections } }
  const outcome = createDeriver(loadTables()).derive(plan)
  if (!outcome.ok) throw new Error('the plan is derived')
  return outcome.value
}

describe('further sections', () => {
  const findings = findingsWithSections()

  it('are drawn true to scale, each as long as it is, and a line off the plot is a thing to settle', () => {
    const { sections, pxPerM } = smallSections(findings, WIDTH_PX)
    expect(sections.map(({ name }) => name)).toEqual(['B'])
    const [drawn] = sections
    const xs = [...(drawn?.ground ?? '').matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ])
    const [first, last] = [xs[0], xs.at(-1)]
    expect((last?.[0] ?? 0) - (first?.[0] ?? 0)).toBeCloseTo((drawn?.lengthM ?? 0) * pxPerM, 0)
    const heights = xs.map(([, y]) => y ?? 0)
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo((drawn?.fallM ?? 0) * pxPerM, 0)
    expect(findings.toSettle.find(({ id }) => id === 'section-c')?.what).toMatch(/does not cross the plot/)
  })

  it('say in words what they cross, and offer to be drawn large', async () => {
    const app = createSSRApp({ render: () => h(SmallSections, { findings, widthPx: WIDTH_PX, picks: true }) })
    const html = await renderToString(app)
    expect(html).toMatch(/Section B falls [\d.]+\sm in [\d.]+\sm, steepest \d+\s?°\. Through A/)
    expect(html).toContain('Draw B large')
    expect(html).not.toMatch(/NaN|undefined|Infinity/)
  })
})
