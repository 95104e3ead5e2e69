import { describe, expect, it } from 'vitest'
import type { Answer } from '#worker'
import { createDeriver, type Deriver } from '#plan'
import { answering } from '../../src/worker/answering'
import { bank, planOn, tables } from '../plan/plans'

const plan = planOn(bank)

function listening(deriver: Deriver = createDeriver(tables)) {
  const told: Answer[] = []
  const ask = answering(
    deriver,
    (answer) => told.push(answer),
    () => Promise.resolve(),
  )
  return { told, ask }
}

describe('the worker', () => {
  it('tells each stage, rising towards 1, and then the findings', async () => {
    const { told, ask } = listening()
    await ask({ kind: 'derive', id: 1, plan })
    const stages = told.flatMap((answer) => (answer.kind === 'stage' ? [answer] : []))
    expect(stages.map(({ stage }) => stage)).toEqual([
      'surface',
      'terrain',
      'climate',
      'skyline',
      'sun',
      'zones',
      'water',
      'zone-sun',
      'plants',
      'care',
    ])
    expect(stages.every(({ done }, at) => done >= (stages[at - 1]?.done ?? 0) && done < 1)).toBe(true)
    expect(told.at(-1)?.kind).toBe('findings')
  })

  it('drops an older question as soon as a newer one comes', async () => {
    const { told, ask } = listening()
    await Promise.all([ask({ kind: 'derive', id: 1, plan }), ask({ kind: 'derive', id: 2, plan })])
    const finished = told.filter(({ kind }) => kind === 'findings')
    expect(finished.map(({ id }) => id)).toEqual([2])
  })

  it('stops when told to', async () => {
    const { told, ask } = listening()
    await Promise.all([ask({ kind: 'derive', id: 1, plan }), ask({ kind: 'cancel' })])
    expect(told.filter(({ kind }) => kind === 'findings')).toEqual([])
  })

  it('gives the gardener’s problems back as problems, and its own faults as a failure', async () => {
    const bad = listening()
    await bad.ask({
      kind: 'derive',
      id: 3,
      plan: { ...plan, brief: { ...plan.brief, machines: [{ id: 'goat' }] } },
    })
    expect(bad.told.at(-1)).toMatchObject({ kind: 'problems', id: 3 })
    const broken = listening({
      derive: () => ({ ok: false, problems: [] }),
      steps: () => {
        throw new RangeError('a fault')
      },
    })
    await broken.ask({ kind: 'derive', id: 4, plan })
    expect(broken.told.at(-1)).toEqual({ kind: 'failed', id: 4, message: 'a fault' })
  })
})
