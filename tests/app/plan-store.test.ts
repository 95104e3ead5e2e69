import { createPinia, setActivePinia } from 'pinia'
import { beforeEach, describe, expect, it } from 'vitest'
import { usePlanStore } from '../../src/app/stores/plan'
import { demoPlan } from './demo-plan'

beforeEach(() => setActivePinia(createPinia()))

describe('the plan store', () => {
  it('undoes and redoes step by step, and says what each step was', () => {
    const store = usePlanStore()
    const first = demoPlan()
    const second = { ...first, name: 'Second' }
    const third = { ...first, name: 'Third' }
    store.open(first)
    expect([store.undoes, store.redoes]).toEqual([undefined, undefined])
    store.replace('call it second', second)
    store.replace('call it third', third)
    expect(store.undoes).toBe('call it third')
    store.undo()
    expect(store.plan).toBe(second)
    expect([store.undoes, store.redoes]).toEqual(['call it second', 'call it third'])
    store.undo()
    expect(store.plan).toBe(first)
    store.undo()
    expect(store.plan).toBe(first)
    store.redo()
    store.redo()
    expect(store.plan).toBe(third)
  })

  it('forgets what was undone once something else is done', () => {
    const store = usePlanStore()
    store.open(demoPlan())
    store.replace('one way', demoPlan())
    store.undo()
    store.replace('another way', demoPlan())
    expect(store.redoes).toBeUndefined()
  })

  it('has nothing to undo after another plan is opened', () => {
    const store = usePlanStore()
    store.open(demoPlan())
    store.replace('change', demoPlan())
    store.open(demoPlan())
    store.undo()
    expect(store.undoes).toBeUndefined()
  })
})
