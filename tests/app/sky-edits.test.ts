// @vitest-environment happy-dom
import { flushPromises, mount } from '@vue/test-utils'
import { createPinia, setActivePinia } from 'pinia'
import { nextTick } from 'vue'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { openPlan, type Plan } from '#plan'
import SkylineStrip from '../../src/app/components/SkylineStrip.vue'
import TimeZoneField from '../../src/app/components/TimeZoneField.vue'
import { hillsPath, skyStrip, sunLabel, sunLine } from '../../src/app/drawing/skyline-strip'
import { columnOf, readColumn, setColumn, sunToldBy } from '../../src/app/edits/climate-months'
import { readSkyline } from '../../src/app/edits/read-skyline'
import {
  addFarPlaces,
  clearSkyline,
  removeFarPlace,
  setFarPlace,
  skylineOf,
} from '../../src/app/edits/skyline'
import { usePlanStore } from '../../src/app/stores/plan'
import ClimateMonths from '../../src/app/views/desk/ClimateMonths.vue'
import FarDesk from '../../src/app/views/desk/FarDesk.vue'
import { demoPlan } from './demo-plan'

vi.stubGlobal(
  'ResizeObserver',
  class {
    observe(): void {}
    disconnect(): void {}
  },
)
beforeEach(() => setActivePinia(createPinia()))

const plan = demoPlan()
const far = (azimuthDeg: number, angleDeg: number) => ({ azimuthDeg, angleDeg })

/** The plan after an edit; it must open again as it is. */
function after(outcome: ReturnType<typeof setColumn>): Plan {
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  const opened = openPlan(JSON.stringify(outcome.value))
  if (!opened.ok) throw new Error(opened.problems.map(({ where, what }) => `${where}: ${what}`).join(' '))
  return opened.value
}
const refusal = (outcome: ReturnType<typeof setColumn>) => (outcome.ok ? '' : outcome.problems[0]?.what)

describe('the far skyline', () => {
  const hills = after(addFarPlaces(plan, [far(200, 4), far(90, 0), far(-10, 2.5), far(360, 3)]))

  it('stands in order round the circle from north', () => {
    expect(skylineOf(hills)).toEqual([far(0, 3), far(90, 0), far(200, 4), far(350, 2.5)])
    expect(skylineOf(after(setFarPlace(hills, 3, { azimuthDeg: 120 })))[2]).toEqual(far(120, 2.5))
    expect(skylineOf(after(removeFarPlace(hills, 0)))).toHaveLength(3)
  })

  it('without its last place, or removed, is an open horizon', () => {
    const one = after(addFarPlaces(plan, [far(10, 2)]))
    expect(after(removeFarPlace(one, 0)).survey.skyline).toBeUndefined()
    expect(after(clearSkyline(hills)).survey.skyline).toBeUndefined()
  })

  it('refuses one direction twice, and heights that are none', () => {
    expect(refusal(addFarPlaces(hills, [far(200, 9)]))).toBe('200° is given twice.')
    expect(refusal(addFarPlaces(hills, [far(20, 88)]))).toContain('none that far hills have')
    expect(refusal(setFarPlace(hills, 9, { angleDeg: 1 }))).toContain('not in the plan')
  })

  it.each([
    ['90\t4.5\n120\t6', [far(90, 4.5), far(120, 6)]],
    ['azimuth;angle\n90;4,5\n\n120;6', [far(90, 4.5), far(120, 6)]],
    ['90, 4.5\r\n120, 6', [far(90, 4.5), far(120, 6)]],
    ['90,4.5\n120,6', [far(90, 4.5), far(120, 6)]],
    ['90° 4,5°\n120° 6°', [far(90, 4.5), far(120, 6)]],
  ])('reads two columns pasted as %j', (text, places) => {
    expect(readSkyline(text)).toEqual({ ok: true, value: places })
  })

  it('tells which line it cannot read, and takes none of them', () => {
    const read = readSkyline('90 4\nthe hill 6\n120')
    expect(read.ok ? [] : read.problems.map(({ where }) => where)).toEqual(['Line 2', 'Line 3'])
    expect(readSkyline(' \n').ok).toBe(false)
  })
})

describe('the strip of far hills (by construction: 360 px are 360°)', () => {
  it('lies with the noon sun in its middle, and its heights are twice its widths', () => {
    const north = skyStrip(360, 10, false)
    expect(north.at({ azimuthDeg: 180, altitudeDeg: 0 })).toEqual({ xPx: 180, yPx: north.horizonPx })
    expect(north.horizonPx - north.at({ azimuthDeg: 0, altitudeDeg: 10 }).yPx).toBeCloseTo(20, 9)
    expect(north.winds.map(({ text }) => text)).toEqual(['N', 'E', 'S', 'W', 'N'])
    const south = skyStrip(360, 10, true)
    expect(south.at({ azimuthDeg: 0, altitudeDeg: 0 }).xPx).toBe(180)
    expect(south.at({ azimuthDeg: 90, altitudeDeg: 0 }).xPx).toBe(270)
    expect(south.winds.map(({ text }) => text)).toEqual(['S', 'W', 'N', 'E', 'S'])
  })

  it('hills go on past both edges, and a sun path does not jump across', () => {
    const strip = skyStrip(360, 10, false)
    const hills = [
      { azimuthDeg: 90, altitudeDeg: 10 },
      { azimuthDeg: 270, altitudeDeg: 0 },
    ]
    expect(hillsPath(strip, hills, 360)).toMatch(/^M-90 \S+L90 \S+L270 \S+L450 /)
    expect(hillsPath(strip, [], 360)).toBe('')
    const path = [350, 10].map((azimuthDeg) => ({ azimuthDeg, altitudeDeg: 5 }))
    expect(sunLine(strip, path, 360).match(/M/g)).toHaveLength(2)
  })

  it('names a path above its noon, or to the left of where it leaves, in the south too', () => {
    for (const northIsNoon of [false, true]) {
      const strip = skyStrip(720, 0, northIsNoon)
      const noonDeg = northIsNoon ? 0 : 180
      const path = (altitudeDeg: number) =>
        [-60, 0, 60].map((off) => ({
          azimuthDeg: (noonDeg + off + 360) % 360,
          altitudeDeg: altitudeDeg - Math.abs(off) / 6,
        }))
      expect(sunLabel(strip, path(12), false)).toMatchObject({ xPx: 360, anchor: 'middle' })
      const [outer, inner] = [sunLabel(strip, path(40), true), sunLabel(strip, path(40), false)]
      expect([outer?.anchor, inner?.anchor]).toEqual(['end', 'start'])
      expect(outer?.xPx).toBeLessThan(240)
      expect(inner?.xPx).toBeGreaterThan(240)
    }
    expect(sunLabel(skyStrip(720, 0, false), [], true)).toBeUndefined()
  })

  it('says where the highest hill is', () => {
    const strip = mount(SkylineStrip, {
      props: { hills: [far(45, 3), far(135, 7)], paths: [], northIsNoon: false, widthPx: 360 },
    })
    expect(strip.find('svg').attributes('aria-label')).toContain('highest in the south-east: 7°')
  })
})

describe('the page of far hills', () => {
  function page() {
    const store = usePlanStore()
    store.open(plan)
    const desk = mount(FarDesk, { props: { plan }, attachTo: document.body })
    const follow = async () => {
      if (store.plan) await desk.setProps({ plan: store.plan })
      await flushPromises()
    }
    return { desk, store, follow }
  }

  it('takes a direction by its form, and undoes it', async () => {
    const { desk, store, follow } = page()
    await desk.find('#far-azimuth').setValue('140')
    await desk.find('#far-angle').setValue('5')
    await desk.find('form').trigger('submit')
    await follow()
    expect(skylineOf(store.plan ?? plan)).toEqual([far(140, 5)])
    expect(store.undoes).toBe('add a direction of the skyline')
    store.undo()
    expect(store.plan?.survey.skyline).toBeUndefined()
  })

  it('turns what the compass read by the declination of the place', async () => {
    const { desk, store } = page()
    await desk.find('input[type=checkbox]').setValue(true)
    await desk.find('#far-day').setValue('2026-03-21')
    expect(desk.find('.compass-words').text()).toMatch(/^\d+\.\d° is (added to|taken off) what is read here/)
    await desk.find('#far-azimuth').setValue('140')
    await desk.find('#far-angle').setValue('5')
    await desk.find('form').trigger('submit')
    const [said] = /\d+\.\d/.exec(desk.find('.compass-words').text()) ?? ['0']
    const sign = desk.find('.compass-words').text().includes('added') ? 1 : -1
    expect(skylineOf(store.plan ?? plan)[0]?.azimuthDeg).toBeCloseTo(140 + sign * Number(said), 0)
  })

  it('takes pasted lines, and refuses what it cannot read in words', async () => {
    const { desk, store, follow } = page()
    await desk.find('textarea').setValue('10 1\nx y')
    await desk
      .findAll('button')
      .find((each) => each.text() === 'Add these')
      ?.trigger('click')
    expect(desk.text()).toContain('“x y” is no direction and height.')
    await desk.find('textarea').setValue('10 1\n20 2')
    await desk
      .findAll('button')
      .find((each) => each.text() === 'Add these')
      ?.trigger('click')
    await follow()
    expect(store.undoes).toBe('add 2 directions of the skyline')
    expect(desk.find<HTMLTextAreaElement>('textarea').element.value).toBe('')
    await desk
      .findAll('button')
      .find((each) => each.text() === 'Remove them all')
      ?.trigger('click')
    expect(store.plan?.survey.skyline).toBeUndefined()
  })
})

describe('the sun of twelve months', () => {
  const twelve = Array.from({ length: 12 }, (_, at) => (at + 1) / 2)

  it('is told by radiation before sunshine, and by temperature where neither is whole', () => {
    const sunny = after(setColumn(plan, 'sunshineHours', twelve))
    expect(sunny.climate).toMatchObject({ from: 'typed' })
    expect(sunny.climate.place).toBeUndefined()
    expect(sunToldBy(sunny.climate.months)).toContain('hours of bright sunshine')
    expect(sunToldBy(after(setColumn(sunny, 'solarMjPerM2', twelve)).climate.months)).toContain(
      'mean radiation',
    )
    const bare = after(setColumn(sunny, 'sunshineHours', Array.from({ length: 12 })))
    expect(columnOf(bare.climate.months, 'sunshineHours')).toEqual(Array.from({ length: 12 }))
    expect(sunToldBy(bare.climate.months)).toContain('between minimum and maximum')
  })

  it('figures copied from a column are read, words are not', () => {
    expect(readColumn('1.5\n2,5\r\n\u22123')).toEqual([1.5, 2.5, -3])
    expect([readColumn('7'), readColumn('1 two')]).toEqual([[], []])
  })

  it('a column counts once it is whole; until then it is held, and said to be short', async () => {
    const store = usePlanStore()
    const start = after(setColumn(plan, 'sunshineHours', Array.from({ length: 12 })))
    store.open(start)
    const desk = mount(ClimateMonths, { props: { plan: start } })
    const cell = (month: string) =>
      desk.find<HTMLInputElement>(`[aria-label="${month}: Bright sunshine, h a day"]`)
    await cell('January').setValue('1.5')
    expect(desk.text()).toContain('1 of 12 months. It counts once all twelve are given.')
    expect([store.undoes, cell('January').element.value]).toEqual([undefined, '1.5'])
    const clipboardData = { getData: () => twelve.slice(1).join('\n') }
    await cell('February').trigger('paste', { clipboardData })
    expect(store.plan?.climate.months.map(({ sunshineHours }) => sunshineHours)).toEqual([
      1.5,
      ...twelve.slice(1),
    ])
    await desk.setProps({ plan: store.plan ?? start })
    expect(desk.text()).not.toContain('of 12 months')
    expect(desk.text()).toContain('told by the hours of bright sunshine')
    await desk.find('[aria-label="Clear the column Bright sunshine, h a day"]').trigger('click')
    expect(store.plan?.climate.months[0]?.sunshineHours).toBeUndefined()
    store.undo()
    expect(store.plan?.climate.months[0]?.sunshineHours).toBe(1.5)
  })
})

describe('the time zone', () => {
  it('is chosen, taken from the device, or left to the sun', async () => {
    const field = mount(TimeZoneField, { props: { id: 'z', value: 'Europe/London' } })
    expect(field.find<HTMLSelectElement>('select').element.value).toBe('Europe/London')
    await field.find('select').setValue('')
    await field.setProps({ value: undefined })
    await nextTick()
    expect(field.text()).toContain('Times are told by the sun')
    await field.find('button').trigger('click')
    expect(field.emitted('change')).toEqual([
      [undefined],
      [new Intl.DateTimeFormat().resolvedOptions().timeZone],
    ])
  })
})
