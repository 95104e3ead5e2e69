import { describe, expect, it } from 'vitest'
import { demos, loadTables } from '#io'
import { createDeriver, newPlan, openPlan, type Findings, type Plan } from '#plan'
import { planShade, planShadings } from '#report'

const tables = loadTables()

function derived(plan: Plan): Findings {
  const outcome = createDeriver(tables).derive(plan)
  if (!outcome.ok) throw new Error('the plan is derived')
  return outcome.value
}

describe('the plan shaded by a measure', () => {
  it('exact solution: a plain bank of 17.5° lies wholly in the class of 15° to 20°, with its area on plan', () => {
    const plan = newPlan({
      name: 'Bank',
      ground: {
        kind: 'bank',
        lengthM: 10,
        riseM: 10 * Math.sin((17.5 * Math.PI) / 180),
        facesDeg: 180,
        widthM: 8,
      },
      latitudeDeg: 52,
      longitudeDeg: 0,
      places: tables.places,
    })
    const shade = planShade(plan, derived(plan), 'gradient')
    const held = shade?.classes.filter(({ planAreaM2 }) => planAreaM2 > 0) ?? []
    expect(held.map(({ words }) => words.replace(/\s/g, ' '))).toEqual(['15 to 20°'])
    expect(held[0]?.planAreaM2).toBeCloseTo(8 * 10 * Math.cos((17.5 * Math.PI) / 180), 6)
  })

  it('every shading of a demo takes every cell of the plot into one class, and the areas add up', () => {
    const opened = openPlan(demos.find(({ id }) => id === 'garden-falling-to-the-house')?.text ?? '')
    if (!opened.ok) throw new Error('the demo opens')
    const findings = derived(opened.value)
    const wholeM2 =
      findings.surface.share.reduce((sum, share) => sum + share, 0) * findings.surface.frame.cellM ** 2
    const shadings = planShadings(findings)
    expect(shadings.map(({ id }) => id)).toContain('seen-kitchen')
    for (const { id } of shadings) {
      const shade = planShade(opened.value, findings, id)
      expect(shade?.classes.reduce((sum, { planAreaM2 }) => sum + planAreaM2, 0)).toBeCloseTo(wholeM2, 6)
      shade?.classOfCell.forEach((own, cell) =>
        expect(own >= 0).toBe((findings.surface.share[cell] ?? 0) > 0),
      )
    }
    expect(planShade(opened.value, findings, 'nothing-of-the-kind')).toBeUndefined()
  })
})
