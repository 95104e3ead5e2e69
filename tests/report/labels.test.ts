import { describe, expect, it } from 'vitest'
import { bankPlants, standingBoxes } from '../../src/report/drawing/bank-plants'
import { placeLabels, type LabelWish } from '../../src/report/drawing/labels'
import { crosses } from '../../src/report/drawing/open-line'
import { overlaps, type Box, type Px } from '../../src/report/drawing/path'
import { sectionScale } from '../../src/report/drawing/scale'
import { seededRandom } from '../../src/report/drawing/seeded'
import { distanceMarks, zoneCells } from '../../src/report/drawing/zone-band'
import { threadPaths } from '../../src/report/drawing/thread-paths'
import { waterThreads } from '../../src/report/drawing/threads'
import { textWidthPx } from '../../src/report/drawing/text-width'
import { captionWords } from '../../src/report/figures/section/section-words'
import { sectionSheet } from '../../src/report/figures/section/section-sheet'
import { questions } from '../../src/report/section-view.types'
import { anyView, exampleView } from './fixture'

const ROUNDS = 40

/** Sheets of many widths, zones and questions. */
function* drawnSheets() {
  const random = seededRandom('sheets of every kind')
  for (let round = 0; round < ROUNDS; round++) {
    const view = anyView(random)
    const widthPx = Math.round(320 + random() * 1500)
    const size = { widthPx, heightPx: Math.round(280 + random() * 400) }
    const scale = sectionScale(view, size)
    const question = questions[round % questions.length] ?? 'ground'
    const answer = { leftPx: 200, topPx: 0, rightPx: 520, bottomPx: 90 }
    const keepClear = [answer]
    const sheet = sectionSheet(view, scale, { question, month: 5, years: 5, keepClear })
    yield { view, scale, question, keepClear, sheet }
  }
}

const allSheets = [...drawnSheets()]
const sheets = () => allSheets

const pairs = <T>(all: readonly T[]): [T, T][] =>
  all.flatMap((one, at) => all.slice(at + 1).map((other): [T, T] => [one, other]))

describe('labels of the section', () => {
  it('no two labels overlap, on any width and with any zones', () => {
    let placed = 0
    for (const { sheet } of sheets())
      for (const labels of [sheet.labels, sheet.soilLabels]) {
        placed += labels.length
        for (const [one, other] of pairs(labels)) expect(overlaps(one.box, other.box)).toBe(false)
      }
    expect(placed).toBeGreaterThan(ROUNDS)
  })

  it('no leader runs through another label', () => {
    for (const { sheet } of sheets())
      for (const [one, other] of pairs(sheet.labels))
        for (const [leader, box] of [
          [one.leader, other.box],
          [other.leader, one.box],
        ] as const)
          if (leader[0] && leader[1]) expect(crosses(leader[0], leader[1], box)).toBe(false)
  })

  it('labels keep off the ground, the plants and the answer, and stay on the sheet', () => {
    for (const { view, scale, sheet, keepClear } of sheets()) {
      const taken = [...standingBoxes(view, scale, bankPlants(view, scale, 5)), ...keepClear]
      for (const { box } of sheet.labels) {
        expect(taken.some((other) => overlaps(box, other))).toBe(false)
        expect(box.leftPx).toBeGreaterThanOrEqual(0)
        expect(box.rightPx).toBeLessThanOrEqual(scale.widthPx)
        expect(box.topPx).toBeGreaterThanOrEqual(0)
      }
    }
  })

  it('a danger keeps its place before any other label', () => {
    const room = { bounds: box(0, 0, 150, 40), taken: [], shun: [], titlePx: 14, notePx: 12 }
    const danger = wish({ id: 'danger', rank: 0, warns: true, tone: 'red', title: 'Too steep' })
    const placed = placeLabels([wish({ id: 'verdict', rank: 2, title: 'Mow on foot' }), danger], room)
    expect(placed.map((label) => label.id)).toEqual(['danger'])
  })

  it('a label with no room for two lines keeps its first', () => {
    const room = { bounds: box(0, 0, 400, 34), taken: [], shun: [], titlePx: 14, notePx: 12 }
    const [label] = placeLabels([wish({ note: 'a second line' })], room)
    expect(label?.note).toBeUndefined()
    expect(label?.title).toBe('Mow on foot')
  })
})

describe('the light of the sun', () => {
  const lit = () => sheets().filter(({ question }) => question === 'sun')

  it('rays and suns keep off the answer, the plan and every word, on any width', () => {
    let rays = 0
    for (const { sheet, keepClear } of lit()) {
      const words = [...keepClear, ...sheet.labels.map((label) => label.box)]
      const discs = sheet.suns.flatMap(({ disc }) => (disc ? [disc.box] : []))
      for (const box of discs) expect(words.some((other) => overlaps(box, other))).toBe(false)
      for (const [one, other] of pairs(discs)) expect(overlaps(one, other)).toBe(false)
      for (const sun of sheet.suns)
        for (const [from, to] of strokes(sun.rays)) {
          rays++
          for (const word of [...words, ...discs]) expect(crosses(from, to, smaller(word))).toBe(false)
        }
    }
    expect(rays).toBeGreaterThan(20)
  })

  it('a sun with no room in the sky is told in the caption', () => {
    const view = exampleView()
    const scale = sectionScale(view, { widthPx: 1140, heightPx: 520 })
    const none = { question: 'sun', month: 5, years: 5, keepClear: [box(0, 0, 1140, 520)] } as const
    const { suns } = sectionSheet(view, scale, none)
    expect(suns.length).toBeGreaterThan(0)
    for (const { disc, words } of suns) {
      expect(disc).toBeUndefined()
      expect(captionWords(view, scale, { question: 'sun', suns }).toLowerCase()).toContain(words)
    }
  })
})

describe('the rain', () => {
  it('no stroke that is counted runs through a word', () => {
    let strokesSeen = 0
    for (const { view, scale, sheet } of sheets().filter(({ question }) => question === 'water')) {
      const counted = waterThreads(view.zones, scale.axis.endPx - scale.axis.startPx)
      const { rain, overGround } = threadPaths(view, scale, counted?.threads ?? [])
      for (const [from, to] of [...strokes(rain), ...strokes(overGround)]) {
        strokesSeen++
        for (const label of sheet.labels) expect(crosses(from, to, label.box)).toBe(false)
      }
    }
    expect(strokesSeen).toBeGreaterThan(50)
  })
})

describe('the zone band', () => {
  it('distances never touch, and the two ends are always written', () => {
    for (const { view, scale } of sheets()) {
      const written = distanceMarks(view, scale.axis).filter((mark) => mark.text !== undefined)
      expect(written.at(-1)?.distanceM).toBe(view.lengthM)
      for (const [one, other] of pairs(written)) {
        const half = (textWidthPx(one.text ?? '', 'sans', 12) + textWidthPx(other.text ?? '', 'sans', 12)) / 2
        expect(Math.abs(one.xPx - other.xPx)).toBeGreaterThanOrEqual(half)
      }
    }
  })

  it('a name is only written where it fits its cell', () => {
    for (const { view, scale } of sheets())
      for (const cell of zoneCells(view, scale.axis))
        if (cell.name) expect(textWidthPx(cell.name, 'serif', 15)).toBeLessThan(cell.widthPx)
  })
})

function box(leftPx: number, topPx: number, rightPx: number, bottomPx: number): Box {
  return { leftPx, topPx, rightPx, bottomPx }
}

/** A box without its rim: places in a path are rounded to a tenth of a pixel. */
function smaller({ leftPx, topPx, rightPx, bottomPx }: Box): Box {
  return box(leftPx + 0.2, topPx + 0.2, rightPx - 0.2, bottomPx - 0.2)
}

/** Straight strokes of a path of M, L and V. */
function strokes(d: string): [Px, Px][] {
  const found: [Px, Px][] = []
  let at: Px | undefined
  for (const [, letter, first, second] of d.matchAll(/([MLV])(-?[\d.]+)(?: (-?[\d.]+))?/g)) {
    const to: Px =
      letter === 'V' ? { xPx: at?.xPx ?? 0, yPx: Number(first) } : { xPx: Number(first), yPx: Number(second) }
    if (at && letter !== 'M') found.push([at, to])
    at = to
  }
  return found
}

function wish(own: Partial<LabelWish>): LabelWish {
  return {
    id: 'one',
    title: 'Mow on foot',
    note: undefined,
    tone: 'ink',
    voice: 'verdict',
    warns: false,
    anchors: [{ xPx: 20, yPx: 38 }],
    side: 'above',
    rank: 2,
    ...own,
  }
}
