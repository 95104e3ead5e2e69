// @vitest-environment happy-dom
import { mount } from '@vue/test-utils'
import { describe, expect, it, vi } from 'vitest'
import LevelTable from '../../src/app/components/LevelTable.vue'
import LineTable from '../../src/app/components/LineTable.vue'
import CornerTable from '../../src/app/components/CornerTable.vue'
import NumberField from '../../src/app/components/NumberField.vue'
import StationTable from '../../src/app/components/StationTable.vue'
import StepNumber from '../../src/app/components/StepNumber.vue'
import AnswerText from '../../src/app/components/sheet/AnswerText.vue'
import SheetHead from '../../src/app/components/sheet/SheetHead.vue'
import ColumnMapping from '../../src/app/components/start/ColumnMapping.vue'
import FirstFigures from '../../src/app/components/start/FirstFigures.vue'
import ObliqueBank from '../../src/app/components/start/ObliqueBank.vue'
import { questions } from '../../src/app/stores/sheet'

describe('a number field', () => {
  const field = () =>
    mount(NumberField, {
      props: { id: 'depth', label: 'Depth', value: 0.5, unit: 'm', least: 0.05, most: 5 },
    })

  it('tells figures within its range, with either decimal mark', async () => {
    const box = field()
    await box.find('input').setValue('1,25')
    expect(box.emitted('change')).toEqual([[1.25]])
  })

  it.each([
    ['9', 'At most 5 m.'],
    ['0', 'At least 0.05 m.'],
    ['deep', 'Write a plain number, such as 2.4.'],
    ['', 'A figure is needed here.'],
  ])('refuses “%s” in words and tells nothing', async (text, words) => {
    const box = field()
    await box.find('input').setValue(text)
    expect(box.find('small').text()).toBe(words)
    expect(box.find('input').attributes('aria-invalid')).toBe('true')
    expect(box.emitted('change')).toBeUndefined()
  })

  it('may be left empty when it is optional', async () => {
    const box = mount(NumberField, { props: { id: 'ph', label: 'Acidity', value: 6, optional: true } })
    await box.find('input').setValue('')
    expect(box.emitted('change')).toEqual([[undefined]])
  })
})

describe('a step number', () => {
  it('goes up and down by its step, never out of its range', async () => {
    const box = mount(StepNumber, {
      props: { id: 'n', label: 'Rise', value: 0.05, unit: 'm', step: 0.1, least: 0, most: 10 },
    })
    const [less, more] = box.findAll('button')
    await less?.trigger('click')
    await more?.trigger('click')
    expect(box.emitted('change')).toEqual([[0], [0.15]])
    expect(more?.attributes('aria-label')).toBe('Rise: more')
  })
})

describe('tables that can be edited', () => {
  const stations = [
    { distanceM: 0, levelM: 3 },
    { distanceM: 5, levelM: 1 },
  ]

  it('stations are changed, added below, and taken out', async () => {
    const table = mount(StationTable, { props: { stations } })
    await table.find('[aria-label="Level of station 2, in metres"]').setValue('1.4')
    await table.find('[aria-label="Take out station 1"]').trigger('click')
    await table.findAll('button').at(-1)?.trigger('click')
    expect(table.emitted('change')).toEqual([
      [[stations[0], { distanceM: 5, levelM: 1.4 }]],
      [[stations[1]]],
      [[...stations, { distanceM: 7, levelM: 1 }]],
    ])
  })

  it('a figure that is none is marked and not told', async () => {
    const table = mount(StationTable, { props: { stations } })
    const box = table.find('[aria-label="Level of station 2, in metres"]')
    await box.setValue('x')
    expect(box.attributes('aria-invalid')).toBe('true')
    expect(table.emitted('change')).toBeUndefined()
  })

  it('a new corner stands halfway, and no outline loses its last corners', async () => {
    const ring = [
      { eastM: 0, northM: 0 },
      { eastM: 4, northM: 0 },
      { eastM: 0, northM: 6 },
    ]
    const table = mount(CornerTable, { props: { ring, caption: 'Corners', least: 3 } })
    expect(table.find('[aria-label="Take out corner 1"]').exists()).toBe(false)
    await table.findAll('button').at(2)?.trigger('click')
    expect(table.emitted('change')).toEqual([[[...ring, { eastM: 0, northM: 3 }]]])
  })

  it('what is being typed stays when something else arrives, and a refused figure goes back', async () => {
    const table = mount(StationTable, { props: { stations } })
    const box = table.find<HTMLInputElement>('[aria-label="Level of station 2, in metres"]')
    box.element.value = '1.'
    await box.trigger('input')
    await table.setProps({ stations: [{ distanceM: 0, levelM: 4 }, ...stations.slice(1)] })
    expect(box.element.value).toBe('1.')
    await box.setValue('0.5')
    await box.trigger('blur')
    expect(table.emitted('change')).toHaveLength(1)
    expect(box.element.value).toBe('1')
  })

  it('thousands of rows come a page at a time, notes stand under theirs', async () => {
    const points = Array.from({ length: 5000 }, (_, row) => ({
      mark: `L${row + 1}`,
      eastM: row,
      northM: 0,
      levelM: 1,
    }))
    const notes = new Map([[1, ['It stands 2 m above its neighbours.']]])
    const table = mount(LevelTable, { props: { points, notes, picked: undefined }, attachTo: document.body })
    expect(table.findAll('tbody tr')).toHaveLength(26)
    expect(table.find('.row-note').text()).toContain('2 m above its neighbours')
    await table.find('#find-level').setValue('l4321')
    await table.find('form').trigger('submit')
    await vi.waitFor(() =>
      expect(document.activeElement?.getAttribute('aria-label')).toBe('Mark of level L4321'),
    )
    await table.find('[aria-label="Level, m of level L4321"]').setValue('1,5')
    expect(table.emitted('set')).toEqual([[4320, { levelM: 1.5 }]])
    await table.find('#find-level').setValue('nowhere')
    await table.find('form').trigger('submit')
    expect(table.find('[role=status]').text()).toContain('“nowhere”')
    table.unmount()
  })

  it('a wall has a level on each side, an edge may have none', async () => {
    const wall = [
      { eastM: 0, northM: 0, leftM: 2, rightM: 1 },
      { eastM: 4, northM: 0, leftM: 2, rightM: 1 },
    ]
    const table = mount(LineTable, { props: { name: 'Wall', wall: true, vertices: wall } })
    await table.find('[aria-label="Point 1 of Wall: Level on the right, m"]').setValue('1.2')
    await table.findAll('button')[1]?.trigger('click')
    expect(table.emitted('set')).toEqual([[0, { rightM: 1.2 }]])
    expect(table.emitted('reshape')).toEqual([[[...wall, { eastM: 8, northM: 0 }]]])
    const edge = mount(LineTable, {
      props: { name: 'Top', wall: false, vertices: [{ eastM: 0, northM: 0, levelM: 3 }] },
    })
    await edge.find('[aria-label="Point 1 of Top: Level, m; empty: read from around"]').setValue('')
    expect(edge.emitted('set')).toEqual([[0, { levelM: undefined }]])
  })

  it('columns always hold east, north and level once each', async () => {
    const mapping = mount(ColumnMapping, {
      props: {
        table: { columns: ['a', 'b', 'c', 'd'], rows: [['P', '1', '2', '3']], lines: [2] },
        columns: { mark: 0, east: 1, north: 2, level: 3 },
      },
    })
    await mapping.findAll('select')[3]?.setValue('east')
    await mapping.findAll('select')[0]?.setValue('level')
    await mapping.findAll('select')[1]?.setValue('')
    expect(mapping.emitted('change')).toEqual([
      [{ mark: 0, east: 3, north: 2, level: 1 }],
      [{ mark: undefined, east: 1, north: 2, level: 0 }],
      [{ mark: 0, east: 1, north: 2, level: 3 }],
    ])
  })
})

describe('the sheet', () => {
  it('asks for the account behind a figure', async () => {
    const key = { zoneId: 'b', about: 'wetness' } as const
    const text = mount(AnswerText, {
      props: { phrases: ['B is ', { figure: 'dry', ask: key }, ' at ', { figure: '18' }], asked: undefined },
    })
    expect(text.html().replace(/<[^>]*>|\s+/g, ' ')).toMatch(/B is\s+dry/)
    await text.find('button').trigger('click')
    expect(text.emitted('ask')).toEqual([[key]])
    expect(text.findAll('button')).toHaveLength(1)
  })

  it('names what undo undoes, and has the question as its heading', () => {
    const head = mount(SheetHead, {
      props: {
        planName: 'Bank',
        questions,
        current: 'mow',
        undoes: 'split zone B',
        redoes: undefined,
        kept: 'Kept on this device, 14:02',
        keepTrouble: '',
        dark: false,
        tables: false,
      },
    })
    expect(head.find('h1').text()).toBe('What may I mow?')
    expect(head.text()).toContain('Undo: split zone B')
    expect(head.findAll('[aria-current=page]')).toHaveLength(1)
  })
})

describe('the start', () => {
  it('draws every dimension with its figure', () => {
    const bank = mount(ObliqueBank, {
      props: { bank: { lengthM: 7.2, riseM: 2.4, widthM: 11 }, widthPx: 900, heightPx: 430 },
    })
    const words = bank.findAll('.dimension text').map((text) => text.text())
    expect(words).toEqual(['7.2 m', '2.4 m', '11 m'])
    expect(bank.html()).not.toContain('NaN')
  })

  it('says so when no machine may go there', () => {
    const told = mount(FirstFigures, {
      props: {
        figures: {
          slopeDeg: 40,
          runPerRise: 1.2,
          slopeAreaM2: 10,
          planAreaM2: 8,
          midsummerHours: 12,
          midwinterHours: 3,
          mayMow: [],
          doubtDeg: 1,
        },
      },
    })
    expect(told.text()).toContain('Do not mow it.')
  })
})
