import { createSSRApp, h, type Component } from 'vue'
import { renderToString } from 'vue/server-renderer'
import { describe, expect, it } from 'vitest'
import { noonSuns } from '../../src/report/drawing/noon-sun'
import { groundPoints } from '../../src/report/drawing/ground-shape'
import { fittingHeightPx, groundAt, sectionScale } from '../../src/report/drawing/scale'
import { textWidthPx } from '../../src/report/drawing/text-width'
import { roundVolume, waterThreads } from '../../src/report/drawing/threads'
import SectionFigure from '../../src/report/figures/section/SectionFigure.vue'
import { captionWords } from '../../src/report/figures/section/section-words'
import SectionTable from '../../src/report/figures/section/SectionTable.vue'
import { questions, type SectionView } from '../../src/report/section-view.types'
import { exampleView, gentleView, levelView, shortView } from './fixture'

const size = { widthPx: 1140, heightPx: 520 }

async function drawn(props: Record<string, unknown>): Promise<string> {
  const figure: Component = SectionFigure
  return renderToString(createSSRApp({ render: () => h(figure, props) }))
}

/** A straight bank of a known angle. */
function straightBank(slopeDeg: number): SectionView {
  const fallM = 20 * Math.tan((slopeDeg * Math.PI) / 180)
  const ground = [0, 5, 10, 15, 20].map((distanceM) => ({
    distanceM,
    heightM: fallM * (1 - distanceM / 20),
    slopeDeg,
    levelSdM: 0,
  }))
  return { ...exampleView(), lengthM: 20, fallM, ground, zones: [], obstacles: [], dangers: [] }
}

describe('the scale of the section', () => {
  it.each([10, 15, 20, 30, 45])('plane trigonometry: a bank of %d° is drawn at that angle', (slopeDeg) => {
    const view = straightBank(slopeDeg)
    const scale = sectionScale(view, { widthPx: 1140, heightPx: fittingHeightPx(view, 1140) })
    const points = groundPoints(view, scale, { fromM: 0, toM: 20 })
    const [top, foot] = [points[0], points.at(-1)]
    const across = (foot?.xPx ?? 0) - (top?.xPx ?? 0)
    const down = (foot?.yPx ?? 0) - (top?.yPx ?? 0)
    expect(scale.exaggeration).toBe(1)
    expect((Math.atan2(down, across) * 180) / Math.PI).toBeCloseTo(slopeDeg, 6)
  })

  it('a long gentle slope is exaggerated by a round figure, and the drawing says so', async () => {
    const scale = sectionScale(gentleView(), size)
    expect([2, 5, 10, 20]).toContain(scale.exaggeration)
    expect(scale.yPxPerM / scale.xPxPerM).toBeCloseTo(scale.exaggeration, 9)
    const svg = await drawn({ view: gentleView(), question: 'ground', ...size })
    expect(svg).toContain(`heights drawn ${scale.exaggeration} times too tall`)
    const narrow = await drawn({ view: gentleView(), question: 'ground', widthPx: 360, heightPx: 300 })
    expect(narrow).toMatch(/Heights × \d+/)
  })

  it('says true to scale only when it is', async () => {
    const svg = await drawn({ view: exampleView(), question: 'mow', ...size })
    expect(sectionScale(exampleView(), size).exaggeration).toBe(1)
    expect(svg).toContain('heights true to lengths')
  })

  it('the axis turns distances to places and back', () => {
    const { axis } = sectionScale(exampleView(), size)
    for (const distanceM of [0, 7.3, 30]) expect(axis.distanceAt(axis.x(distanceM))).toBeCloseTo(distanceM, 9)
    expect(axis.distanceAt(-500)).toBe(0)
    expect(axis.distanceAt(9999)).toBe(30)
  })

  it('refuses a sheet that is too small, and a section with no points', () => {
    expect(() => sectionScale(exampleView(), { widthPx: 150, heightPx: 400 })).toThrow(RangeError)
    expect(() => groundAt([], 3)).toThrow(RangeError)
  })
})

describe('the section as a picture', () => {
  it.each(questions)('%s: has a title, a description and no broken number', async (question) => {
    const svg = await drawn({ view: exampleView(), question, ...size, month: 5 })
    const id = /aria-labelledby="(\S+) (\S+)"/.exec(svg)
    expect(svg).toContain('role="img"')
    expect(svg).toContain(`<title id="${id?.[1]}">`)
    expect(svg).toContain(`<desc id="${id?.[2]}">`)
    expect(svg).not.toMatch(/NaN|Infinity|undefined/)
  })

  it('is the same every time', async () => {
    const props = { view: exampleView(), question: 'hold', ...size, years: 3 }
    expect(await drawn(props)).toBe(await drawn(props))
  })

  it('two figures on a page share no id', async () => {
    const view = exampleView()
    const figure = () => h(SectionFigure, { view, question: 'mow', ...size })
    const page = await renderToString(createSSRApp({ render: () => h('div', [figure(), figure()]) }))
    const ids = [...page.matchAll(/ id="([^"]+)"/g)].map((match) => match[1])
    expect(new Set(ids).size).toBe(ids.length)
  })

  it('tells every danger in words, for those who do not see the ladder', async () => {
    const svg = await drawn({ view: exampleView(), question: 'water', ...size })
    expect(svg).toMatch(/<desc[^>]*>[^<]*Danger at 18\.6/)
  })

  it('the table twin has every zone, verdict and plant', async () => {
    const view = exampleView()
    const table = await renderToString(createSSRApp({ render: () => h(SectionTable, { view }) }))
    for (const zone of view.zones) {
      expect(table).toContain(zone.name)
      for (const line of zone.planting) expect(table).toContain(line.plant.name)
    }
  })
})

describe('the ends of what is drawn', () => {
  it.each(questions)('%s: level ground says that it has no slope, and breaks no number', async (question) => {
    const svg = await drawn({ view: levelView(), question, ...size })
    expect(svg).not.toMatch(/NaN|Infinity|undefined/)
    expect(svg).toContain('there is no slope to draw')
    expect(svg).not.toContain('too tall')
    const narrow = await drawn({ view: levelView(), question, widthPx: 360, heightPx: 240 })
    expect(narrow).toContain('Level: no slope')
  })

  it.each(questions)('%s: a bank of 3 m in one zone is drawn true to scale', async (question) => {
    const svg = await drawn({ view: shortView(), question, ...size })
    expect(svg).not.toMatch(/NaN|Infinity|undefined/)
    expect(svg).toContain('heights true to lengths')
  })

  it('what stands on exaggerated ground still stands on the sheet', () => {
    const tree = {
      id: 'ash',
      kind: 'tree',
      name: 'ash',
      fromM: 100,
      toM: 106,
      heightM: 12,
      cut: true,
    } as const
    const view = { ...gentleView(), obstacles: [tree] }
    const scale = sectionScale(view, size)
    expect(scale.y(groundAt(view.ground, 103).heightM + tree.heightM)).toBeGreaterThan(0)
  })

  it.each([360, 600, 768, 1040, 1440])('the caption stays on a sheet of %d px', (widthPx) => {
    for (const view of [exampleView(), gentleView(), levelView()]) {
      const scale = sectionScale(view, { widthPx, heightPx: 400 })
      for (const question of questions) {
        const caption = captionWords(view, scale, { question, suns: [] })
        expect(scale.axis.startPx + textWidthPx(caption, 'sans', 11)).toBeLessThanOrEqual(widthPx)
      }
    }
  })
})

describe('noon sun', () => {
  it('Tropic of Cancer, 23.44° N: the midsummer noon sun stands overhead', () => {
    const [summer] = noonSuns(23.44, 180)
    expect(summer?.heightDeg).toBeCloseTo(90, 6)
  })

  it('polar circle, 66.56° N: the midwinter noon sun does not rise', () => {
    expect(noonSuns(66.57, 180).map((sun) => sun.when)).toEqual(['midsummer'])
  })

  it('south of the equator the noon sun stands in the north', () => {
    expect(noonSuns(-37, 0).every((sun) => sun.fromFoot)).toBe(true)
    expect(noonSuns(51, 180).every((sun) => sun.fromFoot)).toBe(true)
  })

  it('plane trigonometry: 45° to the section, a sun of height h shows at atan(tan h · √2)', () => {
    const [summer] = noonSuns(51.44, 135)
    const trueRad = ((90 - 28) * Math.PI) / 180
    expect(summer?.inSectionDeg).toBeCloseTo((Math.atan(Math.tan(trueRad) * Math.SQRT2) * 180) / Math.PI, 6)
  })

  it('a sun square to the section is not drawn as if it shone along it', () => {
    expect(noonSuns(51, 90).every((sun) => sun.across)).toBe(true)
  })
})

describe('water threads', () => {
  const zones = exampleView().zones
  const counted = waterThreads(zones, 800)

  it('each stands for a round volume, and together they are the rain', () => {
    const rain = zones.reduce((sum, zone) => sum + (zone.volumes?.rainM3 ?? 0), 0)
    const drawnM3 = (counted?.threads.length ?? 0) * (counted?.volumeM3 ?? 0)
    expect(String(counted?.volumeM3)).toMatch(/^(1|2|5)0*$/)
    expect(Math.abs(drawnM3 - rain)).toBeLessThanOrEqual((counted?.volumeM3 ?? 0) / 2)
  })

  it('those that run off or seep end no higher than they fell', () => {
    for (const thread of counted?.threads ?? []) expect(thread.toM).toBeGreaterThanOrEqual(thread.fromM)
  })

  it.each([
    [0.9, 1],
    [1.1, 2],
    [11.7, 20],
    [33, 50],
    [0.03, 0.05],
  ])('the next round volume from %d m³ is %d m³', (least, round) => {
    expect(roundVolume(least)).toBeCloseTo(round, 9)
  })
})
