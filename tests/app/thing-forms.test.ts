// @vitest-environment happy-dom
import { mount } from '@vue/test-utils'
import { createPinia, setActivePinia } from 'pinia'
import { beforeEach, describe, expect, it } from 'vitest'
import { pointInRing } from '#core/geometry'
import { loadTables } from '#io'
import { eachMonth } from '#core/units'
import { createDeriver, openPlan, type Findings, type Obstacle, type Plan } from '#plan'
import { letterPlaces } from '../../src/app/components/plan/letter-places'
import HeightByAngles from '../../src/app/components/HeightByAngles.vue'
import LeafMonths from '../../src/app/components/LeafMonths.vue'
import { thingElevation } from '../../src/app/drawing/thing-elevation'
import { thingsSubject } from '../../src/app/edits/around-subjects'
import { heightByAngles } from '../../src/app/edits/height-by-angles'
import { addThing } from '../../src/app/edits/things'
import { usualFigures } from '../../src/app/edits/usual-figures'
import { usualRows } from '../../src/app/edits/usual-rows'
import { setHeight, takeUsualSize, USUAL_NOTE, usualSizes } from '../../src/app/edits/usual-sizes'
import { usePlanStore } from '../../src/app/stores/plan'
import { useSheetStore } from '../../src/app/stores/sheet'
import ThingForm from '../../src/app/views/desk/ThingForm.vue'
import { thingMeasures } from '../../src/app/views/desk/thing-measures'
import { bringsWords } from '../../src/app/views/desk/trial-brings'
import TrialsEditor from '../../src/app/views/desk/TrialsEditor.vue'
import { demoPlan } from './demo-plan'

beforeEach(() => setActivePinia(createPinia()))

const tables = loadTables()
const { shade, sources } = tables

/** Findings of the demo, to be given other zones and trials. */
const derived = createDeriver(tables).derive(demoPlan())
if (!derived.ok) throw new Error(derived.problems.map(({ what }) => what).join(' '))
const real: Findings = derived.value

const at = (eastM: number, northM: number) => ({ eastM, northM })
const thing = (kind: Obstacle['kind'], more: Partial<Obstacle> = {}): Obstacle => ({
  id: 'one',
  kind,
  name: 'One',
  ring: [at(3, 3)],
  ...more,
})
const form = (of: Obstacle, offPlot = false) =>
  mount(ThingForm, {
    props: { thing: of, usual: usualFigures(of, shade, 52), offPlot, open: false },
  })
const labels = (of: Obstacle, offPlot = false) =>
  form(of, offPlot)
    .findAll('.thing-body > .rows-form > .field > label')
    .map((label) => label.text())
const withThings = (...things: Obstacle[]): Plan => {
  const plan = demoPlan()
  return { ...plan, trials: [], survey: { ...plan.survey, obstacles: things } }
}
function after(outcome: ReturnType<typeof addThing>): Plan {
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  const opened = openPlan(JSON.stringify(outcome.value))
  if (!opened.ok) throw new Error(opened.problems.map(({ where, what }) => `${where}: ${what}`).join(' '))
  return opened.value
}

describe('the form of a thing', () => {
  it.each([
    ['house', ['Name', 'It is a', 'Eaves above the ground', 'Ridge above the ground', 'Notes']],
    ['wall', ['Name', 'It is a', 'Height above the ground', 'Notes']],
    ['fence', ['Name', 'It is a', 'Height above the ground', 'Light through its gaps', 'Notes']],
    ['path', ['Name', 'It is a', 'Notes']],
  ] as const)('asks of a %s only what a %s has', (kind, asked) => {
    expect(labels(thing(kind))).toEqual(asked)
  })

  it('asks for the months in leaf and the bare branches only of what drops its leaves', () => {
    const bare = 'Light through bare branches'
    expect(labels(thing('tree'))).toContain(bare)
    expect(labels(thing('tree', { leaf: 'evergreen' }))).not.toContain(bare)
    expect(labels(thing('hedge'))).not.toContain(bare)
    expect(labels(thing('hedge', { leaf: 'deciduous' }))).toContain('In full leaf from')
  })

  it('asks for the level of its foot only where it stands off the plot', () => {
    const foot = 'Level of the ground at its foot'
    expect(labels(thing('wall'))).not.toContain(foot)
    expect(labels(thing('wall'), true)).toContain(foot)
    expect(labels(thing('wall', { groundM: 12 }))).toContain(foot)
  })

  it('tells shares as per cent, and what is taken when left empty', async () => {
    const tree = form(thing('tree', { heightM: 10, bareLight: 0.5 }))
    expect(tree.find<HTMLInputElement>('#one-bareLight').element.value).toBe('50')
    await tree.find('#one-leafyLight').setValue('12')
    expect(tree.emitted('change')).toEqual([['change the light through', { leafyLight: 0.12 }]])
    expect(tree.find('#one-leafyLight-says').text()).toMatch(/^Empty: \d+ %, as usual\.$/)
    expect(tree.find('#one-crownWidthM-says').text()).toMatch(/^Empty: [\d.]+ m, as usual\.$/)
  })

  it('takes no height by itself, and offers usual ones with their figures', async () => {
    const tree = form(thing('tree'))
    expect(tree.find('.thing-sketch').exists()).toBe(false)
    const offered = tree.findAll('.usual-sizes button')
    expect(offered.map((each) => each.text())).toContain('small garden tree, 5 m')
    await offered[0]?.trigger('click')
    expect(tree.emitted('size')).toEqual([[usualSizes({ kind: 'tree' })[0]]])
    expect(
      form(thing('tree', { heightM: 5 }))
        .find('.usual-sizes')
        .exists(),
    ).toBe(false)
  })

  it('works a height out by two angles and takes it', async () => {
    const box = mount(HeightByAngles, {
      props: { id: 'h', steepestDeg: 75, heightOf: heightByAngles },
    })
    for (const [field, value] of [
      ['#h-away', '10'],
      ['#h-top', '45'],
      ['#h-foot', '-45'],
    ] as const)
      await box.find(field).setValue(value)
    expect(box.find('button').text()).toBe('Take 20 m')
    await box.find('button').trigger('click')
    expect(box.emitted('take')).toEqual([[20]])
    await box.find('#h-top').setValue('-50')
    expect(box.text()).toContain('Its top must stand above its foot.')
  })

  it('a month of one end takes the usual month of the other', async () => {
    const box = mount(LeafMonths, { props: { id: 'l', value: undefined, usual: { from: 5, to: 10 } } })
    await box.find('#l-from').setValue('4')
    await box.setProps({ value: { from: 4, to: 10 } })
    await box.find('#l-to').setValue('')
    expect(box.emitted('change')).toEqual([[{ from: 4, to: 10 }], [undefined]])
  })
})

describe('heights by angles (by construction: right-angled triangles)', () => {
  it.each([
    [10, 45, 0, 10],
    [10, 45, -45, 20],
    [12, 26.565051, 0, 6],
    [10, 45, 26.565051, 5],
    [10, 0, 5, undefined],
  ])('%d m away, %d° up and %d° to the foot', (awayM, topDeg, footDeg, heightM) => {
    expect(heightByAngles(awayM, topDeg, footDeg)).toBe(heightM)
  })
})

describe('usual figures', () => {
  it('come from the table', () => {
    const tree = usualFigures(thing('tree', { heightM: 10 }), shade, 52)
    const row = shade.things.light.find(({ kind, leaf }) => kind === 'tree' && leaf === 'deciduous')
    expect(tree.leafyLight).toBe(row?.leafyLight)
    expect(tree.crownWidthM).toBeCloseTo(10 * shade.things.crown.widthShare, 6)
    expect(usualFigures(thing('tree'), shade, 52).crownWidthM).toBeUndefined()
    expect(usualFigures(thing('wall'), shade, 52).leafyLight).toBe(0)
    expect(usualFigures(thing('path'), shade, 52)).toMatchObject({ leaf: undefined, leafyLight: undefined })
  })

  it('leaves come half a year later south of the equator', () => {
    const { from, to } = shade.things.leafMonths
    expect(usualFigures(thing('tree'), shade, 52).leafMonths).toEqual({ from, to })
    const turned = (month: number) => ((month + 5) % 12) + 1
    expect(usualFigures(thing('tree'), shade, -38).leafMonths).toEqual({
      from: turned(from),
      to: turned(to),
    })
  })

  it('are told with their sources', () => {
    const rows = usualRows(shade)
    expect(rows).toHaveLength(8)
    const [pine] = rows.filter(({ what }) => what === 'Tree that keeps its leaves')
    const held = shade.things.light.find(({ kind, leaf }) => kind === 'tree' && leaf === 'evergreen')
    expect(pine?.figures).toBe(`${(held?.leafyLight ?? 0) * 100} % of direct light comes through`)
    expect(rows.every(({ source }) => source in sources)).toBe(true)
  })

  it('a usual size is noted as one until the height is measured', () => {
    const [small] = usualSizes({ kind: 'tree' })
    if (!small) throw new Error('no usual tree')
    const taken = after(takeUsualSize(withThings(thing('tree')), 'one', small))
    expect(taken.survey.obstacles[0]).toMatchObject({ heightM: small.heightM, note: USUAL_NOTE })
    const measured = after(setHeight(taken, 'one', 6.4))
    expect(measured.survey.obstacles[0]).toMatchObject({ heightM: 6.4 })
    expect(measured.survey.obstacles[0]?.note).toBeUndefined()
    const noted = after(takeUsualSize(withThings(thing('tree', { note: 'an ash' })), 'one', small))
    expect(noted.survey.obstacles[0]?.note).toBe('an ash')
  })

  it('a tree put down has no height', () => {
    expect(after(addThing(withThings(), 'tree', [at(1, 1)])).survey.obstacles[0]?.heightM).toBeUndefined()
    expect(
      after(addThing(withThings(), 'building', [at(0, 0), at(2, 0), at(2, 2)])).survey.obstacles[0]?.name,
    ).toBe('Building')
  })
})

describe('a thing as it stands', () => {
  const drawn = (of: Obstacle) => {
    const measures = thingMeasures(of, usualFigures(of, shade, 52))
    if (!measures) throw new Error('it does not stand')
    return { measures, ...thingElevation(measures) }
  }

  it('is true to scale (by construction: the rod beside it is 2 m)', () => {
    const tree = drawn(thing('tree', { heightM: 8, crownBaseM: 2, crownWidthM: 6 }))
    const rodPx = tree.rod.reduce((sum, band) => sum + band.heightPx, 0)
    const [fromPx, toPx] = [tree.across?.fromPx ?? 0, tree.across?.toPx ?? 0]
    expect((toPx - fromPx) / rodPx).toBeCloseTo(3, 6)
    expect((tree.groundPx - (tree.marks[0]?.yPx ?? 0)) / rodPx).toBeCloseTo(4, 6)
    expect(tree.marks.map(({ text }) => text)).toEqual(['8 m', 'branches 2 m'])
  })

  it('a house shows eaves and ridge, across the shorter of its sides', () => {
    const ring = [at(0, 0), at(10, 0), at(10, 7), at(0, 7)]
    const house = drawn(thing('house', { ring, heightM: 5, ridgeM: 8 }))
    expect(house.measures.widthM).toBe(7)
    expect(house.marks.map(({ text }) => text)).toEqual(['ridge 8 m', 'eaves 5 m'])
  })

  it('without a height there is nothing to draw', () => {
    const path = thing('path', { heightM: 2 })
    expect(thingMeasures(thing('tree'), usualFigures(thing('tree'), shade, 52))).toBeUndefined()
    expect(thingMeasures(path, usualFigures(path, shade, 52))).toBeUndefined()
  })
})

describe('things on the plan', () => {
  it('have the figures of their kind, and set them', () => {
    const plan = withThings(thing('tree', { heightM: 8 }), thing('path', { id: 'two' }))
    expect(thingsSubject.figures(plan, 'one', 0).map(({ key }) => key)).toEqual([
      'heightM',
      'crownBaseM',
      'crownWidthM',
    ])
    expect(thingsSubject.figures(plan, 'two', 0)).toEqual([])
    const wide = after(thingsSubject.setFigure(plan, { id: 'one', corner: 0, key: 'crownWidthM', value: 5 }))
    expect(wide.survey.obstacles[0]?.crownWidthM).toBe(5)
  })
})

describe('the page of trials', () => {
  const plan = withThings(
    thing('tree', { id: 'cherry', name: 'Cherry', heightM: 8 }),
    thing('fence', { id: 'fence', name: 'Fence', ring: [at(0, 0), at(4, 0)], heightM: 1.8 }),
  )
  const none: Findings = { ...real, trials: [], zoneSun: [], zoning: { ...real.zoning, zones: [] } }

  function page(start = plan) {
    const store = usePlanStore()
    store.open(start)
    const desk = mount(TrialsEditor, { props: { plan: start, findings: none } })
    const follow = () => (store.plan ? desk.setProps({ plan: store.plan }) : Promise.resolve())
    const press = (word: string) =>
      desk
        .findAll('button')
        .find((each) => each.text() === word)
        ?.trigger('click')
    return { desk, store, follow, press }
  }

  it('begins a trial by its form, makes it so in one step, and undoes that', async () => {
    const { desk, store, follow, press } = page()
    await desk.find('#new-trial-way').setValue('heightM')
    await desk.find('#new-trial-figure').setValue('5')
    await desk.find('form').trigger('submit')
    await follow()
    expect(store.plan?.trials?.[0]?.changes).toEqual([{ thingId: 'cherry', heightM: 5 }])
    expect(store.plan?.survey).toEqual(plan.survey)
    expect(desk.text()).toContain('Ask your local authority')
    await press('Make it so')
    await follow()
    expect(store.plan?.survey.obstacles[0]?.heightM).toBe(5)
    expect([store.plan?.trials, store.undoes]).toEqual([[], 'make it so: Cherry of another height'])
    store.undo()
    expect(store.plan?.survey.obstacles[0]?.heightM).toBe(8)
    expect(store.plan?.trials).toHaveLength(1)
  })

  it('offers what can be done to what is chosen, and begins with what was picked', async () => {
    useSheetStore().placed = { subject: 'things', id: 'fence' }
    const { desk } = page()
    expect(desk.find<HTMLSelectElement>('#new-trial-thing').element.value).toBe('fence')
    const ways = () => desk.findAll('#new-trial-way option').map((each) => each.attributes('value'))
    expect(ways()).toEqual(['gone', 'heightM', 'leafyLight'])
    await desk.find('#new-trial-thing').setValue('cherry')
    expect(ways()).toContain('crownBaseM')
  })

  it('refuses a trial without a figure in words', async () => {
    const { desk, store } = page()
    await desk.find('#new-trial-way').setValue('heightM')
    await desk.find('form').trigger('submit')
    expect(desk.find('[role=alert]').text()).toContain('No figure is given.')
    expect(store.plan?.trials).toEqual([])
  })

  it('with nothing that stands, leads to where things are put down', async () => {
    const { press } = page(withThings())
    await press('around the plot')
    expect(useSheetStore().desk).toBe('around')
  })
})

describe('what a trial brings', () => {
  const [zone] = real.zoning.zones
  const [zoneSun] = real.zoneSun
  const [trial] = real.trials
  if (!zone || !zoneSun || !trial) throw new Error('the demo has no zone or no trial')
  const sunOf = (june: number, december: number) => ({
    ...zoneSun,
    sunHours: eachMonth((month) => (month === 5 ? june : month === 11 ? december : 1)),
  })
  const trialOf = (sun: Findings['zoneSun']) => [{ ...trial, trialId: 't', zoneSun: sun }]
  const now = [sunOf(4, 0), sunOf(6, 2)]
  const findings: Findings = {
    ...real,
    zoning: {
      ...real.zoning,
      zones: [
        { ...zone, letter: 'A', name: 'Bank' },
        { ...zone, letter: 'B', name: 'Lawn' },
      ],
    },
    zoneSun: now,
    trials: trialOf([sunOf(5.5, 0), sunOf(6, 2)]),
  }

  it('is said of the zones that it changes, and nothing is made of nothing', () => {
    expect(bringsWords(findings, 't', 52)).toBe(
      'Direct sun on a clear day at midsummer: A (Bank) from 4.0 to 5.5 h.',
    )
    expect(bringsWords(findings, 't', -38)).toMatch(/at midwinter: A \(Bank\)/)
    expect(bringsWords(findings, 'other', 52)).toBe('Being worked out.')
    const same: Findings = { ...findings, trials: trialOf(now) }
    expect(bringsWords(same, 't', 52)).toMatch(/^No zone gains or loses/)
  })
})

describe('letters on the plan (by construction)', () => {
  const strip = (southM: number, northM: number) => [
    at(0, southM),
    at(40, southM),
    at(40, northM),
    at(0, northM),
  ]

  it('stand in the middle of their zones where these are clear of one another', () => {
    expect(letterPlaces([strip(0, 10), strip(10, 20)], 8)).toEqual([at(20, 5), at(20, 15)])
  })

  it('keep their distance inside narrow zones, and stay inside a bent one', () => {
    const places = letterPlaces([strip(0, 2), strip(2, 4), strip(4, 6)], 8)
    for (const [row, one] of places.entries()) {
      expect(pointInRing(one, strip(row * 2, row * 2 + 2))).toBe(true)
      for (const other of places.slice(row + 1))
        expect(Math.hypot(one.eastM - other.eastM, one.northM - other.northM)).toBeGreaterThanOrEqual(8)
    }
    const bent = [at(0, 0), at(10, 0), at(10, 1), at(1, 1), at(1, 10), at(0, 10)]
    expect(letterPlaces([bent], 1).every((place) => pointInRing(place, bent))).toBe(true)
  })
})
