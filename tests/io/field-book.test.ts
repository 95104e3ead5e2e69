import fc from 'fast-check'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { reduceLevelBook, type Book, type LevelBook } from '#core/booking'
import { fieldBookCsv, readFieldBook, type FieldBookHead } from '#io'

const { booklet } = JSON.parse(
  readFileSync(join(import.meta.dirname, '../truth/booking-levelling.json'), 'utf8'),
) as {
  booklet: {
    startM: number
    rows: { mark: string; backM?: number; interM?: number; foreM?: number; levelM: number }[]
  }
}

const levelHead: FieldBookHead = {
  kind: 'level-book',
  id: 'book',
  name: 'Book',
  startLevelM: booklet.startM,
}
const head = (kind: Book['kind']): FieldBookHead => ({ kind, id: 'book', name: 'Book', startLevelM: 10 })

function book(text: string, asked: FieldBookHead): Book {
  const read = readFieldBook(text, asked)
  if (!read.ok) throw new Error(read.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'))
  return read.value.book
}

const levelBookOf = (text: string, asked = levelHead): LevelBook => {
  const read = book(text, asked)
  if (read.kind !== 'level-book') throw new Error('not a level book')
  return read
}

const problems = (text: string, asked: FieldBookHead) => {
  const read = readFieldBook(text, asked)
  return read.ok ? [] : read.problems.map(({ where, what }) => `${where}: ${what}`)
}

const cell = (value: number | undefined, decimals = 3) => value?.toFixed(decimals) ?? ''

describe('levelling booklet, example of 7 points, as a table', () => {
  const tables: [string, string, FieldBookHead][] = [
    [
      'comma, usual order, sums at the foot',
      [
        'Some plot, 3 May',
        'BS,IS,FS,Rise,Fall,Point',
        ...booklet.rows.map((r) => `${cell(r.backM)},${cell(r.interM)},${cell(r.foreM)},,,${r.mark}`),
        ',,,,,',
        'Sum,6.962,8.124,1.517,2.679,',
      ].join('\n'),
      levelHead,
    ],
    [
      'semicolon, decimal comma, other order and case',
      [
        'MARK;fore sight (m);Back Sight (m);intermediate (m)',
        ...booklet.rows.map((r) =>
          [r.mark, cell(r.foreM), cell(r.backM), cell(r.interM)].join(';').replaceAll('.', ','),
        ),
      ].join('\r\n'),
      levelHead,
    ],
    [
      'tab, centimetres said by the person',
      [
        'b.s.\ti.s.\tf.s.\tmark',
        ...booklet.rows.map((r) =>
          [r.backM, r.interM, r.foreM]
            .map((one) => cell(one === undefined ? undefined : one * 100, 1))
            .concat(r.mark)
            .join('\t'),
        ),
      ].join('\n'),
      { ...levelHead, unit: 'cm' },
    ],
    [
      'millimetres said by the headings',
      [
        'mark,back (mm),inter (mm),fore (mm)',
        ...booklet.rows.map((r) =>
          [
            r.mark,
            ...[r.backM, r.interM, r.foreM].map((one) => (one === undefined ? '' : cell(one * 1000, 0))),
          ].join(','),
        ),
      ].join('\n'),
      levelHead,
    ],
  ]
  it.each(tables)('%s', (_, text, asked) => {
    const reduced = reduceLevelBook(levelBookOf(text, asked), { allowables: [] })
    expect(reduced.ok).toBe(true)
    if (!reduced.ok) return
    booklet.rows.forEach(({ mark, levelM }, at) => {
      expect(reduced.value.lines[at]?.mark).toBe(mark)
      expect(reduced.value.lines[at]?.levelM).toBeCloseTo(levelM, 9)
    })
  })

  it('says what was passed over', () => {
    const [, text = '', asked = levelHead] = tables[0] ?? []
    const read = readFieldBook(text, asked)
    expect(read.ok && read.value.ignoredColumns).toEqual(['Rise', 'Fall'])
    expect(read.ok && read.value.leftOut).toEqual([1, 11])
  })
})

describe('columns and units', () => {
  it('places, remarks and levels by hand', () => {
    const read = levelBookOf(
      'Remark,Mark,BS,FS,IS,Distance,East,North,RL\ngate post,BM,1.5,,,0,1,2,10.000\n,A,,,2.5,4,5,2,9\n,B,,1.2,,9.5,6,2,10.3\n',
    )
    expect(read.rows[0]).toEqual({
      mark: 'BM',
      remark: 'gate post',
      backM: 1.5,
      handLevelM: 10,
      distanceM: 0,
      eastM: 1,
      northM: 2,
    })
    expect(read.rows[1]).toEqual({ mark: 'A', interM: 2.5, handLevelM: 9, distanceM: 4, eastM: 5, northM: 2 })
  })

  it('in a book of centimetres, distances are metres unless their heading says otherwise', () => {
    const asked: FieldBookHead = { ...levelHead, unit: 'cm' }
    expect(levelBookOf('bs,fs,distance\n150,,0\n,120,12\n', asked).rows[1]).toEqual({
      foreM: 1.2,
      distanceM: 12,
    })
    expect(levelBookOf('bs,fs,distance (ft)\n150,,0\n,120,10\n', asked).rows[1]?.distanceM).toBeCloseTo(
      3.048,
      9,
    )
  })

  it('foot of 1959: feet and inches in quotes and without', () => {
    const read = levelBookOf(
      `mark,back (ft-in),fore (ft-in)\nBM,"5' 3 1/2""",\nA,,5' 3 1/2"\nB,2-6,4 ft 0 in\n`,
    )
    expect(read.unit).toBe('ft-in')
    expect(read.rows.map(({ backM, foreM }) => [backM, foreM])).toEqual([
      [expect.closeTo(1.6129, 9), undefined],
      [undefined, expect.closeTo(1.6129, 9)],
      [expect.closeTo(0.762, 9), expect.closeTo(1.2192, 9)],
    ])
  })

  it('a chain with angles in degrees, per cent and one in so many (trigonometry)', () => {
    const read = book('Length\tAngle\n10\t-12.5°\n5\t-100 %\n4\t1:2\n3\t−7\n', head('chain'))
    expect(read.kind === 'chain' && read.legs.map(({ angleDeg }) => angleDeg)).toEqual([
      -12.5,
      expect.closeTo(-45, 9),
      expect.closeTo(26.565051, 5),
      -7,
    ])
    const percent = book('Length,Angle (%)\n10,-100\n', head('chain'))
    expect(percent.kind === 'chain' && percent.legs[0]?.angleDeg).toBeCloseTo(-45, 9)
  })

  it('steps and strings, divided by blanks as well', () => {
    const steps = book('step drop\n1 0.45\n2 0.5\n', {
      ...head('steps'),
      steps: { tool: 'line-level', spanM: 5 },
    })
    expect(steps).toMatchObject({ kind: 'steps', tool: 'line-level', spanM: 5 })
    expect(steps.kind === 'steps' && steps.steps.map(({ dropM }) => dropM)).toEqual([0.45, 0.5])
    const string = book('run (cm);drop (cm);what\n150;40;lawn\n', head('string'))
    expect(string.kind === 'string' && string.drops).toEqual([
      { runM: 1.5, dropM: expect.closeTo(0.4, 12) as number, remark: 'lawn' },
    ])
  })
})

describe('what cannot be read, by line', () => {
  it.each<[string, string, FieldBookHead, string[]]>([
    ['nothing', '', levelHead, ['field book: No row names the columns.']],
    ['no headings', '1.5,,\n,1.2,\n', levelHead, ['field book: No row names the columns.']],
    ['headings alone', 'bs,is,fs\n', levelHead, ['field book: There is no row of readings.']],
    [
      'words for readings',
      'mark,bs,fs\nA,high,\nB,,1.2\nC,,?\n',
      levelHead,
      [
        'line 2 of the file, back sight: “high” cannot be read.',
        'line 4 of the file, fore sight: “?” cannot be read.',
      ],
    ],
    [
      'two sights of one kind on one line',
      'bs,fs,fs\n1.5,,\n,1.2,1.3\n',
      levelHead,
      ['line 3 of the file, fore sight: There are two on one line.'],
    ],
    [
      'a unit we do not know',
      'bs (yards),fs\n1,\n,1\n',
      levelHead,
      ['heading “bs (yards)”: “yards” is no unit we know.'],
    ],
    [
      'headings that contradict the person',
      'bs (ft),fs\n1,\n,1\n',
      { ...levelHead, unit: 'm' },
      ['heading “bs (ft)”: It says ft, but the book is said to be in m.'],
    ],
    [
      'a reading in centimetres called metres',
      'bs,fs\n150,\n,1.2\n',
      levelHead,
      ['line 1 of the book, back sight: A staff is at most 5 m: is this reading in cm or feet?'],
    ],
    [
      'an angle that is missing, and one that is a wall',
      'length,angle\n10,\n10,-12\n',
      head('chain'),
      ['line 2 of the file, angle: It is empty.'],
    ],
    [
      'a leg as steep as a wall',
      'length,angle\n10,-85\n',
      head('chain'),
      ['line 1 of the book, angle: Steeper than 80° is a wall.'],
    ],
  ])('%s', (_, text, asked, expected) => {
    expect(problems(text, asked)).toEqual(expected)
  })

  it('takes any text without failing: a book or a problem', () => {
    const line = fc.oneof(
      fc.string(),
      fc.constantFrom(
        'bs,is,fs',
        'length;angle',
        'run\tdrop',
        '1.5,,',
        ',1.2,',
        '"',
        '5\' 3"',
        '1e999',
        '=1+1',
      ),
    )
    const kinds = fc.constantFrom<Book['kind']>('level-book', 'chain', 'steps', 'string')
    fc.assert(
      fc.property(fc.array(line, { maxLength: 12 }), kinds, (lines, kind) => {
        const read = readFieldBook(lines.join('\n'), {
          ...head(kind),
          steps: { tool: 'a-frame', spanM: 2 },
        })
        expect(read.ok || read.problems.length > 0).toBe(true)
      }),
      { numRuns: 2000 },
    )
  })
})

describe('written and read again', () => {
  const sight = fc.integer({ min: -4900, max: 4900 }).map((mm) => mm / 1000)
  const word = fc.constantFrom('A', '=B1', '-3', 'gate, left', 'say "no"', "5' post")
  const row = fc.oneof(
    fc.record({ interM: sight, mark: word }),
    fc.record({ backM: sight, foreM: sight, distanceM: sight, remark: word }),
    fc.record({ interM: sight, eastM: sight, northM: sight, handLevelM: sight }),
  )
  const units = fc.constantFrom<Book['unit']>('m', 'cm', 'ft', 'us-ft', 'ft-in')
  /** Half of the sixty-fourth of an inch that is written [m]. */
  const HALF_PART_M = 0.0254 / 128 + 1e-9

  it('every level book, in every unit', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 20 }), units, (rows, unit) => {
        const written: LevelBook = {
          kind: 'level-book',
          id: 'book',
          name: 'Book',
          unit,
          reduction: 'rise-and-fall',
          startLevelM: booklet.startM,
          adjust: false,
          rows,
        }
        const again = levelBookOf(fieldBookCsv(written), { ...levelHead, unit })
        expect(again.rows).toHaveLength(rows.length)
        expect(again.unit).toBe(unit)
        rows.forEach((one, at) => {
          const other = again.rows[at]
          expect(Object.keys(other ?? {}).sort()).toEqual(Object.keys(one).sort())
          for (const [key, value] of Object.entries(one)) {
            const found = (other as Record<string, unknown> | undefined)?.[key]
            if (typeof value === 'string') expect(found).toBe(value)
            else expect(Math.abs(Number(found) - value)).toBeLessThan(unit === 'ft-in' ? HALF_PART_M : 1e-6)
          }
        })
      }),
    )
  })

  it('chains, steps and strings', () => {
    const common = { id: 'book', name: 'Book', startLevelM: 10, unit: 'ft' } as const
    const books: Book[] = [
      { kind: 'chain', ...common, legs: [{ mark: 'A', lengthM: 3.048, angleDeg: -12.25, remark: 'x' }] },
      { kind: 'steps', ...common, tool: 'a-frame', spanM: 2, steps: [{ dropM: -0.3048 }] },
      { kind: 'string', ...common, drops: [{ runM: 1.524, dropM: 0.3048 }] },
    ]
    for (const one of books) {
      const again = book(fieldBookCsv(one), {
        ...head(one.kind),
        ...(one.kind === 'steps' ? { steps: { tool: one.tool, spanM: one.spanM } } : {}),
      })
      expect(again).toEqual(one)
    }
  })
})
