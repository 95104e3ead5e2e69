import { beforeEach, describe, expect, it, vi } from 'vitest'
import { skylinesAround, standingOf, sunOnGround, zoneSun } from '#core/shade'
import { months } from '#core/units'
import { createDeriver, openPlan, savePlan, shadingOf, type Obstacle, type Plan, type Trial } from '#plan'
import { bank, found, planOn, tables } from './plans'

vi.mock('#core/shade', async (original) => {
  const shade = await original<typeof import('#core/shade')>()
  return {
    ...shade,
    skylinesAround: vi.fn(shade.skylinesAround),
    standingOf: vi.fn(shade.standingOf),
    sunOnGround: vi.fn(shade.sunOnGround),
    zoneSun: vi.fn(shade.zoneSun),
  }
})

/** How often each was worked out since last asked. */
function counted() {
  const counts = {
    skylines: vi.mocked(skylinesAround).mock.calls.length,
    standing: vi.mocked(standingOf).mock.calls.length,
    sun: vi.mocked(sunOnGround).mock.calls.length,
    zones: vi.mocked(zoneSun).mock.calls.length,
  }
  vi.clearAllMocks()
  return counts
}

beforeEach(() => void vi.clearAllMocks())

const at = (eastM: number, northM: number) => ({ eastM, northM })

const tree: Obstacle = {
  id: 'tree',
  kind: 'tree',
  name: 'Pear',
  ring: [at(0, -1)],
  heightM: 5,
  crownBaseM: 1.5,
}
const fence: Obstacle = {
  id: 'fence',
  kind: 'fence',
  name: 'Fence',
  ring: [at(-5, -6.5), at(5, -6.5)],
  heightM: 2,
}
const path: Obstacle = { id: 'path', kind: 'path', name: 'Path', ring: [at(-4, 4), at(4, 4)] }

const thinned: Trial = {
  id: 'thinned',
  name: 'Pear thinned',
  changes: [{ thingId: 'tree', leafyLight: 0.3 }],
}
const away: Trial = { id: 'away', name: 'No fence', changes: [{ thingId: 'fence', gone: true }] }

/** A bank of 12 by 10 m with a tree on it and a fence below, in cells of a metre. */
function shaded(change: Partial<Pick<Plan, 'trials'>> & { obstacles?: Obstacle[] } = {}): Plan {
  const plan = planOn(bank)
  const { obstacles = [tree, fence, path], trials = [thinned, away] } = change
  return { ...plan, survey: { ...plan.survey, cellM: 1, obstacles }, trials }
}

/** The plan as a fresh copy, as it comes from the page or from a file. */
function copied(plan: Plan): Plan {
  const opened = openPlan(savePlan(plan))
  if (!opened.ok) throw new Error(opened.problems.map(({ what }) => what).join('\n'))
  return opened.value
}

describe('things in the light of a plan', () => {
  it('stand in the findings, and what lies flat does not', () => {
    const plan = shaded()
    const findings = found(plan)
    expect(findings.standing.map(({ id }) => id)).toEqual(['tree', 'fence'])
    const shading = shadingOf(plan, findings)
    expect(shading).toEqual({ ground: findings.surface, standing: findings.standing, far: [] })
  })

  it('take sun from every zone’s account: open hours less what is taken is what is left (exact sum)', () => {
    const findings = found(shaded())
    findings.zoneSun.forEach(({ openHours, takers, sunHours }, zone) => {
      for (const month of months) {
        const taken = takers.reduce((sum, { hours }) => sum + hours[month], 0)
        expect(openHours[month] - taken).toBeCloseTo(sunHours[month], 4)
        expect(sunHours[month]).toBeCloseTo(findings.zoning.zones[zone]?.sunHours[month] ?? NaN, 3)
      }
    })
  })
})

describe('a trial', () => {
  it('is the sun of the plan in which its changes are made, on the same zones', () => {
    const plan = shaded()
    const now = found(plan)
    const zones = now.zoning.zones.map(({ id, name, ring }) => ({ id, name, ring: [...ring] }))
    const drawn = { ...plan, zones }
    const { trials } = found(drawn)
    // What really stands so has no trials any more.
    const thinner = { ...tree, leafyLight: 0.3 }
    const really = [
      { ...drawn, survey: { ...drawn.survey, obstacles: [thinner, fence, path] } },
      { ...drawn, survey: { ...drawn.survey, obstacles: [tree, path] } },
    ]
    really.forEach((made, at) => expect(trials[at]?.zoneSun).toEqual(found({ ...made, trials: [] }).zoneSun))
  })

  it('that takes a thing away or thins it never takes sun from anywhere (exact: it only lets more through)', () => {
    for (const { midsummerGainH } of found(shaded()).trials) {
      expect(Math.min(...midsummerGainH)).toBeGreaterThanOrEqual(-1e-6)
      expect(Math.max(...midsummerGainH)).toBeGreaterThan(0.1)
    }
  })

  it('at the other end of the year in the south, at its own midsummer', () => {
    const north = shaded({ trials: [away] })
    const south = { ...north, site: { ...north.site, latitudeDeg: -52 } }
    const findings = found(south)
    const [trial] = findings.trials
    const gained = (month: 5 | 11) =>
      findings.zoneSun.map(
        ({ sunHours }, zone) => (trial?.zoneSun[zone]?.sunHours[month] ?? 0) - sunHours[month],
      )
    const means = findings.zoning.zones.map((_, zone) => {
      const cells = [...findings.zoning.zoneOfCell.entries()].filter(([, of]) => of === zone)
      const share = cells.reduce((sum, [cell]) => sum + (findings.surface.share[cell] ?? 0), 0)
      const gain = cells.reduce(
        (sum, [cell]) => sum + (findings.surface.share[cell] ?? 0) * (trial?.midsummerGainH[cell] ?? 0),
        0,
      )
      return gain / share
    })
    gained(11).forEach((hours, zone) => expect(means[zone]).toBeCloseTo(hours, 4))
  })

  it('says what it changes, with the figure it had, given or usual', () => {
    const trials: Trial[] = [
      thinned,
      away,
      {
        id: 'more',
        name: 'More',
        changes: [
          { thingId: 'tree', crownBaseM: 2, crownWidthM: 2.5, bareLight: 0.6 },
          { thingId: 'fence', heightM: 1.25, leafyLight: 0.5 },
        ],
      },
    ]
    expect(found(shaded({ trials })).trials.map(({ changes }) => changes)).toEqual([
      ['Pear: lets 30 % through in leaf instead of 3 %'],
      ['Fence: taken away'],
      [
        'Pear: lowest branches 2 m up instead of 1.5 m, crown 2.5 m wide instead of 3 m, lets 60 % through when bare instead of 45 %',
        'Fence: 1.25 m high instead of 2 m, lets 50 % through instead of none',
      ],
    ])
  })

  it('on a thing of which no height is known says so', () => {
    const trials: Trial[] = [{ id: 'new', name: 'New', changes: [{ thingId: 'fence', heightM: 4 }] }]
    const low = { ...fence, heightM: undefined }
    const [trial] = found(shaded({ obstacles: [low], trials })).trials
    expect(trial?.changes).toEqual(['Fence: 4 m high, not known before'])
    expect(Math.min(...(trial?.midsummerGainH ?? [0]))).toBeLessThan(0)
  })
})

describe('what is worked out anew', () => {
  const deriver = () => {
    const made = createDeriver(tables)
    found(shaded(), made)
    counted()
    return made
  }
  const nothing = { skylines: 0, standing: 0, sun: 0, zones: 0 }

  it('at first: one skyline, and standing things, sun and zones for the plan and each of two trials', () => {
    found(shaded())
    expect(counted()).toEqual({ skylines: 1, standing: 3, sun: 3, zones: 3 })
  })

  it('nothing of it when soil, brief or the name of a trial changes', () => {
    const made = deriver()
    const plan = copied(shaded({ trials: [{ ...thinned, name: 'Pear opened' }, away] }))
    const soil = plan.soil.map((sample) => ({ ...sample, depthM: 0.3 }))
    const findings = found({ ...plan, soil, brief: { ...plan.brief, pets: true } }, made)
    expect(counted()).toEqual(nothing)
    expect(findings.trials[0]?.name).toBe('Pear opened')
  })

  it('no sun when a path moves', () => {
    const made = deriver()
    found(copied(shaded({ obstacles: [tree, fence, { ...path, ring: [at(-3, 3), at(3, 3)] }] })), made)
    expect(counted()).toEqual({ ...nothing, standing: 3 })
  })

  it('no skyline of the ground when a tree moves', () => {
    const made = deriver()
    found(copied(shaded({ obstacles: [{ ...tree, ring: [at(2, 1)] }, fence, path] })), made)
    expect(counted()).toEqual({ skylines: 0, standing: 3, sun: 3, zones: 3 })
  })

  it('one trial alone when that trial changes', () => {
    const made = deriver()
    const lighter = { ...thinned, changes: [{ thingId: 'tree', leafyLight: 0.5 }] }
    found(copied(shaded({ trials: [lighter, away] })), made)
    expect(counted()).toEqual({ ...nothing, standing: 1, sun: 1, zones: 1 })
  })

  it('one trial alone when one is added, and nothing when one is taken out', () => {
    const made = deriver()
    const low: Trial = { id: 'low', name: 'Fence low', changes: [{ thingId: 'fence', heightM: 1 }] }
    found(copied(shaded({ trials: [thinned, away, low] })), made)
    expect(counted()).toEqual({ ...nothing, standing: 1, sun: 1, zones: 1 })
    found(copied(shaded({ trials: [away, low] })), made)
    expect(counted()).toEqual(nothing)
  })

  it('sums of zones but no sun when zones are drawn', () => {
    const made = deriver()
    const plan = shaded()
    const ring = [at(-5, -6), at(5, -6), at(5, 6), at(-5, 6)]
    found(copied({ ...plan, zones: [{ id: 'all', name: 'All', ring }] }), made)
    expect(counted()).toEqual({ ...nothing, zones: 3 })
  })

  it('everything but the skyline when far hills are drawn', () => {
    const made = deriver()
    const plan = shaded()
    const survey = { ...plan.survey, skyline: [{ azimuthDeg: 180, angleDeg: 10 }] }
    found(copied({ ...plan, survey }), made)
    expect(counted()).toEqual({ ...nothing, sun: 3, zones: 3 })
  })
})

describe('steps', () => {
  it('go on from 0 towards 1, with one to a trial, and can be left at any of them', () => {
    const steps = [...createDeriver(tables).steps(shaded())]
    const done = steps.map((step) => step.done)
    expect(done).toEqual(done.toSorted((one, other) => one - other))
    expect(done.every((share) => share >= 0 && share < 1)).toBe(true)
    expect(steps.filter(({ stage }) => stage === 'trials')).toHaveLength(2)
    const made = createDeriver(tables)
    const begun = made.steps(shaded())
    begun.next()
    begun.next()
    expect(found(shaded(), made)).toEqual(found(shaded()))
  })
})
