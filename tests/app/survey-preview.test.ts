// @vitest-environment happy-dom
import { readFileSync } from 'node:fs'
import { mount } from '@vue/test-utils'
import { createPinia } from 'pinia'
import { nextTick } from 'vue'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { groundOf, readSurveyFile, readWithColumns, type SurveyGround, type SurveyRead } from '#files'
import type { ReadAnswer, ReadAsk } from '#worker'
import { blankLines, hasPlainLines } from '../../src/app/composables/blankLines'
import SurveyPreview from '../../src/app/views/start/SurveyPreview.vue'
import NewLevels from '../../src/app/views/desk/NewLevels.vue'

vi.stubGlobal(
  'ResizeObserver',
  class {
    observe(): void {}
    disconnect(): void {}
  },
)

/** A reader on the main thread that writes down what it is asked, and answers when told. */
class FakeReader {
  static made: FakeReader[] = []
  readonly asked: ReadAsk[] = []
  last: SurveyRead | undefined
  onmessage: ((event: MessageEvent<ReadAnswer>) => void) | null = null
  onerror: ((event: ErrorEvent) => void) | null = null
  terminated = false
  constructor() {
    FakeReader.made.push(this)
  }
  postMessage(ask: ReadAsk): void {
    this.asked.push(ask)
  }
  terminate(): void {
    this.terminated = true
  }
  say(data: ReadAnswer): void {
    this.onmessage?.(new MessageEvent('message', { data }))
  }
  /** Answers the newest question as the real reader does. */
  async answer(): Promise<void> {
    const ask = this.asked.at(-1)
    if (!ask) throw new Error('nothing was asked')
    const { id } = ask
    if (ask.kind === 'ground') {
      const made = this.last && groundOf(this.last, ask.wish)
      if (!made) throw new Error('nothing was read')
      this.say(
        made.ok
          ? { kind: 'ground', id, ground: made.value }
          : { kind: 'problems', id, problems: made.problems },
      )
    } else {
      const read =
        ask.kind === 'read'
          ? await readSurveyFile(ask.bytes, ask.name, ask.columns)
          : this.last && readWithColumns(this.last, ask.columns)
      if (!read) throw new Error('nothing was read')
      if (read.ok) this.last = read.value
      this.say(
        read.ok ? { kind: 'read', id, read: read.value } : { kind: 'problems', id, problems: read.problems },
      )
    }
    await nextTick()
    await nextTick()
  }
}
afterEach(() => void (FakeReader.made = []))

function preview() {
  const page = mount(SurveyPreview, {
    props: { id: 's', reader: () => new FakeReader() as never },
    global: { plugins: [createPinia()] },
  })
  const reader = () => {
    const made = FakeReader.made.at(-1)
    if (!made) throw new Error('no reader was started')
    return made
  }
  const paste = async (text: string) => {
    await page.find('#s-paste').setValue(text)
    await page
      .findAll('button')
      .find((one) => one.text() === 'Read these lines')
      ?.trigger('click')
  }
  const ground = () => page.emitted<[SurveyGround | undefined]>('ground')?.at(-1)?.[0]
  const still = () => page.emitted<[readonly string[]]>('still')?.at(-1)?.[0]
  return { page, reader, paste, ground, still }
}

const file = async (page: ReturnType<typeof preview>['page'], name: string) => {
  const bytes = new Uint8Array(readFileSync(`tests/truth/files/${name}`))
  const input = page.find<HTMLInputElement>('#s-file')
  Object.defineProperty(input.element, 'files', { value: [new File([bytes], name)], configurable: true })
  await input.trigger('change')
  await vi.waitFor(() => expect(FakeReader.made.at(-1)?.asked.length ?? 0).toBeGreaterThan(0))
}

describe('a survey before it is kept', () => {
  it('asks for a unit that the file does not name, and gives no ground before', async () => {
    const { page, reader, paste, ground, still } = preview()
    expect(still()).toEqual(['a file, or lines to read'])
    await paste('mark,east,north,level,code\nA,0,0,10,TOP\nB,30,0,11,TOP\nC,0,30,12,TOE')
    await reader().answer()
    expect(page.text()).toContain('3 points')
    expect(still()).toEqual(['the unit of its lengths'])
    expect(ground()).toBeUndefined()
    await page.find('#s-unit').setValue('ft')
    await nextTick()
    await reader().answer()
    expect(still()).toEqual([])
    const made = ground()?.ground
    // The foot of 1959 is 0.3048 m.
    expect(made?.kind === 'levels' && made.points[1]).toEqual({
      mark: 'B',
      code: 'TOP',
      eastM: 30 * 0.3048,
      northM: 0,
      levelM: 11 * 0.3048,
    })
  })

  it('LandXML 1.2, US survey feet: a part is chosen, the unit is the file’s, the place is told', async () => {
    const { page, reader, ground, still } = preview()
    await file(page, 'landxml-us-survey-feet.xml')
    await reader().answer()
    expect(still()).toEqual(['which part of the file is the ground'])
    await page.findAll('.survey-parts input').at(0)?.setValue(true)
    await nextTick()
    await reader().answer()
    expect(ground()?.ground.kind).toBe('levels')
    expect(page.text()).toContain('That puts its middle at 35.')
    expect(page.text()).toContain('faces marked invisible')
    // Another surface takes the place of the first.
    await page.findAll('.survey-parts input').at(1)?.setValue(true)
    expect(
      page.findAll<HTMLInputElement>('.survey-parts input').map(({ element }) => element.checked),
    ).toEqual([false, true, false, false])
  })

  it('DXF R2010: a doubt about a layer is asked only when the layer is chosen', async () => {
    const { page, reader } = preview()
    await file(page, 'dxf-everything-r2010.dxf')
    await reader().answer()
    expect(page.findAll('.doubt').length).toBe(0)
    await page.findAll('.survey-parts input').at(0)?.setValue(true)
    await nextTick()
    expect(page.find('.doubt legend').text()).toBe('layer LEVELS')
  })

  it('levels of zero are a question: left out when the person says so', async () => {
    const { page, reader, paste, ground, still } = preview()
    await paste('east (m),north (m),level (m)\n0,0,50\n90,0,51\n0,90,52\n90,90,51\n50,50,0')
    await reader().answer()
    expect(still()).toEqual(['the question above'])
    const leave = page.findAll('.doubt label').find((one) => one.text() === 'Leave the zeros out')
    await leave?.find('input').trigger('change')
    await nextTick()
    await reader().answer()
    const made = ground()?.ground
    expect(made?.kind === 'levels' && made.points.map(({ levelM }) => levelM)).toEqual([50, 51, 52, 51])
  })

  it('a line that cannot be read is named, and can be left out', async () => {
    const { page, reader, paste } = preview()
    await paste('east,north,level\n0,0,50\n9,0,high\n0,9,52\n9,9,51')
    await reader().answer()
    expect(page.find('.problems').text()).toMatch(/line 3, level.*“high” is not a number/)
    await page
      .findAll('button')
      .find((one) => one.text().startsWith('Leave line 3 out'))
      ?.trigger('click')
    await reader().answer()
    expect(page.text()).toContain('3 points')
    expect(page.text()).toContain('Left out because you said so: line 3.')
  })

  it('columns told by the person are read anew, and doubts about the levels stay', async () => {
    const { page, reader, paste } = preview()
    await paste('1 10.5 20.5 50\n2 19.5 20.5 51\n3 10.5 29.5 52\n4 19.5 29.5 0')
    await reader().answer()
    expect(page.text()).toContain('No heading says which column is which')
    expect(page.text()).toContain('exactly 0')
    await page.findAll('.orders button').at(1)?.trigger('click')
    expect(reader().asked.at(-1)).toMatchObject({ kind: 'columns', columns: { north: 1, east: 2 } })
    await reader().answer()
    expect(page.text()).not.toContain('No heading says which column is which')
    expect(page.text()).toContain('exactly 0')
  })

  it('is stopped by ending the reader, and a late answer is dropped', async () => {
    const { page, reader, paste } = preview()
    await paste('0 0 1\n1 0 2\n0 1 3')
    const first = reader()
    expect(page.find('progress').exists()).toBe(true)
    await page
      .findAll('button')
      .find((one) => one.text() === 'Stop')
      ?.trigger('click')
    expect(first.terminated).toBe(true)
    expect(page.find('progress').exists()).toBe(false)
    await paste('0 0 1\n1 0 2\n0 1 x')
    reader().say({ kind: 'problems', id: 1, problems: [{ where: 'late', what: 'late', mend: 'late' }] })
    await nextTick()
    expect(page.find('.problems').exists()).toBe(false)
    reader().say({ kind: 'failed', id: reader().asked.at(-1)?.id ?? 0, message: 'out of memory' })
    await nextTick()
    expect(page.find('.problems').text()).toContain('out of memory')
    page.unmount()
    expect(reader().terminated).toBe(true)
  })

  it('a file larger than what is read is not even opened', async () => {
    const { page } = preview()
    const huge = new File(['x'], 'huge.xyz')
    Object.defineProperty(huge, 'size', { value: 65 * 1024 * 1024 })
    const input = page.find<HTMLInputElement>('#s-file')
    Object.defineProperty(input.element, 'files', { value: [huge] })
    await input.trigger('change')
    await nextTick()
    expect(page.find('.problems').text()).toMatch(/huge\.xyz.*65 MiB; at most 64 MiB/)
    expect(FakeReader.made).toEqual([])
  })
})

describe('better levels for the same plot', () => {
  it('are looked at in the same way', async () => {
    const page = mount(NewLevels, { global: { plugins: [createPinia()] } })
    const details = page.find('details')
    ;(details.element as HTMLDetailsElement).open = true
    await details.trigger('toggle')
    expect(page.find('#new-levels-paste').exists()).toBe(true)
    expect(page.text()).toContain('Still to say: a file, or lines to read.')
  })
})

describe('lines of a text', () => {
  const bytes = (text: string) => new TextEncoder().encode(text)
  it('are emptied without moving the others', () => {
    const left = blankLines(bytes('a\nbb\r\nc\nd'), new Set([2, 4]))
    expect(new TextDecoder().decode(left)).toBe('a\n\nc\n')
  })
  it('cannot be told in UTF-16', () => {
    expect(hasPlainLines(Uint8Array.from([0xff, 0xfe, 10, 0]))).toBe(false)
    expect(hasPlainLines(bytes('a\nb'))).toBe(true)
  })
})
