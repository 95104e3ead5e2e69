import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  boxIndex,
  distanceToSegmentM,
  meetingBox,
  nearPiece,
  samePlaces,
  type PlanPoint,
} from '#core/geometry'

const place = fc.record({
  eastM: fc.double({ min: -50, max: 50, noNaN: true }),
  northM: fc.double({ min: -50, max: 50, noNaN: true }),
})

describe('tree of boxes', () => {
  it('Leutenegger, Lopez and Edgington 1997: the tree finds every point that a plain search finds within reach', () => {
    fc.assert(
      fc.property(fc.array(place, { maxLength: 200 }), place, place, (points, from, to) => {
        const index = boxIndex(points.length, (at) => boxOf(points[at]!))
        const found: number[] = []
        index.search(nearPiece(from, to, 3), (at) => found.push(at))
        const plain = points.flatMap((point, at) => (distanceToSegmentM(point, from, to) <= 3 ? [at] : []))
        expect(new Set(found).size).toBe(found.length)
        expect(plain.filter((at) => !found.includes(at))).toEqual([])
      }),
    )
  })

  it('second method: boxes that meet a box are those that a plain search finds', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place), { maxLength: 200 }), place, place, (pairs, one, other) => {
        const boxes = pairs.map(([a, b]) => boxOf(a, b))
        const asked = boxOf(one, other)
        const found: number[] = []
        boxIndex(boxes.length, (at) => boxes[at]!).search(meetingBox(asked), (at) => found.push(at))
        const plain = boxes.flatMap((box, at) =>
          box.westM <= asked.eastM &&
          box.eastM >= asked.westM &&
          box.southM <= asked.northM &&
          box.northM >= asked.southM
            ? [at]
            : [],
        )
        expect(found.sort((a, b) => a - b)).toEqual(plain)
      }),
    )
  })
})

describe('places that are the same', () => {
  it('second method: groups are the chains that a plain search of all pairs joins', () => {
    const near = fc.record({
      eastM: fc.integer({ min: 0, max: 30 }),
      northM: fc.integer({ min: 0, max: 30 }),
    })
    fc.assert(
      fc.property(fc.array(near, { maxLength: 60 }), (points) => {
        expect([...samePlaces(points, 1.5)]).toEqual(chained(points, 1.5))
      }),
    )
  })

  it('refuses a tolerance of nothing', () => {
    expect(() => samePlaces([], 0)).toThrow(RangeError)
  })
})

function boxOf(one: PlanPoint, other: PlanPoint = one) {
  return {
    westM: Math.min(one.eastM, other.eastM),
    eastM: Math.max(one.eastM, other.eastM),
    southM: Math.min(one.northM, other.northM),
    northM: Math.max(one.northM, other.northM),
  }
}

function chained(points: readonly PlanPoint[], reachM: number): number[] {
  const group = points.map((_, at) => at)
  for (let again = true; again;) {
    again = false
    points.forEach((one, at) =>
      points.forEach((other, before) => {
        if (Math.hypot(one.eastM - other.eastM, one.northM - other.northM) > reachM) return
        const least = Math.min(group[at]!, group[before]!)
        if (group[at] === least && group[before] === least) return
        group[at] = group[before] = least
        again = true
      }),
    )
  }
  return group
}
