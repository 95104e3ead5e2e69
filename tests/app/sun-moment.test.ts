// @vitest-environment happy-dom
import { mount } from '@vue/test-utils'
import { createPinia, setActivePinia } from 'pinia'
import { effectScope, nextTick, ref } from 'vue'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { directionTo } from '#core/sun'
import { dateOf, dayWords, timeWords } from '#report'
import { litAreas, squaresOf, withoutTurnedAway } from '../../src/app/composables/momentLight'
import { useSaid } from '../../src/app/composables/useSaid'
import { useSunMoment } from '../../src/app/composables/useSunMoment'
import { useSunPlay } from '../../src/app/composables/useSunPlay'
import { dayMarks, monthMarks } from '../../src/app/drawing/moment-marks'
import { darkWords } from '../../src/app/drawing/dark-words'
import { dayOf, monthsOn, namedDays } from '../../src/app/drawing/year-days'
import LightSlider from '../../src/app/components/sun/LightSlider.vue'
import MomentControls from '../../src/app/components/sun/MomentControls.vue'
import { useSheetStore } from '../../src/app/stores/sheet'
import { demoPlan } from './demo-plan'

describe('days of the year', () => {
  it.each([
    [1, '1 January'],
    [59, '28 February'],
    [60, '1 March'],
    [172, '21 June'],
    [266, '23 September'],
    [355, '21 December'],
    [365, '31 December'],
  ])('Gregorian calendar, no leap day: day %i is %s', (day, words) => {
    expect(dayWords(day)).toBe(words)
    const { month, day: ofMonth } = dateOf(day)
    expect(dayOf(month, ofMonth)).toBe(day)
  })

  it('a month on from 31 January is the last of February, and the ends of the year hold', () => {
    expect(dayWords(monthsOn(31, 1))).toBe('28 February')
    expect([monthsOn(10, -1), monthsOn(360, 1)]).toEqual([1, 365])
  })

  it('midsummer turns round in the south', () => {
    const named = (latitudeDeg: number) =>
      namedDays(latitudeDeg).map(({ name, dayOfYear }) => `${name}: ${dayWords(dayOfYear)}`)
    expect(named(51)[0]).toBe('midsummer: 21 June')
    expect(named(-33)[0]).toBe('midsummer: 21 December')
    expect(named(-33)[2]).toBe('midwinter: 21 June')
  })

  it('hours are told in hours and minutes', () => {
    expect([6, 14.3333, 23.9999].map(timeWords)).toEqual(['06:00', '14:20', '24:00'])
  })

  it('marks stand where months begin and at every third hour', () => {
    expect(monthMarks.map(({ text }) => text).join(' ')).toBe(
      'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec',
    )
    expect(dayMarks({ fromH: 6, toH: 18 })).toEqual(
      [0, 0.25, 0.5, 0.75, 1].map((at, step) => ({ at, text: String(6 + 3 * step) })),
    )
  })
})

describe('light on the ground', () => {
  it('exact: a slope of 30° facing north has its back to a southern sun below 30°', () => {
    const squares = squaresOf({
      slopeDeg: Float64Array.of(30, 30, 0),
      aspectDeg: Float64Array.of(0, 180, -1),
    })
    const lightAt = (altitudeDeg: number) => {
      const light = Float32Array.of(1, 1, 1)
      withoutTurnedAway(light, squares, directionTo(180, altitudeDeg))
      return [...light]
    }
    expect(lightAt(29.9)).toEqual([0, 1, 1])
    expect(lightAt(30.1)).toEqual([1, 1, 1])
  })

  it('exact: areas are shares of cells times their size, each in one class', () => {
    const areas = litAreas(Float32Array.of(1, 0.03, 0, 0.45, 1), Float64Array.of(1, 1, 0.5, 1, 0), 2)
    expect(areas).toEqual({ sunM2: 4, throughM2: 8, shadeM2: 2 })
  })
})

describe('the moment', () => {
  beforeEach(() => setActivePinia(createPinia()))
  function momentAt(latitudeDeg: number, timeZone?: string) {
    const plan = demoPlan()
    const site = { ...plan.site, latitudeDeg, longitudeDeg: 0, ...(timeZone ? { timeZone } : {}) }
    const scope = effectScope()
    const moment = scope.run(() => useSunMoment(() => ({ ...plan, site })))
    if (!moment) throw new Error('not set up')
    return moment
  }

  it('exact: on the equator the sun stands due north at noon of midsummer, 66.6° up', () => {
    const moment = momentAt(0)
    moment.store.turnToDay(172)
    moment.store.wishedHour = 12
    expect(moment.stands.value.azimuthDeg).toBeCloseTo(0, 5)
    expect(moment.stands.value.altitudeDeg).toBeCloseTo(90 - 23.44, 1)
    expect(moment.sunText.value).toBe('The sun stands in the north, 67° up.')
  })

  it('stays within the day, and comes back to the time that was wished for', () => {
    const moment = momentAt(51.5)
    moment.store.wishedHour = 19
    moment.store.turnToDay(355)
    expect(moment.hour.value).toBeLessThan(16.5)
    expect(moment.hour.value).toBe(moment.spanH.value?.toH)
    moment.store.turnToDay(172)
    expect(moment.hour.value).toBe(19)
  })

  it('in polar night there is no time to choose, and words say so', () => {
    const moment = momentAt(80)
    moment.store.turnToDay(355)
    expect(moment.spanH.value).toBeUndefined()
    expect(moment.sunDeg.value).toBeUndefined()
    expect(moment.sunText.value).toBe('The sun does not rise on 21 December.')
    moment.store.turnToDay(172)
    expect(moment.spanH.value).toEqual({ fromH: 0, toH: 24 })
    expect(moment.riseText.value).toBe('The sun does not set on this day.')
  })

  it('equation of time, from memory: at Greenwich on 3 November the sun is highest at 11:44, and on 21 June an hour later on the clock', () => {
    const moment = momentAt(51.48, 'Europe/London')
    moment.store.turnToDay(307)
    expect(moment.byClock(12)).toBe('11:44')
    moment.store.turnToDay(172)
    expect(moment.byClock(12)).toBe('13:02')
    moment.store.wishedHour = 12
    expect(moment.timeText.value).toBe('12:00 by the sun, 13:02 by the clock')
  })

  it('a time zone that nobody knows is told, and times stay by the sun', () => {
    const moment = momentAt(51.48, 'Europe/Nowhere')
    expect(moment.byClock(12)).toBeUndefined()
    expect(moment.clock.value.trouble).toContain('Europe/Nowhere')
  })

  it('another plan has no place of the one before, but the same day and time', () => {
    const { store } = momentAt(51)
    store.turnToDay(100)
    store.wishedHour = 9
    store.place = { eastM: 1, northM: 2 }
    store.clear()
    expect([store.place, store.dayOfYear, store.wishedHour]).toEqual([undefined, 100, 9])
  })

  it('the month on the sheet and the day go together', async () => {
    const moment = momentAt(51)
    const sheet = useSheetStore()
    moment.store.turnToDay(355)
    expect(sheet.month).toBe(11)
    sheet.month = 5
    await nextTick()
    expect(moment.store.dayOfYear).toBe(162)
  })
})

describe('the day played through', () => {
  let frames: FrameRequestCallback[] = []
  let now = 0
  beforeEach(() => {
    frames = []
    now = 0
    vi.stubGlobal('requestAnimationFrame', (frame: FrameRequestCallback) => frames.push(frame))
    vi.stubGlobal('cancelAnimationFrame', () => (frames = []))
    vi.spyOn(performance, 'now').mockImplementation(() => now)
  })
  afterEach(() => {
    vi.unstubAllGlobals()
    vi.restoreAllMocks()
  })

  function played(coarse = false) {
    const [hour, playing] = [ref(15), ref(false)]
    const scope = effectScope()
    const play = scope.run(() =>
      useSunPlay({
        spanH: () => ({ fromH: 6, toH: 18 }),
        hour: () => hour.value,
        turnTo: (to) => (hour.value = to),
        isPlaying: () => playing.value,
        setPlaying: (on) => (playing.value = on),
        coarse: () => coarse,
      }),
    )
    if (!play) throw new Error('not set up')
    /** So many frames go by. */
    const run = (count: number, everyMs: number) => {
      for (let frame = 0; frame < count; frame += 1) {
        now += everyMs
        frames.splice(0).forEach((each) => each(now))
      }
    }
    return { hour, playing, play, run, scope }
  }

  it('takes eight seconds for the whole day and stops at sunset', () => {
    const { hour, playing, play, run } = played()
    hour.value = 18
    play.play()
    expect(hour.value).toBe(6)
    run(250, 16)
    expect(hour.value).toBeCloseTo(12, 5)
    run(260, 16)
    expect([hour.value, playing.value, frames.length]).toEqual([18, false, 0])
  })

  it('waits where it is paused, and does not jump after the page was left alone', () => {
    const { hour, playing, play, run } = played()
    play.play()
    run(1, 60_000)
    expect(hour.value).toBeLessThan(15.2)
    play.pause()
    const at = hour.value
    run(10, 16)
    expect([hour.value, playing.value]).toEqual([at, false])
  })

  it('on a large site goes on by half hours', () => {
    const { hour, play, run } = played(true)
    play.play()
    run(31, 16)
    expect(hour.value).toBe(15)
    run(1, 16)
    expect(hour.value).toBe(15.5)
  })

  it('ends with the page', () => {
    const { playing, play, scope } = played()
    play.play()
    scope.stop()
    expect(playing.value).toBe(false)
  })
})

describe('what is said aloud', () => {
  beforeEach(() => void vi.useFakeTimers())
  afterEach(() => void vi.useRealTimers())

  it('only words that last, and none while the day plays', async () => {
    const [words, moving] = [ref('one'), ref(false)]
    const scope = effectScope()
    const said = scope.run(() =>
      useSaid(
        () => words.value,
        () => moving.value,
      ),
    )
    for (const next of ['two', 'three']) {
      words.value = next
      await nextTick()
      vi.advanceTimersByTime(300)
    }
    expect(said?.value).toBe('')
    vi.advanceTimersByTime(700)
    expect(said?.value).toBe('three')
    moving.value = true
    words.value = 'four'
    await nextTick()
    vi.advanceTimersByTime(5000)
    expect(said?.value).toBe('three')
    moving.value = false
    await nextTick()
    vi.advanceTimersByTime(700)
    expect(said?.value).toBe('four')
  })
})

describe('the sliders', () => {
  const slider = () =>
    mount(LightSlider, {
      props: {
        id: 'day',
        label: 'Day',
        reading: '21 June',
        value: 172,
        least: 1,
        most: 365,
        step: 1,
        marks: monthMarks,
        page: (by: 1 | -1) => monthsOn(172, by),
      },
    })

  it('say where they stand, and tell where they are moved to', async () => {
    const box = slider()
    expect(box.find('input').attributes('aria-valuetext')).toBe('21 June')
    await box.find('input').setValue(200)
    expect(box.emitted('move')).toEqual([[200]])
  })

  it('page keys take a month', async () => {
    const box = slider()
    await box.find('input').trigger('keydown', { key: 'PageUp' })
    await box.find('input').trigger('keydown', { key: 'PageDown' })
    expect(
      box
        .emitted('move')
        ?.flat()
        .map((day) => dayWords(Number(day))),
    ).toEqual(['21 July', '21 May'])
  })

  const controls = (more: object) =>
    mount(MomentControls, {
      props: {
        dayOfYear: 172,
        hour: 12,
        spanH: { fromH: 4, toH: 20 },
        latitudeDeg: 51,
        timeText: '12:00 by the sun',
        riseText: 'Up from 04:00 to 20:00 by the sun, over an open horizon.',
        playing: false,
        still: false,
        ...more,
      },
    })

  it('days of their own name are pressed', async () => {
    const box = controls({})
    expect(box.find('[aria-pressed=true]').text()).toBe('midsummer')
    const midwinter = box.findAll('button').find((each) => each.text() === 'midwinter')
    await midwinter?.trigger('click')
    expect(box.emitted('day')).toEqual([[355]])
  })

  it('under reduced motion the day goes on by the hour', async () => {
    const box = controls({ still: true })
    await box.find('.press').trigger('click')
    expect([box.find('.press').text(), box.emitted('hour')]).toEqual(['An hour on', [[13]]])
    await box.setProps({ hour: 20 })
    await box.find('.press').trigger('click')
    expect([box.find('.press').text(), box.emitted('hour')?.[1]]).toEqual(['Back to sunrise', [4]])
  })

  it('without a sunrise there is nothing to play', () => {
    const box = controls({ spanH: undefined, riseText: 'The sun does not rise on 21 December.' })
    expect(box.text()).toContain('The sun does not rise on 21 December.')
    expect(box.find('#moment-time').exists()).toBe(false)
    expect(box.find('.press').attributes('disabled')).toBeDefined()
  })
})

describe('a place in words', () => {
  it('winter darkness is told by its last and first day', () => {
    expect(darkWords({ kind: 'spell', lastDay: 309, firstDay: 37, days: 92 })).toBe(
      'The sun leaves after 5 November and is back on 6 February: 92\u00A0days without direct sun.',
    )
    expect([darkWords({ kind: 'none' }), darkWords({ kind: 'always' })]).toEqual([
      'It has some direct sun on every clear day of the year.',
      'No direct sun comes here on any day of the year.',
    ])
  })
})
