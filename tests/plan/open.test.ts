import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openPlan, savePlan } from '#plan'

const demos = join(import.meta.dirname, '../../data/demos')
const names = readdirSync(demos)
const text = (name: string) => readFileSync(join(demos, name), 'utf8')

function opened(name: string) {
  const plan = openPlan(text(name))
  if (!plan.ok) throw new Error(plan.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'))
  return plan.value
}

type Loose = Record<string, unknown>

/** The bank as JSON with some entries changed, each named by its path such as "soil.1.depthM"; undefined takes one out. */
function spoilt(changes: Record<string, unknown>): string {
  const plan = JSON.parse(text('bank-below-the-house.lynchet.json')) as Loose
  for (const [path, value] of Object.entries(changes)) {
    const steps = path.split('.')
    const last = steps.pop() ?? ''
    const holder = steps.reduce((within, step) => within[step] as Loose, plan)
    holder[last] = value
  }
  return JSON.stringify(plan)
}

describe('the demos', () => {
  it.each(names)('%s opens, says that it is invented, and saves to what was opened', (name) => {
    const plan = opened(name)
    expect(plan.note).toContain('invented')
    expect(openPlan(savePlan(plan))).toEqual({ ok: true, value: plan })
    expect(savePlan(plan)).toBe(savePlan(plan))
  })
})

describe('a plan that cannot be opened', () => {
  it('reports every problem at once, with its place and how to mend it', () => {
    const result = openPlan(
      spoilt({
        'site.latitudeDeg': 251.6,
        name: undefined,
        'soil.1.texture.sandMm': 'thirty',
        'survey.colour': 'green',
      }),
    )
    expect(result.ok).toBe(false)
    const problems = result.ok ? [] : result.problems
    expect(problems.map(({ where }) => where).sort()).toEqual([
      'plan › name',
      'plan › site › latitudeDeg',
      'plan › soil, row 2 › texture › sandMm',
      'plan › survey › colour',
    ])
    expect(problems.every(({ what, mend }) => what.length > 10 && mend.length > 5)).toBe(true)
    expect(problems.find(({ where }) => where.endsWith('latitudeDeg'))?.mend).toContain('90')
  })

  it.each([
    ['cut short', () => text('bank-below-the-house.lynchet.json').slice(0, 900), 'not readable as JSON'],
    ['a list', () => '[1, 2]', 'not a plan'],
    ['of another kind', () => '{"format":"other"}', 'does not say that it is a Lynchet plan'],
    ['of a later version', () => '{"format":"lynchet-plan","version":99}', 'version 99'],
    ['without a version', () => '{"format":"lynchet-plan"}', 'which version'],
  ])('%s says so', (_name, make, what) => {
    const result = openPlan(make())
    expect(!result.ok && result.problems[0]?.what).toContain(what)
  })

  it('a bank whose rise is as long as the slope is told to measure again', () => {
    const result = openPlan(
      spoilt({ 'survey.ground': { kind: 'bank', lengthM: 7, riseM: 7, facesDeg: 10, widthM: 5 } }),
    )
    expect(!result.ok && result.problems[0]?.what).toContain('measure the length along the ground')
  })

  it('choices for a zone that is not there, ids used twice and a profile that turns back are found', () => {
    const ring = [
      { eastM: 0, northM: 0 },
      { eastM: 5, northM: 0 },
      { eastM: 5, northM: 5 },
    ]
    const result = openPlan(
      spoilt({
        zones: [
          { id: 'a', name: 'Top', ring },
          { id: 'a', name: 'Foot', ring },
        ],
        choices: [{ zoneId: 'b', cover: 'meadow' }],
        'survey.ground.stations.3.distanceM': 4,
      }),
    )
    const where = result.ok ? [] : result.problems.map((problem) => problem.where)
    expect(where).toEqual([
      'plan › zones, row 2',
      'plan › choices, row 1',
      'plan › survey › ground › stations, row 4',
    ])
  })
})
