import { describe, expect, it } from 'vitest'
import { pointInRing } from '#core/geometry'
import { crosses } from '../../src/report/drawing/open-line'
import { LETTER_PX, planLetters } from '../../src/report/drawing/plan-letters'
import { KEY_STRIP_PX, planScale } from '../../src/report/drawing/plan-scale'
import { seededRandom } from '../../src/report/drawing/seeded'
import type { PlanView } from '../../src/report/section-view.types'

const ROUNDS = 30

/** Plots of any shape of rectangle, cut into one to nine strips, with a house above or below. */
function* plans() {
  const random = seededRandom('plans of every kind')
  for (let round = 0; round < ROUNDS; round++) {
    const [longM, wideM] = [8 + random() * 80, 6 + random() * 60]
    const count = 1 + Math.floor(random() * 9)
    const edges = [0, ...Array.from({ length: count - 1 }, () => random()), 1].sort((a, b) => a - b)
    const strip = (from: number, to: number) => [
      { eastM: from, northM: 0 },
      { eastM: to, northM: 0 },
      { eastM: to, northM: wideM },
      { eastM: from, northM: wideM },
    ]
    const houseM = random() < 0.5 ? -9 : longM + 2
    const view: PlanView = {
      boundary: strip(0, longM),
      section: {
        from: { eastM: 0, northM: wideM / 2 },
        to: { eastM: longM, northM: wideM / 2 },
        lengthM: longM,
      },
      zones: Array.from({ length: count }, (_, at) => ({
        id: `zone-${at}`,
        letter: String.fromCharCode(65 + at),
        ring: strip((edges[at] ?? 0) * longM, (edges[at + 1] ?? 1) * longM),
        mowing: 'mow',
      })),
      obstacles: [{ id: 'house', kind: 'house', name: 'house', ring: strip(houseM, houseM + 7) }],
      crowns: [],
      contours: [],
      contourStepM: 1,
      hachures: [],
      marked: {
        levels: [],
        breaklines: [],
        holes: [],
        sections: [],
        viewpoints: [],
        beyond: [],
        backdrop: undefined,
      },
      water: { hollows: [], leaving: [] },
    }
    const size = { widthPx: Math.round(240 + random() * 500), heightPx: Math.round(200 + random() * 200) }
    const scale = planScale(view, size, random() < 0.7)
    yield { view, size, scale, letters: planLetters(view, scale, size) }
  }
}

describe('letters of the plan', () => {
  it('no two rings touch, no line runs through a ring, and all stay off the scale bar', () => {
    let placed = 0
    for (const { letters, size } of plans())
      for (const [at, one] of letters.zones.entries()) {
        placed++
        expect(one.at.yPx + LETTER_PX).toBeLessThanOrEqual(size.heightPx - KEY_STRIP_PX)
        for (const other of letters.zones.slice(at + 1)) {
          const gap = Math.hypot(one.at.xPx - other.at.xPx, one.at.yPx - other.at.yPx)
          expect(gap).toBeGreaterThan(2 * LETTER_PX)
          for (const [leader, ring] of [
            [one.leader, other.at],
            [other.leader, one.at],
          ] as const)
            if (leader[0] && leader[1]) expect(crosses(leader[0], leader[1], square(ring))).toBe(false)
        }
      }
    expect(placed).toBeGreaterThan(ROUNDS)
  })

  it('a letter stands in its zone, or a line leads to it', () => {
    for (const { view, letters, scale } of plans())
      for (const { zoneId, at, leader } of letters.zones) {
        const zone = view.zones.find(({ id }) => id === zoneId)
        const ring = zone?.ring.map((point) => scale.at(point)) ?? []
        const end = leader[1] ?? at
        const asPlan = (place: { xPx: number; yPx: number }) => ({ eastM: place.xPx, northM: place.yPx })
        expect(pointInRing(asPlan(end), ring.map(asPlan))).toBe(true)
      }
  })

  it('every zone has its letter where a few zones share the plot', () => {
    for (const { view, letters } of plans())
      if (view.zones.length <= 4) expect(letters.zones.length).toBe(view.zones.length)
  })
})

function square({ xPx, yPx }: { xPx: number; yPx: number }) {
  const half = LETTER_PX * 0.7
  return { leftPx: xPx - half, rightPx: xPx + half, topPx: yPx - half, bottomPx: yPx + half }
}
