// @vitest-environment happy-dom
import { mount } from '@vue/test-utils'
import { effectScope, nextTick, shallowRef, type ShallowRef } from 'vue'
import { afterEach, describe, expect, it, vi } from 'vitest'
import type { Plan } from '#plan'
import { savePlan } from '#plan'
import type { Answer, Ask } from '#worker'
import { fileStem } from '../../src/app/composables/download'
import { useFindings } from '../../src/app/composables/useFindings'
import type { Keep, SetAside } from '../../src/app/composables/browserKeep'
import { useKeptPlan } from '../../src/app/composables/useKeptPlan'
import { useSheetKeys, type SheetKeys } from '../../src/app/composables/useSheetKeys'
import { demoPlan } from './demo-plan'

/** A worker that only writes down what it is asked. */
class FakeWorker {
  readonly asked: Ask[] = []
  onmessage: ((event: MessageEvent<Answer>) => void) | null = null
  onerror: ((event: ErrorEvent) => void) | null = null
  terminated = false
  postMessage(ask: Ask): void {
    this.asked.push(ask)
  }
  terminate(): void {
    this.terminated = true
  }
  answer(data: Answer): void {
    this.onmessage?.(new MessageEvent('message', { data }))
  }
}

function working(plan = shallowRef<Plan | undefined>(demoPlan())) {
  const worker = new FakeWorker()
  const scope = effectScope()
  const found = scope.run(() => useFindings(plan, worker as never))
  if (!found) throw new Error('not set up')
  return { plan, worker, scope, found }
}

describe('findings', () => {
  it('drop answers to plans that are no longer on the sheet', async () => {
    const { plan, worker, found } = working()
    plan.value = demoPlan()
    await nextTick()
    worker.answer({ kind: 'failed', id: 1, message: 'late' })
    expect(found.problems.value).toEqual([])
    worker.answer({ kind: 'failed', id: 2, message: 'in time' })
    expect(found.problems.value[0]?.what).toContain('in time')
  })

  it('keep the last findings on show when a plan cannot be derived', async () => {
    const { plan, worker, found } = working()
    const findings = { zoning: 'kept' } as never
    worker.answer({ kind: 'findings', id: 1, findings })
    plan.value = demoPlan()
    await nextTick()
    worker.answer({ kind: 'problems', id: 2, problems: [{ where: 'plan', what: 'wrong', mend: 'mend it' }] })
    expect(found.findings.value).toBe(findings)
    expect(found.problems.value.map(({ what }) => what)).toEqual(['wrong'])
  })

  it('tell how far they are, stop when cancelled, and end the worker with the page', () => {
    const { worker, scope, found } = working()
    expect(found.done.value).toBe(0)
    worker.answer({ kind: 'stage', id: 1, stage: 'sun', done: 0.25 })
    expect([found.stage.value, found.done.value]).toEqual(['sun', 0.25])
    found.cancel()
    expect(worker.asked.at(-1)).toEqual({ kind: 'cancel' })
    expect([found.done.value, found.stale.value]).toEqual([1, true])
    worker.answer({ kind: 'failed', id: 1, message: 'too late' })
    expect(found.problems.value).toEqual([])
    scope.stop()
    expect(worker.terminated).toBe(true)
  })
})

describe('a kept plan', () => {
  function keepOf(text: string | undefined) {
    const written: string[] = []
    const aside: SetAside[] = []
    const keep: Keep = {
      read: () => Promise.resolve(written.at(-1) ?? text),
      write: (next) => Promise.resolve(void written.push(next)),
      readAside: () => Promise.resolve([...aside]),
      writeAside: (plans) => Promise.resolve(void aside.splice(0, aside.length, ...plans)),
    }
    return { keep, written, aside }
  }
  /** The composable as a page uses it. */
  function kept(plan: ShallowRef<Plan | undefined>, keep: Keep) {
    let made: ReturnType<typeof useKeptPlan> | undefined
    mount({ setup: () => ((made = useKeptPlan(plan, keep)), () => null) })
    if (!made) throw new Error('not set up')
    return made
  }

  it('is written each time it changes, in order', async () => {
    const { keep, written } = keepOf(undefined)
    const plan = shallowRef<Plan>()
    const { keptAt } = kept(plan, keep)
    plan.value = demoPlan()
    await nextTick()
    plan.value = { ...demoPlan(), name: 'Changed' }
    await nextTick()
    await vi.waitFor(() => expect(keptAt.value).toBeInstanceOf(Date))
    expect(written.map((text) => /"name": "(.*)"/.exec(text)?.[1])).toEqual([demoPlan().name, 'Changed'])
  })

  it('comes back whole, or says why it cannot', async () => {
    const plan = shallowRef<Plan>()
    expect(await kept(plan, keepOf(savePlan(demoPlan())).keep).last()).toEqual(demoPlan())
    const broken = kept(plan, keepOf('{"format": "lynchet-plan"').keep)
    expect(await broken.last()).toBeUndefined()
    expect(broken.trouble.value).toMatch(/^The plan kept last time cannot be read/)
  })

  it('is set aside before another takes its place, but not a demo as it came', async () => {
    const mine = savePlan({ ...demoPlan(), name: 'Mine' })
    const { keep, aside } = keepOf(mine)
    const { setAside, forget } = kept(shallowRef<Plan>(), keep)
    await setAside([savePlan(demoPlan())])
    await setAside([savePlan(demoPlan())])
    expect(aside.map(({ name, text }) => [name, text])).toEqual([['Mine', mine]])
    await setAside([mine])
    expect(aside).toHaveLength(1)
    await forget(aside[0]?.at ?? '')
    expect(aside).toEqual([])
  })

  it('says so when this device keeps nothing', async () => {
    const plan = shallowRef<Plan>()
    const full = () => Promise.reject(new Error('full'))
    const none = { ...keepOf(undefined).keep, read: () => Promise.reject(new Error('blocked')), write: full }
    const { last, trouble } = kept(plan, none)
    await last()
    expect(trouble.value).toContain('blocked')
    plan.value = demoPlan()
    await vi.waitFor(() => expect(trouble.value).toContain('full'))
  })
})

describe('keys of the sheet', () => {
  const scope = effectScope()
  afterEach(() => document.body.replaceChildren())
  const done: string[] = []
  let on = true
  const keys: SheetKeys = {
    on: () => on,
    question: (at) => done.push(`question ${at}`),
    zone: (letter) => done.push(`zone ${letter}`),
    why: () => done.push('why'),
    close: () => done.push('close'),
    step: (metres) => done.push(`step ${metres}`),
    undo: () => done.push('undo'),
    redo: () => done.push('redo'),
  }
  scope.run(() => useSheetKeys(keys))
  function press(key: string, more: KeyboardEventInit = {}, from: EventTarget = document.body): string[] {
    done.length = 0
    from.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, ...more }))
    return [...done]
  }

  it.each([
    ['1', {}, 'question 0'],
    ['7', {}, 'question 6'],
    ['b', {}, 'zone B'],
    ['w', {}, 'why'],
    ['Escape', {}, 'close'],
    ['ArrowLeft', {}, 'step -0.5'],
    ['ArrowRight', { shiftKey: true }, 'step 5'],
    ['z', { ctrlKey: true }, 'undo'],
    ['z', { ctrlKey: true, shiftKey: true }, 'redo'],
    ['y', { metaKey: true }, 'redo'],
  ])('%s %o does: %s', (key, more, does) => {
    expect(press(key, more)).toEqual([does])
  })

  it('are left alone while something is typed', () => {
    const input = document.body.appendChild(document.createElement('input'))
    expect(press('b', {}, input)).toEqual([])
    expect(press('z', { ctrlKey: true }, input)).toEqual([])
  })

  it('can be turned off, all but Escape', () => {
    on = false
    expect([press('1'), press('b'), press('ArrowLeft'), press('Escape')]).toEqual([[], [], [], ['close']])
    on = true
  })
})

describe('file names', () => {
  it.each([
    ['The bank below the house', 'the-bank-below-the-house'],
    ['Böschung / Süd (2)', 'böschung-süd-2'],
    ['???', 'plan'],
  ])('%s becomes %s', (name, stem) => expect(fileStem(name)).toBe(stem))
})
