import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sunAtHourAngle } from '#core/sun'
import { toRadians } from '#core/units'
import { lightPicture } from '#report'
import { classRects } from '../../src/report/drawing/class-rects'
import { limitsOf, openPlot } from './open-plot'
import { areaOf } from './hung'

/** Paths of rectangles, read by the corners that they name. */
function cellsOf(path: string): string {
  return path.replace(/H(-?[\d.]+)V(-?[\d.]+)H(-?[\d.]+)/g, 'H$1V$2H$3')
}

describe('cells of one class as rectangles', () => {
  it('property: every cell is covered once, whatever the classes', () => {
    const size = fc.integer({ min: 1, max: 12 })
    fc.assert(
      fc.property(size, size, fc.infiniteStream(fc.integer({ min: -1, max: 2 })), (columns, rows, stream) => {
        const classes = Int8Array.from({ length: columns * rows }, () => Number(stream.next().value))
        const frame = { westM: 0, southM: 0, columns, rows, cellM: 1 }
        const pxPerM = 10
        const at = ({ eastM, northM }: { eastM: number; northM: number }) => ({
          xPx: eastM * pxPerM,
          yPx: (rows - northM) * pxPerM,
        })
        const rects = classRects(classes, frame, { at, pxPerM })
        for (const own of [0, 1, 2]) {
          const cells = classes.filter((each) => each === own).length
          expect(areaOf(cellsOf(rects.get(own) ?? ''))).toBeCloseTo(cells * pxPerM ** 2, 6)
        }
      }),
    )
  })

  it('a plan of one class is one rectangle', () => {
    const frame = { westM: 0, southM: 0, columns: 50, rows: 40, cellM: 1 }
    const at = ({ eastM, northM }: { eastM: number; northM: number }) => ({
      xPx: eastM * 5,
      yPx: (40 - northM) * 5,
    })
    const rects = classRects(new Int8Array(2000), frame, { at, pxPerM: 5 })
    expect([...rects]).toEqual([[0, 'M0 0H250V200H0Z']])
  })
})

describe('light and shade at one place of the sun', () => {
  const sun = (hourAngleDeg: number) =>
    sunAtHourAngle(toRadians(52), toRadians(-23.4), toRadians(hourAngleDeg))

  it('definition: ground that turns its back on the sun has no direct light', () => {
    const facing = openPlot({ slopeDeg: 30, aspectDeg: 180 })
    const away = openPlot({ slopeDeg: 30, aspectDeg: 0 })
    const light = new Float32Array(facing.surface.share.length).fill(1)
    // At 52° the noon sun of midwinter stands 14.6° high: a north slope of 30° is behind it.
    expect(areasIn(lightPicture(facing, light, sun(0), 'noon'))).toEqual([0, 0, 100])
    expect(areasIn(lightPicture(away, light, sun(0), 'noon'))).toEqual([100, 0, 0])
  })

  it('all ground is in shade when the sun is down, and some light comes through between', () => {
    const plot = openPlot({ slopeDeg: 0, aspectDeg: -1 })
    const light = new Float32Array(plot.surface.share.length).fill(1)
    expect(areasIn(lightPicture(plot, light, sun(180), 'midnight'))).toEqual([100, 0, 0])
    light.fill(0.45, 0, 40)
    light.fill(0, 40, 50)
    expect(areasIn(lightPicture(plot, light, sun(0), 'noon'))).toEqual([10, 40, 50])
  })
})

function areasIn({ classes }: ReturnType<typeof lightPicture>): number[] {
  return classes.map(({ planAreaM2 }) => planAreaM2)
}

describe('hours of sun on the plan', () => {
  it('common practice, no source: classes end at 6 h of full sun, and at the 1 h and 3 h of our light classes', () => {
    const limits = limitsOf('sun-06')
    for (const limit of ['1', '3', '6'])
      expect(limits.some((words) => words.includes(`${limit} h`) || words.startsWith(`${limit} to`))).toBe(
        true,
      )
    expect(limits).toContain('3 to 4.5 h')
    expect(limits.at(-1)).toBe('10 h and more')
  })
})
