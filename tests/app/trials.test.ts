import { describe, expect, it } from 'vitest'
import { openPlan, type Obstacle, type Plan } from '#plan'
import { removeThing, setThing } from '../../src/app/edits/things'
import { fieldsOf, fitted, takesLight } from '../../src/app/edits/thing-fields'
import { trialCautions } from '../../src/app/edits/trial-cautions'
import { heldFigure, shownFigure, wayWords } from '../../src/app/edits/trial-words'
import {
  addTrial,
  makeItSo,
  partsOf,
  removePart,
  removeTrial,
  renameTrial,
  setPart,
  waysFor,
} from '../../src/app/edits/trials'
import { demoPlan } from './demo-plan'

const at = (eastM: number, northM: number) => ({ eastM, northM })
const tree: Obstacle = {
  id: 'cherry',
  kind: 'tree',
  name: 'Cherry',
  ring: [at(3, 3)],
  heightM: 8,
  crownBaseM: 1.5,
  crownWidthM: 6,
  leaf: 'deciduous',
  leafMonths: { from: 5, to: 10 },
  leafyLight: 0.2,
  bareLight: 0.6,
}
const fence: Obstacle = {
  id: 'fence',
  kind: 'fence',
  name: 'Fence',
  ring: [at(0, 0), at(5, 0)],
  heightM: 1.8,
}
const path: Obstacle = { id: 'path', kind: 'path', name: 'Path', ring: [at(0, 1), at(5, 1)] }
const before = demoPlan()
const plan: Plan = { ...before, trials: [], survey: { ...before.survey, obstacles: [tree, fence, path] } }

/** The plan after an edit; it must open again as it is. */
function after(outcome: ReturnType<typeof addTrial>): Plan {
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  const opened = openPlan(JSON.stringify(outcome.value))
  if (!opened.ok) throw new Error(opened.problems.map(({ where, what }) => `${where}: ${what}`).join(' '))
  return opened.value
}
const refusal = (outcome: ReturnType<typeof addTrial>) => (outcome.ok ? '' : outcome.problems[0]?.what)
const part = (thingId: string, way: 'gone' | 'heightM' | 'crownBaseM' | 'leafyLight', value?: number) => ({
  thingId,
  way,
  value,
})
const thingIn = (of: Plan, id: string) => of.survey.obstacles.find((each) => each.id === id)

describe('what can be measured of a thing', () => {
  it('fits what it is', () => {
    expect(fieldsOf({ kind: 'house' })).toEqual(['heightM', 'ridgeM', 'groundM'])
    expect(fieldsOf({ kind: 'fence' })).toContain('leafyLight')
    expect(fieldsOf({ kind: 'tree', leaf: 'evergreen' })).not.toContain('bareLight')
    expect([fieldsOf(path), takesLight(path), takesLight(fence)]).toEqual([[], false, true])
  })

  it('goes when the thing becomes something else, and nothing else does', () => {
    expect(fitted({ ...tree, kind: 'wall' })).toEqual({
      id: 'cherry',
      kind: 'wall',
      name: 'Cherry',
      ring: [at(3, 3)],
      heightM: 8,
    })
    const wall = thingIn(after(setThing(plan, 'cherry', { kind: 'wall' })), 'cherry')
    expect([wall?.crownWidthM, wall?.leaf, wall?.heightM, wall?.ring.length]).toEqual([
      undefined,
      undefined,
      8,
      2,
    ])
    const house = thingIn(after(setThing(plan, 'cherry', { kind: 'building' })), 'cherry')
    expect(house?.ring).toHaveLength(4)
    const holly = thingIn(after(setThing(plan, 'cherry', { leaf: 'evergreen' })), 'cherry')
    expect([holly?.leafMonths, holly?.bareLight, holly?.leafyLight]).toEqual([undefined, undefined, 0.2])
  })
})

describe('trials', () => {
  const one = after(addTrial(plan, part('cherry', 'crownBaseM', 3)))

  it('change nothing of the survey, and are named after what they do', () => {
    expect(one.survey).toEqual(plan.survey)
    expect(one.trials).toEqual([
      {
        id: 'trial-1',
        name: 'Cherry with its crown lifted',
        changes: [{ thingId: 'cherry', crownBaseM: 3 }],
      },
    ])
    const two = after(addTrial(one, part('cherry', 'crownBaseM', 2)))
    expect(two.trials?.map(({ name }) => name)[1]).toBe('Cherry with its crown lifted, 2')
  })

  it('take several changes, on one thing and on several', () => {
    const thinned = after(setPart(one, 'trial-1', part('cherry', 'leafyLight', 0.4)))
    const both = after(setPart(thinned, 'trial-1', part('fence', 'gone')))
    expect(both.trials?.[0]?.changes).toEqual([
      { thingId: 'cherry', crownBaseM: 3, leafyLight: 0.4 },
      { thingId: 'fence', gone: true },
    ])
    expect(both.trials?.[0] && partsOf(both.trials[0])).toEqual([
      part('cherry', 'crownBaseM', 3),
      part('cherry', 'leafyLight', 0.4),
      part('fence', 'gone'),
    ])
    const left = after(removePart(both, 'trial-1', part('cherry', 'crownBaseM')))
    expect(left.trials?.[0]?.changes[0]).toEqual({ thingId: 'cherry', leafyLight: 0.4 })
    const only = after(removePart(left, 'trial-1', part('cherry', 'leafyLight')))
    expect(only.trials?.[0]?.changes).toEqual([{ thingId: 'fence', gone: true }])
    expect(after(removePart(only, 'trial-1', part('fence', 'gone'))).trials).toEqual([])
  })

  it('what is taken away has no other change, and what is changed stays', () => {
    const away = after(setPart(one, 'trial-1', part('cherry', 'gone')))
    expect(away.trials?.[0]?.changes).toEqual([{ thingId: 'cherry', gone: true }])
    const back = after(setPart(away, 'trial-1', part('cherry', 'heightM', 6)))
    expect(back.trials?.[0]?.changes).toEqual([{ thingId: 'cherry', heightM: 6 }])
  })

  it('made so, the survey is changed and the trial is done with', () => {
    const both = after(setPart(one, 'trial-1', part('fence', 'gone')))
    const other = after(addTrial(both, part('fence', 'heightM', 1.2)))
    const so = after(makeItSo(other, 'trial-1'))
    expect(thingIn(so, 'cherry')).toEqual({ ...tree, crownBaseM: 3 })
    expect(thingIn(so, 'fence')).toBeUndefined()
    // The other trial was of the fence, which is gone.
    expect(so.trials).toEqual([])
  })

  it('go with the thing they are of, and lose what no longer fits it', () => {
    const both = after(setPart(one, 'trial-1', part('fence', 'heightM', 1)))
    expect(after(removeThing(both, 'cherry')).trials?.[0]?.changes).toEqual([
      { thingId: 'fence', heightM: 1 },
    ])
    expect(after(setThing(one, 'cherry', { kind: 'wall' })).trials).toEqual([])
  })

  it('are renamed and forgotten', () => {
    expect(after(renameTrial(one, 'trial-1', ' Let light in ')).trials?.[0]?.name).toBe('Let light in')
    expect(after(removeTrial(one, 'trial-1')).trials).toEqual([])
  })

  it('refuse what cannot be, and what is so already', () => {
    expect(refusal(addTrial(plan, part('path', 'gone')))).toBe('That cannot be done to it.')
    expect(refusal(addTrial(plan, part('fence', 'crownBaseM', 1)))).toBe('That cannot be done to it.')
    expect(refusal(addTrial(plan, part('fence', 'heightM', 1.8)))).toBe('It is so already.')
    expect(refusal(addTrial(plan, part('fence', 'heightM')))).toBe('No figure is given.')
    for (const outcome of [
      addTrial(plan, part('x', 'gone')),
      setPart(one, 'trial-9', part('fence', 'gone')),
      removePart(one, 'trial-9', part('fence', 'gone')),
      makeItSo(one, 'trial-9'),
      removeTrial(one, 'trial-9'),
    ])
      expect(refusal(outcome)).toContain('not in the plan')
    const full = [2, 3, 4, 5, 6, 7].reduce(
      (now, by) => after(addTrial(now, part('cherry', 'heightM', by))),
      plan,
    )
    expect(refusal(addTrial(full, part('fence', 'gone')))).toBe('There are 6 trials already.')
  })
})

describe('the words of trials', () => {
  it('shares are shown as per cent and held as shares', () => {
    expect([shownFigure(0.255, '%'), heldFigure(25.5, '%'), shownFigure(2, 'm')]).toEqual([25.5, 0.255, 2])
    expect([shownFigure(undefined, '%'), heldFigure(undefined, 'm')]).toEqual([undefined, undefined])
  })

  it('say what is done to this kind of thing', () => {
    expect(waysFor(fence)).toEqual(['gone', 'heightM', 'leafyLight'])
    expect(waysFor(path)).toEqual([])
    expect(wayWords(fence, 'leafyLight').does).toBe('open it up')
    expect(wayWords(tree, 'leafyLight').does).toBe('thin it')
  })

  it('name the authority and the arborist for a tree, the neighbour for a fence', () => {
    const trial = (thingId: string) => ({ id: 't', name: 't', changes: [{ thingId, gone: true }] })
    expect(trialCautions(plan, trial('cherry')).join(' ')).toMatch(/authority.*arborist/)
    expect(trialCautions(plan, trial('fence'))).toEqual([expect.stringContaining('neighbour')])
  })
})
