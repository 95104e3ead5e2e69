import { describe, expect, it } from 'vitest'
import { eachMonth } from '#core/units'
import type { Obstacle, Plan } from '#plan'
import { bank, found, planOn } from './plans'

const at = (eastM: number, northM: number) => ({ eastM, northM })

function told(obstacles: Obstacle[], climate: Partial<Plan['climate']> = {}) {
  const plan = planOn(bank)
  const survey = { ...plan.survey, cellM: 1, obstacles }
  return found({ ...plan, survey, climate: { ...plan.climate, ...climate } }).toSettle
}

const lightIds = (rows: ReturnType<typeof told>) =>
  rows.map(({ id }) => id).filter((id) => /^(height|ground|radiation|climate-sun)/.test(id))

describe('doubts about the light', () => {
  it('things that would stand but have no height are gaps, each with its place; what lies flat is not', () => {
    const kinds = ['house', 'building', 'wall', 'fence', 'hedge', 'tree', 'path', 'paving', 'drain'] as const
    const rows = told(
      kinds.map((kind) => ({ id: kind, kind, name: kind, ring: [at(0, 0), at(1, 0), at(1, 1)] })),
    )
    expect(lightIds(rows)).toEqual([
      'height-house',
      'height-building',
      'height-wall',
      'height-fence',
      'height-hedge',
      'height-tree',
    ])
    const house = rows.find(({ id }) => id === 'height-house')
    expect(house).toMatchObject({ kind: 'gap', at: at(0, 0) })
    expect(house?.mend).toContain('Give its height')
  })

  it('a height of nothing is a height', () => {
    const wall: Obstacle = { id: 'wall', kind: 'wall', name: 'Wall', ring: [at(0, 0), at(1, 0)], heightM: 0 }
    expect(lightIds(told([wall]))).toEqual([])
  })

  it('the ground under a thing more than 2 m off the plot is a gap until its level is given', () => {
    // The bank is 10 m wide, so the plot ends 5 m east of its middle.
    const oak = (eastM: number, more: Partial<Obstacle> = {}): Obstacle => ({
      id: 'oak',
      kind: 'tree',
      name: 'Oak',
      ring: [at(eastM, 0)],
      heightM: 8,
      ...more,
    })
    expect(lightIds(told([oak(6.9)]))).toEqual([])
    const rows = told([oak(12)])
    expect(lightIds(rows)).toEqual(['ground-oak'])
    expect(rows.find(({ id }) => id === 'ground-oak')?.what).toContain('7 m off the plot')
    expect(lightIds(told([oak(12, { groundM: -2 })]))).toEqual([])
  })

  it('a sky told by temperatures alone is the last of the gaps, of typed climates only', () => {
    const rows = told([], { from: 'typed' })
    expect(rows.at(-1)?.id).toBe('climate-sun')
    expect(lightIds(told([]))).toEqual([])
    const { climate } = planOn(bank)
    const sunny = climate.months.map((month) => ({ ...month, sunshineHours: 3 }))
    expect(lightIds(told([], { from: 'typed', months: sunny }))).toEqual([])
  })

  it('FAO-56 eq. 37: radiation above that of a clear sky is told with its months', () => {
    // At 52° north 41.6 MJ/m² come to the top of the air in June (FAO-56 table 2.6), some 31 of them through a clear sky.
    const { climate } = planOn(bank)
    const bright = eachMonth((month) => ({ ...climate.months[month]!, solarMjPerM2: month === 5 ? 36 : 1 }))
    const rows = told([], { from: 'typed', months: [...bright] })
    expect(lightIds(rows)).toEqual(['radiation-capped'])
    expect(rows.find(({ id }) => id === 'radiation-capped')?.what).toContain(
      'for June is more than a clear sky',
    )
  })
})
