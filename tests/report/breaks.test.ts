import { createSSRApp, h, type Component } from 'vue'
import { renderToString } from 'vue/server-renderer'
import { describe, expect, it } from 'vitest'
import { accuracyBand } from '../../src/report/drawing/accuracy-band'
import { breaksIn } from '../../src/report/drawing/breaks'
import { groundPoints } from '../../src/report/drawing/ground-shape'
import { sectionScale } from '../../src/report/drawing/scale'
import SectionFigure from '../../src/report/figures/section/SectionFigure.vue'
import type { GroundPoint, SectionView } from '../../src/report/section-view.types'
import { exampleView, gentleView } from './fixture'

const size = { widthPx: 1140, heightPx: 520 }
/** What fits the sheet large enough to read [m]. */
const GOAL_M = 80
const FIELD = { lengthM: 300, slopeDeg: 2 }
const BANK = { lengthM: 16, slopeDeg: 24 }

/** An invented field that falls gently and evenly to a short steep bank. */
function fieldOverBank(): SectionView {
  const fall = (lengthM: number, slopeDeg: number) => lengthM * Math.tan((slopeDeg * Math.PI) / 180)
  const [fieldM, bankM] = [fall(FIELD.lengthM, FIELD.slopeDeg), fall(BANK.lengthM, BANK.slopeDeg)]
  const lengthM = FIELD.lengthM + BANK.lengthM
  const ground = Array.from({ length: 317 }, (_, at): GroundPoint => {
    const distanceM = (at / 316) * lengthM
    const inField = distanceM <= FIELD.lengthM
    const downM = inField
      ? fall(distanceM, FIELD.slopeDeg)
      : fieldM + fall(distanceM - FIELD.lengthM, BANK.slopeDeg)
    const slopeDeg = inField ? FIELD.slopeDeg : BANK.slopeDeg
    return { distanceM, heightM: fieldM + bankM - downM, slopeDeg, levelSdM: 0.02 }
  })
  const [one, other] = exampleView().zones
  if (!one || !other) throw new Error('the example has two zones')
  return {
    ...exampleView(),
    lengthM,
    fallM: fieldM + bankM,
    ground,
    drawn: { fromM: 0, toM: lengthM },
    zones: [
      { ...one, spans: [{ fromM: 0, toM: FIELD.lengthM }] },
      { ...other, spans: [{ fromM: FIELD.lengthM, toM: lengthM }] },
    ],
    obstacles: [],
    dangers: [],
  }
}

async function drawn(view: SectionView): Promise<string> {
  const figure: Component = SectionFigure
  return renderToString(createSSRApp({ render: () => h(figure, { view, question: 'ground', ...size }) }))
}

describe('break-lines in long even ground', () => {
  it('leave out the middle of the field and none of the bank, and say how much', async () => {
    const [cut, ...more] = breaksIn(fieldOverBank(), GOAL_M)
    expect(more).toEqual([])
    expect(cut?.fromM).toBeGreaterThan(0)
    expect(cut?.toM).toBeLessThan(FIELD.lengthM)
    const view = fieldOverBank()
    expect(view.lengthM - ((cut?.toM ?? 0) - (cut?.fromM ?? 0))).toBeCloseTo(GOAL_M, 6)
    const [drawnCut] = sectionScale(view, size).axis.breaks
    const leftOutM = Math.round((drawnCut?.toM ?? 0) - (drawnCut?.fromM ?? 0))
    expect((await drawn(view)).includes(`${leftOutM}`)).toBe(true)
    expect(await drawn(view)).toMatch(/of even ground left out/)
  })

  it('the axis turns distances to places and back, also in the gap', () => {
    const { axis } = sectionScale(fieldOverBank(), size)
    for (const distanceM of [0, 3, 60, 150, 240, 299, 316])
      expect(axis.distanceAt(axis.x(distanceM))).toBeCloseTo(distanceM, 6)
  })

  it('plane trigonometry: the bank keeps its angle but for the declared exaggeration', () => {
    const view = fieldOverBank()
    const scale = sectionScale(view, size)
    const points = groundPoints(view, scale, { fromM: FIELD.lengthM + 1, toM: view.lengthM })
    const [top, foot] = [points[0], points.at(-1)]
    const angle = Math.atan2((foot?.yPx ?? 0) - (top?.yPx ?? 0), (foot?.xPx ?? 0) - (top?.xPx ?? 0))
    expect(Math.tan(angle) / scale.exaggeration).toBeCloseTo(Math.tan((BANK.slopeDeg * Math.PI) / 180), 6)
  })

  it('never cut across a danger or a thing, nor short or uneven ground', () => {
    const view = fieldOverBank()
    const [danger] = exampleView().dangers
    if (!danger) throw new Error('the example has a danger')
    for (const atM of [60, 150, 240]) {
      const cuts = breaksIn({ ...view, dangers: [{ ...danger, fromM: atM, toM: atM + 1 }] }, GOAL_M)
      expect(cuts.some(({ fromM, toM }) => atM + 1 > fromM && atM < toM)).toBe(false)
    }
    expect(breaksIn(exampleView(), GOAL_M)).toEqual([])
    expect(breaksIn(gentleView(), GOAL_M)).toEqual([])
  })
})

describe('how well the level is known, on the section', () => {
  it('lies one standard error above and below the ground, at the scale of heights', () => {
    const view = fieldOverBank()
    const rough = { ...view, ground: view.ground.map((point) => ({ ...point, levelSdM: 1 })) }
    const scale = sectionScale(rough, size)
    const [upper, lower] = accuracyBand(rough, scale).lines
    const startY = (line: string | undefined) => Number(/^M\S+ ([\d.]+)/.exec(line ?? '')?.[1])
    expect(startY(lower) - startY(upper)).toBeCloseTo(2 * scale.yPxPerM, 0)
  })

  it('is told in words where it is too small to draw', async () => {
    const view = fieldOverBank()
    expect(accuracyBand(view, sectionScale(view, size)).lines).toEqual([])
    expect(await drawn(view)).toMatch(/Level good to 2\scm/)
  })
})
