// @vitest-environment happy-dom
import { mount } from '@vue/test-utils'
import { createPinia, setActivePinia } from 'pinia'
import { effectScope, nextTick, shallowRef } from 'vue'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { loadTables } from '#io'
import { createDeriver, type Findings, type Plan } from '#plan'
import { planScale, planView } from '#report'
import { usePlanReading } from '../../src/app/composables/usePlanReading'
import { useMomentLight } from '../../src/app/composables/useMomentLight'
import { usePickedSun } from '../../src/app/composables/usePickedSun'
import { useSunMoment } from '../../src/app/composables/useSunMoment'
import { placeOnSection, useSunPlace } from '../../src/app/composables/useSunPlace'
import { zoneSunRows } from '../../src/app/composables/zoneSunRows'
import { laidOver, placeUnder, sunAtEdge } from '../../src/app/drawing/plan-laid'
import ShadowPlan from '../../src/app/components/sun/ShadowPlan.vue'
import ZoneEnergyTable from '../../src/app/components/sun/ZoneEnergyTable.vue'
import { useSheetStore } from '../../src/app/stores/sheet'
import SunMargin from '../../src/app/views/margin/SunMargin.vue'
import SunTrialsPane from '../../src/app/views/sheet/SunTrialsPane.vue'
import { demoPlan } from './demo-plan'

const tables = loadTables()
const deriver = createDeriver(tables)

function derived(plan: Plan): Findings {
  const outcome = deriver.derive(plan)
  if (!outcome.ok) throw new Error('not derived')
  return outcome.value
}

const garden = demoPlan('garden-falling-to-the-house')
const findings = derived(garden)

/** A composable within a scope of its own. */
function within<T>(make: () => T): T {
  const made = effectScope().run(make)
  if (made === undefined) throw new Error('not set up')
  return made
}

beforeEach(() => setActivePinia(createPinia()))

describe('a plan on the screen', () => {
  const scale = planScale(planView(garden, findings), { widthPx: 300, heightPx: 400 }, true)

  it('exact: what is under a place of the drawing is the place that is drawn there', () => {
    for (const place of [
      { eastM: 0.25, northM: 1 },
      { eastM: 12.25, northM: 30.5 },
      { eastM: -7.5, northM: 3 },
    ])
      expect(placeUnder(scale, scale.at(place))).toEqual(place)
  })

  it('exact: the corners of a picture of the cells lie on the corners of the ground', () => {
    const { westM, southM, columns, rows, cellM } = findings.surface.frame
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = laidOver(scale, findings.surface.frame)
      .slice('matrix('.length, -1)
      .split(', ')
      .map(Number)
    const corner = scale.at({ eastM: westM + columns * cellM, northM: southM })
    expect(a * columns + c * rows + e).toBeCloseTo(corner.xPx, 6)
    expect(b * columns + d * rows + f).toBeCloseTo(corner.yPx, 6)
  })

  it.each([
    [0, 150, 13],
    [90, 287, 200],
    [180, 150, 387],
    [270, 13, 200],
  ])('exact: the sun in %i° stands at the edge, at %i, %i', (turnedDeg, xPx, yPx) => {
    const at = sunAtEdge(turnedDeg, { leftPx: 0, rightPx: 300, topPx: 0, bottomPx: 400 })
    expect([at.xPx, at.yPx]).toEqual([expect.closeTo(xPx, 6), expect.closeTo(yPx, 6)])
  })
})

describe('light of a moment', () => {
  beforeEach(() => void vi.useFakeTimers())
  afterEach(() => void vi.useRealTimers())

  function lit(of: Findings) {
    const moment = useSunMoment(() => garden)
    moment.store.turnToDay(172)
    moment.store.wishedHour = 12
    return {
      moment,
      shown: useMomentLight(
        () => ({ plan: garden, findings: of }),
        moment,
        () => true,
      ),
    }
  }

  it('adds up to the plot, and the sun leaves ground as it sinks', async () => {
    const { moment, shown } = within(() => lit(findings))
    const areas = shown.light.value?.areas
    const plotM2 = findings.zoning.zones.reduce((sum, { planAreaM2 }) => sum + planAreaM2, 0)
    expect((areas?.sunM2 ?? 0) + (areas?.throughM2 ?? 0) + (areas?.shadeM2 ?? 0)).toBeCloseTo(plotM2, 0)
    moment.store.wishedHour = 19.5
    await nextTick()
    expect(shown.light.value?.areas.sunM2).toBeLessThan(areas?.sunM2 ?? 0)
    expect([shown.late.value, shown.coarse.value]).toEqual([false, false])
  })

  it('on a large site waits until the slider rests', async () => {
    const { surface, terrain } = findings
    const cells = 201 * 200
    const flat = {
      ...findings,
      terrain: { ...terrain, slopeDeg: new Float64Array(cells), aspectDeg: new Float64Array(cells).fill(-1) },
      surface: {
        ...surface,
        frame: { ...surface.frame, columns: 201, rows: 200 },
        share: new Float64Array(cells).fill(1),
        levelM: new Float64Array(cells),
      },
    }
    const { moment, shown } = within(() => lit(flat))
    const before = shown.light.value
    moment.store.wishedHour = 9
    await nextTick()
    expect([shown.coarse.value, shown.late.value, shown.light.value === before]).toEqual([true, true, true])
    vi.advanceTimersByTime(200)
    expect([shown.late.value, shown.light.value === before]).toEqual([false, false])
  })

  it('is not worked out while nobody looks', () => {
    const shown = within(() => {
      const moment = useSunMoment(() => garden)
      return useMomentLight(
        () => ({ plan: garden, findings }),
        moment,
        () => false,
      )
    })
    expect(shown.light.value).toBeUndefined()
  })
})

describe('the place that is looked from', () => {
  const place = () =>
    within(() =>
      useSunPlace(
        () => garden,
        () => findings,
      ),
    )

  it('off the plot has no sky, and where the rod stands it has one with a class and a winter', () => {
    const at = place()
    at.store.place = { eastM: 500, northM: 0 }
    expect(at.sky.value).toBeUndefined()
    useSheetStore().rodM = 10
    at.toRod()
    expect(at.store.place).toEqual(placeOnSection(findings, 10))
    expect(at.sky.value?.things.map(({ name }) => name)).toContain('House')
    expect(tables.shade.lightClasses).toContainEqual(at.lightClass.value)
    expect(['none', 'spell', 'always']).toContain(at.dark.value?.kind)
  })

  it('is the middle of the picked zone until it is touched', () => {
    const at = place()
    useSheetStore().zoneId = findings.zoning.zones[1]?.id
    expect(at.place.value).toEqual(findings.zoneSun[1]?.middle)
    at.store.place = { eastM: 8, northM: 20 }
    expect([at.place.value, at.name.value]).toEqual([
      { eastM: 8, northM: 20 },
      'the place 8 m east, 20 m north',
    ])
    at.toMiddle()
    expect(at.name.value).toBe(
      `the middle of ${findings.zoning.zones[1]?.letter}, ${findings.zoning.zones[1]?.name}`,
    )
    expect(at.sky.value).toBeDefined()
  })

  it('on the plan it is touched, and moved by arrow keys', async () => {
    const view = planView(garden, findings)
    const { frame, share } = findings.surface
    const box = mount(ShadowPlan, {
      props: {
        view,
        lit: { frame, share, light: new Float32Array(share.length) },
        widthPx: 300,
        heightPx: 400,
        toSlope: false,
        sunDeg: 180,
        place: { eastM: 8, northM: 20 },
        cursorM: undefined,
        selectedZone: undefined,
        touches: true,
      },
    })
    const button = box.find('button')
    await button.trigger('keydown', { key: 'ArrowUp' })
    await button.trigger('keydown', { key: 'ArrowLeft', shiftKey: true })
    await button.trigger('click', { detail: 0 })
    expect(box.emitted('touch')).toEqual([[{ eastM: 8, northM: 20.5 }], [{ eastM: 3, northM: 20 }]])
  })
})

describe('the sun zone by zone', () => {
  it('a metre of plan gets more than a metre of slope, by the slope of the zone', () => {
    for (const row of zoneSunRows(findings, 5, tables.shade.lightClasses)) {
      const zone = findings.zoning.zones.find(({ id }) => id === row.zoneId)
      const ratio = (zone?.slopeAreaM2 ?? 0) / (zone?.planAreaM2 ?? 1)
      expect(row.planWhPerM2 / row.slopeWhPerM2).toBeGreaterThan(1)
      // Two means of products: alike where a zone is even.
      expect(row.planWhPerM2 / row.slopeWhPerM2 / ratio).toBeCloseTo(1, 1)
    }
  })

  it('morning and afternoon add up to the day in every line of the margin', () => {
    const box = mount(SunMargin, { props: { plan: garden, findings } })
    const lines = box.findAll('table')[0]?.findAll('tbody tr') ?? []
    expect(lines).toHaveLength(findings.zoning.zones.length + 1)
    for (const line of lines) {
      const [all, morning, afternoon] = line.findAll('td').map((cell) => parseFloat(cell.text()))
      expect(Math.abs((morning ?? 0) + (afternoon ?? 0) - (all ?? 0))).toBeLessThan(0.11)
    }
    expect(box.text()).toContain('MJ/cm²')
    expect(box.text()).toContain('common practice')
  })

  it('the level book of a zone is asked for by its class', async () => {
    const box = mount(SunMargin, { props: { plan: garden, findings } })
    await box.find('.asks-why').trigger('click')
    expect(useSheetStore().asked).toEqual({ zoneId: findings.zoning.zones[0]?.id, about: 'sun' })
  })

  it('slope and plan are never one column', () => {
    const heads = mount(ZoneEnergyTable, { props: { month: 'June', rows: [], openWhPerM2: 5000 } })
      .findAll('thead th')
      .map((head) => head.text())
    expect(heads).toEqual(['Zone', 'a m² of slope', 'a m² of plan', 'season'])
  })

  it('what is drawn is the picked zone, else the first', () => {
    const picked = within(() => usePickedSun(() => findings))
    expect(picked.zone.value?.id).toBe(findings.zoning.zones[0]?.id)
    useSheetStore().zoneId = findings.zoning.zones[2]?.id
    expect([picked.zone.value?.id, picked.zoneSun.value]).toEqual([
      findings.zoning.zones[2]?.id,
      findings.zoneSun[2],
    ])
  })
})

describe('the plan shaded by the sun', () => {
  it('the twelve months are one choice, and the month on the sheet says which', () => {
    const reading = within(() =>
      usePlanReading(
        () => garden,
        () => findings,
      ),
    )
    const sun = reading.shadings.value.find(({ name }) => name === 'the sun')?.choices ?? []
    expect(sun.filter(({ name }) => name.includes('clear day'))).toHaveLength(1)
    const sheet = useSheetStore()
    reading.shadeBy('sun-month')
    sheet.month = 5
    expect([reading.byMonth.value, reading.shade.value?.name]).toEqual([
      true,
      'direct sun on a clear day in June',
    ])
    sheet.month = 11
    expect(reading.shade.value?.name).toBe('direct sun on a clear day in December')
  })
})

describe('trials', () => {
  it('lead to the field book, and are compared one at a time', async () => {
    const box = mount(SunTrialsPane, { props: { plan: garden, findings } })
    expect(box.findAll('input[type=radio]')).toHaveLength(findings.trials.length)
    await box.find('input[type=radio]').trigger('change')
    expect(box.text()).toContain(findings.trials[0]?.changes[0])
    await box.find('.word.link').trigger('click')
    expect(useSheetStore().desk).toBe('trials')
  })

  it('without one there is only the way to try', () => {
    const shown = shallowRef({ ...findings, trials: [] })
    const box = mount(SunTrialsPane, { props: { plan: garden, findings: shown.value } })
    expect(box.find('svg').exists()).toBe(false)
    expect(box.text()).toContain('Try a change')
  })
})
