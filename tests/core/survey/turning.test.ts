import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { levelOnTin, type PlanPoint } from '#core/geometry'
import type { LevelsSurvey } from '#core/survey'
import { surfaceOf } from './survey-of'

type Line = NonNullable<LevelsSurvey['breaklines']>[number]

const rim = [
  { eastM: -1.3, northM: -1.1, levelM: 1 },
  { eastM: 31.2, northM: -2.1, levelM: 2 },
  { eastM: 32.4, northM: 31.7, levelM: 4 },
  { eastM: -2.6, northM: 33.3, levelM: 0 },
]
/** A survey in general position, a different one for each seed (Lehmer's generator, Park and Miller 1988). */
function surveyOf(seed: number): LevelsSurvey {
  let state = seed + 1
  const next = () => (state = (state * 16_807) % 2_147_483_647) / 2_147_483_647
  for (let at = 0; at < 9; at++) next()
  const place = () => ({ eastM: next() * 30, northM: next() * 30 })
  const corner = () => ({ ...place(), levelM: next() * 5 })
  const many = <Item>(most: number, make: (at: number) => Item) =>
    Array.from({ length: 1 + Math.floor(next() * most) }, (_, at) => make(at))
  const edges = many(4, (at): Line => ({
    id: `e${at}`,
    kind: 'edge',
    vertices: many(4, corner).concat(corner()),
  }))
  const wallCorner = () => ({ ...place(), leftM: next() * 5, rightM: next() * 5 })
  const wall: Line = { id: 'w', kind: 'wall', vertices: [wallCorner(), wallCorner()] }
  return {
    kind: 'levels',
    points: [...rim, ...many(25, corner)],
    breaklines: next() < 0.5 ? edges : [...edges, wall],
  }
}

const survey = fc.nat({ max: 1e9 }).map(surveyOf)

/** Places off the lines of any figure, to read levels at. */
const places = Array.from({ length: 60 }, (_, at) => ({
  eastM: 0.37 + ((at * 7.13) % 29),
  northM: 0.59 + ((at * 11.71) % 28),
}))

interface Turn {
  readonly name: string
  readonly place: (place: PlanPoint) => PlanPoint
  readonly swaps: boolean
}

const turns: readonly Turn[] = [
  { name: 'a quarter turn', place: ({ eastM, northM }) => ({ eastM: -northM, northM: eastM }), swaps: false },
  { name: 'a mirror', place: ({ eastM, northM }) => ({ eastM: -eastM, northM }), swaps: true },
  {
    name: 'a turn by 33° and a shift',
    place: ({ eastM, northM }) => ({
      eastM: 500 + eastM * Math.cos(0.576) - northM * Math.sin(0.576),
      northM: -80 + eastM * Math.sin(0.576) + northM * Math.cos(0.576),
    }),
    swaps: false,
  },
]

function turned(ground: LevelsSurvey, { place, swaps }: Turn): LevelsSurvey {
  const lines = (ground.breaklines ?? []).map((line): Line => {
    if (line.kind !== 'wall')
      return { ...line, vertices: line.vertices.map((one) => ({ ...one, ...place(one) })) }
    return {
      ...line,
      vertices: line.vertices.map((one) => ({
        ...place(one),
        leftM: swaps ? one.rightM : one.leftM,
        rightM: swaps ? one.leftM : one.rightM,
      })),
    }
  })
  return { ...ground, points: ground.points.map((one) => ({ ...one, ...place(one) })), breaklines: lines }
}

// Levels at the places, and how far apart they lie when one differs: a place within a millimetre of a wall may step.
function levels(ground: LevelsSurvey, place: (one: PlanPoint) => PlanPoint = (one) => one) {
  const { tin } = surfaceOf(ground, { cellM: 1 })
  const levelAt = levelOnTin(tin!)
  return places.map((one) => levelAt(place(one)))
}

const agree = (one: readonly (number | undefined)[], other: readonly (number | undefined)[]) =>
  one.filter((level, at) => Math.abs((level ?? 0) - (other[at] ?? 0)) > 1e-4).length

describe('the ground of levels and lines', () => {
  it('property: the order of rows and lines makes no difference', () => {
    fc.assert(
      fc.property(survey, fc.nat(), (ground, seed) => {
        const shuffled = {
          ...ground,
          points: shuffle(ground.points, seed),
          breaklines: shuffle(ground.breaklines ?? [], seed),
        }
        expect(agree(levels(ground), levels(shuffled))).toBe(0)
      }),
      { numRuns: 60 },
    )
  })

  it.each(turns)('property: $name of the survey turns the ground with it', (turn) => {
    fc.assert(
      fc.property(survey, (ground) => {
        expect(agree(levels(ground), levels(turned(ground, turn), turn.place))).toBe(0)
      }),
      { numRuns: 40 },
    )
  })
})

function shuffle<Item>(items: readonly Item[], seed: number): Item[] {
  return items
    .map((item, at) => ({ item, key: ((at + 1) * (seed % 7919) + at * 31) % 101 }))
    .sort((one, other) => one.key - other.key)
    .map(({ item }) => item)
}
