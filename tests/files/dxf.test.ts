import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readDxf } from '../../src/files/dxf'
import { unitLengthM } from '../../src/files/length-unit'

type Triple = readonly [number, number, number]

const folder = join(import.meta.dirname, '../truth/files')
const file = (name: string) => readFileSync(join(folder, name), 'utf8')
const truth = JSON.parse(file('dxf-provenance.json')) as {
  pointsM: Triple[]
  faces: Triple[]
  mirrored: Triple[]
  tilted: Triple[]
}

const read = (text: string) => {
  const outcome = readDxf(text)
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

/** What is wrong, in one text. */
const refused = (text: string) => {
  const outcome = readDxf(text)
  return outcome.ok
    ? ''
    : outcome.problems.map(({ where, what, mend }) => `${where}: ${what} ${mend}`).join(' ')
}

const partOf = (text: string, id: string) => {
  const part = read(text).parts.find((one) => one.id === id)
  if (!part) throw new Error(`no part ${id}`)
  return part
}

const places = (
  points: readonly { eastM: number; northM: number; levelM?: number | undefined }[],
  length = 1,
) =>
  points.map(({ eastM, northM, levelM }) => [
    eastM * length,
    northM * length,
    (levelM ?? Number.NaN) * length,
  ])

/** For large files on a busy machine [ms]; a second or less on an idle one. */
const PATIENCE_MS = 60_000

/** Tenth of a millimetre: what is left of 15 digits at national coordinates in feet. */
const NEAR_M = 1e-4

const expectNear = (found: readonly (readonly number[])[], wanted: readonly (readonly number[])[]) => {
  expect(found).toHaveLength(wanted.length)
  found.forEach((row, at) =>
    row.forEach((value, axis) =>
      expect(Math.abs(value - (wanted[at]?.[axis] ?? Number.NaN))).toBeLessThan(NEAR_M),
    ),
  )
}

/** A drawing of the given entities, each a list of code and value. */
const drawing = (...entities: readonly (readonly (readonly [number, string | number])[])[]) =>
  [[0, 'SECTION'], [2, 'ENTITIES'], ...entities.flat(), [0, 'ENDSEC'], [0, 'EOF']]
    .map(([code, value]) => `${code}\n${value}`)
    .join('\n')

const point = (x: string | number, y: string | number, z: string | number, layer = 'A') =>
  [
    [0, 'POINT'],
    [8, layer],
    [10, x],
    [20, y],
    [30, z],
  ] as const

const everything = file('dxf-everything-r2010.dxf')

describe('drawings written by ezdxf 1.4.4', () => {
  it.each([
    ['dxf-metres-r2018.dxf', 'm'],
    ['dxf-feet-r2010.dxf', 'ft'],
    ['dxf-us-survey-feet-r2000.dxf', 'us-ft'],
  ] as const)('ezdxf: %s is read back to a tenth of a millimetre', (name, unit) => {
    const drawn = read(file(name))
    expect(drawn.unit).toBe(unit)
    const spots = partOf(file(name), 'points:SPOT LEVELS')
    expectNear(places(spots.points, unitLengthM[unit]), truth.pointsM)
    const line = partOf(file(name), 'lines:TOP OF BANK').breaklines[0]
    expect(line?.kind).toBe('top')
    if (line?.kind !== 'top') return
    expectNear(
      places(line.vertices, unitLengthM[unit]),
      [0, 4, 3].map((row) => truth.pointsM[row] ?? []),
    )
    const ground = partOf(file(name), 'faces:GROUND')
    expect(ground.points).toHaveLength(truth.pointsM.length)
    const corners = ground.faces.flat().flatMap((row) => ground.points[row] ?? [])
    expectNear(
      places(corners, unitLengthM[unit]),
      truth.faces.flat().map((row) => truth.pointsM[row] ?? []),
    )
  })

  it('ezdxf: the feet of 1959 and of 1893 differ by a metre at 530 km, and only the right one gives the place', () => {
    const spots = partOf(file('dxf-us-survey-feet-r2000.dxf'), 'points:SPOT LEVELS')
    const wrong = (spots.points[0]?.eastM ?? 0) * unitLengthM.ft
    expect(Math.abs(wrong - (truth.pointsM[0]?.[0] ?? 0))).toBeGreaterThan(1)
  })

  it('ezdxf: a drawing of release 12 names no unit, so the person must', () => {
    const drawn = read(file('dxf-no-unit-r12.dxf'))
    expect(drawn.unit).toBeUndefined()
    expectNear(places(partOf(file('dxf-no-unit-r12.dxf'), 'points:SPOT LEVELS').points), truth.pointsM)
  })

  it('ezdxf: texts that are numbers are levels where they stand, with a doubt that names the layer', () => {
    const { points } = partOf(everything, 'texts:LEVELS')
    expectNear(places(points), [
      [1, 2, 41.37],
      [3, 4, 40.125],
      [5, 6, -0.35],
      [9, 10, 39.5],
      [11, 12, 38.25],
      [13, 14, 37.5],
    ])
    const { doubts, notes } = read(everything)
    expect(doubts.some(({ where, what }) => where === 'layer LEVELS' && what.includes('6 texts'))).toBe(true)
    expect(notes).toContain('Layer "LEVELS": left out, texts that are no level: 1.')
  })

  it('ezdxf: blocks give their number, code and level; a drawn level goes before a rounded attribute', () => {
    const { points } = partOf(everything, 'blocks:SURVEY')
    expect(points).toEqual([
      { mark: '101', code: 'GR', eastM: 21, northM: 22, levelM: 36.12 },
      { mark: '102', code: 'TK', eastM: 23, northM: 24, levelM: 35.987 },
      { mark: '103', code: 'GR', eastM: 25, northM: 26, levelM: 34 },
    ])
    expect(
      read(everything).doubts.some(({ where, what }) => where === 'layer SURVEY' && /^1 block/.test(what)),
    ).toBe(true)
  })

  it('ezdxf: flat polylines carry their one level, new and old kind', () => {
    expectNear(places(partOf(everything, 'lines:CONTOURS').points), [
      [31, 32, 37.5],
      [33, 34, 37.5],
      [35, 32, 37.5],
      [31, 42, 38],
      [33, 44, 38],
      [35, 42, 38],
    ])
    expectNear(places(partOf(everything, 'lines:OLD CONTOURS').points), [
      [51, 52, 39],
      [53, 54, 39],
    ])
    expect(read(everything).notes.some((note) => note.includes('CONTOURS') && note.includes('arcs: 1'))).toBe(
      true,
    )
  })

  it('ezdxf vertices_in_wcs: a polyline drawn from below is mirrored back, a tilted one turned', () => {
    expectNear(places(partOf(everything, 'lines:MIRRORED').points), truth.mirrored)
    expectNear(places(partOf(everything, 'lines:TILTED').points), truth.tilted)
  })

  it('ezdxf: faces share corners; four corners make two triangles; a face without area is left out', () => {
    const { points, faces } = partOf(everything, 'faces:FOUR')
    expect(points).toHaveLength(5)
    expect(faces).toEqual([
      [0, 1, 2],
      [0, 2, 3],
      [1, 4, 2],
    ])
    expect(read(everything).notes.some((note) => note.includes('"FOUR"') && note.includes('apart: 1'))).toBe(
      true,
    )
  })

  it('ezdxf: a polygon mesh of 3 by 2 corners and a polyface of a square and a triangle', () => {
    expect(partOf(everything, 'faces:MESH').faces).toHaveLength(4)
    const poly = partOf(everything, 'faces:POLYFACE')
    expect(poly.faces).toHaveLength(3)
    expectNear(places(poly.points), [
      [70, 0, 5],
      [75, 0, 6],
      [75, 5, 7],
      [70, 5, 8],
      [80, 0, 9],
    ])
  })

  it('ezdxf: a closed line on a layer called boundary is the outline, without levels where it is flat', () => {
    const part = partOf(everything, 'lines:SITE BOUNDARY')
    expect(part.boundary).toHaveLength(4)
    expect(part.points).toHaveLength(0)
    expect(part.breaklines[0]?.vertices[0]).toEqual({ eastM: 0, northM: 0 })
    expect(read(everything).doubts.some(({ where }) => where === 'layer SITE BOUNDARY')).toBe(true)
  })

  it('ezdxf: sheets of paper, circles and arcs are left out and counted', () => {
    const { notes, parts } = read(everything)
    expect(notes).toContain('Not read: 2 CIRCLE on layer "TREES".')
    expect(notes).toContain('Not read: 1 ARC on layer "0".')
    expect(notes.some((note) => note.includes('paper space'))).toBe(true)
    expect(parts.some(({ name }) => name.startsWith('SHEET'))).toBe(false)
  })

  it('ezdxf: levels of exactly zero are asked about, all of them or some of them', () => {
    const about = (where: string) => read(everything).doubts.find((doubt) => doubt.where === where)?.what
    expect(about('FLAT POINTS: points')).toMatch(/^All 4 levels are exactly 0/)
    expect(about('HALF ZERO: points')).toMatch(/^1 of 4 levels are exactly 0/)
  })

  it('ezdxf: layers called __proto__, constructor and with letters beyond ASCII are ordinary layers', () => {
    for (const name of ['__proto__', 'constructor', 'Böschung ✓'])
      expect(partOf(everything, `points:${name}`).points).toHaveLength(1)
  })
})

describe('a drawing written by ogr2ogr of GDAL 3.6.2', () => {
  const text = file('dxf-ogr.dxf')
  it('GDAL: points and lines in space come back, a line of one level too', () => {
    expectNear(places(partOf(text, 'points:SPOT').points), truth.pointsM.slice(0, 3))
    const toe = partOf(text, 'lines:TOE').breaklines[0]
    expect(toe?.kind).toBe('toe')
    expectNear(
      places(partOf(text, 'lines:TOE').points),
      [2, 4, 3].map((row) => truth.pointsM[row] ?? []),
    )
    expectNear(places(partOf(text, 'lines:CONTOUR').points), [
      [531205, 183012, 40.5],
      [531212, 183013.5, 40.5],
    ])
  })

  it('GDAL: its template says inches though nobody meant them: read so, and asked', () => {
    expect(read(text).unit).toBe('in')
    expect(
      read(text).doubts.some(({ where, what }) => where === '$INSUNITS' && what.includes('inches')),
    ).toBe(true)
    expect(read(text).notes).toContain('Not read: 1 HATCH on layer "SITE OUTLINE".')
  })
})

/** Values of $INSUNITS by the DXF reference. */
describe('units by the DXF reference ($INSUNITS)', () => {
  const withUnit = (code: string) =>
    `0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1015\n9\n$INSUNITS\n70\n${code}\n0\nENDSEC\n${drawing(point(1, 2, 3))}`
  it.each([
    ['0', undefined],
    ['1', 'in'],
    ['2', 'ft'],
    ['4', 'mm'],
    ['5', 'cm'],
    ['6', 'm'],
    ['21', 'us-ft'],
  ])('DXF reference: %s is %s', (code, unit) => {
    expect(read(withUnit(code)).unit).toBe(unit)
  })
  it.each([
    ['3', 'miles'],
    ['10', 'yards'],
    ['14', 'decimetres'],
    ['99', 'number 99'],
  ])('DXF reference: %s is named and asked, never guessed', (code, name) => {
    const { unit, doubts } = read(withUnit(code))
    expect(unit).toBeUndefined()
    expect(doubts[0]?.what).toContain(name)
  })
})

describe('traps and damage, worked by hand', () => {
  it('refuses binary DXF with what to do', () => {
    expect(refused('AutoCAD Binary DXF\r\n\u001a\0')).toMatch(/binary.*text \(ASCII\)/)
  })

  it('refuses a drawing cut off at any line, naming the line', () => {
    const lines = file('dxf-no-unit-r12.dxf').split('\n')
    const entities = lines.findIndex((line) => line.trim() === 'ENTITIES')
    const lastSection = lines.findLastIndex((line) => line.trim() === 'ENDSEC')
    for (let end = entities; end < lastSection; end += 7)
      expect(refused(lines.slice(0, end).join('\n')), `cut after line ${end}`).toMatch(/^line \d+: /)
  })

  it('refuses a drawing cut off within a figure', () => {
    const text = file('dxf-metres-r2018.dxf')
    expect(refused(text.slice(0, text.indexOf('531216') + 4))).toMatch(/^line \d+: The drawing stops/)
  })

  it('names the line where no group code stands', () => {
    expect(refused('0\nSECTION\n2\nENTITIES\nhello\n1\n')).toMatch(/^line 5: .*"hello"/)
  })

  it('says what a drawing without ground holds', () => {
    const circle = [
      [0, 'CIRCLE'],
      [8, 'X'],
      [10, 1],
      [20, 1],
      [40, 2],
    ] as const
    expect(refused(drawing(circle))).toContain('Not read: 1 CIRCLE on layer "X".')
    expect(refused('0\nSECTION\n2\nHEADER\n0\nENDSEC\n0\nEOF\n')).toContain('no section of entities')
  })

  it('reads line ends of every system and remarks in between', () => {
    const text = drawing(point(1, 2, 3))
    for (const end of ['\r\n', '\r', '\n']) {
      const written = `999\nwritten by hand\n${text}`.replaceAll('\n', end)
      expectNear(places(partOf(written, 'points:A').points), [[1, 2, 3]])
    }
  })

  it('leaves out and counts what has no readable figures, and keeps the rest', () => {
    const { parts, notes } = read(
      drawing(
        point(1, 2, 3),
        point('NaN', 2, 3),
        point('1e999', 2, 3),
        point(1, '', 3),
        point(1, 2, 'Infinity'),
      ),
    )
    expect(parts[0]?.points).toHaveLength(1)
    expect(notes).toContain('Layer "A": left out, entities whose coordinates cannot be read: 4.')
  })

  it('takes layers that differ only in capitals as one, and tells hidden ones', () => {
    const table = '0\nSECTION\n2\nTABLES\n0\nLAYER\n2\nOld\n70\n0\n62\n-7\n0\nENDSEC\n'
    const { parts, notes } = read(table + drawing(point(1, 2, 3, 'OLD'), point(2, 2, 3, 'old')))
    expect(parts.map(({ id, points }) => [id, points.length])).toEqual([['points:OLD', 2]])
    expect(notes).toContain('Layer "OLD" is switched off or frozen in the drawing, but read.')
  })

  it('doubts texts that are all whole numbers: they may be point numbers', () => {
    const text = (words: string, x: number) =>
      [
        [0, 'TEXT'],
        [8, 'N'],
        [10, x],
        [20, 1],
        [1, words],
      ] as const
    const numbered = read(drawing(text('101', 1), text('102', 2)))
    expect(numbered.doubts[0]?.what).toContain('point numbers')
    const levels = read(drawing(text('101', 1), text('102.5', 2)))
    expect(levels.doubts[0]?.what).not.toContain('point numbers')
  })

  it('reads a level with plus-minus sign, unit and font codes, and no other text', () => {
    const level = (words: string) => {
      const outcome = readDxf(
        drawing([
          [0, 'MTEXT'],
          [8, 'N'],
          [10, 1],
          [20, 1],
          [1, words],
        ]),
      )
      return outcome.ok ? outcome.value.parts[0]?.points[0]?.levelM : undefined
    }
    expect(level('%%p0.00')).toBe(0)
    expect(level('+12,5')).toBe(12.5)
    expect(level('\\A1;{\\H0.7x;12.50 m}')).toBe(12.5)
    for (const words of ['12.5.6', 'FFL 12.5', '12-13', '', '1'.repeat(300), '12.5 ft'])
      expect(level(words), words).toBeUndefined()
  })

  it('leaves out blocks without a level: signs such as trees and arrows', () => {
    const block = [
      [0, 'INSERT'],
      [8, 'S'],
      [2, 'TREE'],
      [10, 1],
      [20, 1],
    ] as const
    const { parts, notes } = read(drawing(point(1, 2, 3), block))
    expect(parts.map(({ id }) => id)).toEqual(['points:A'])
    expect(notes).toContain('Layer "S": left out, blocks without a level: 1.')
  })

  it('keeps the points but not the lines of a layer with more lines than a plan takes', () => {
    const lines = Array.from(
      { length: 5001 },
      (_, row) =>
        [
          [0, 'LINE'],
          [8, 'L'],
          [10, row],
          [20, 0],
          [30, 1],
          [11, row],
          [21, 1],
          [31, 2],
        ] as const,
    )
    const { parts, notes } = read(drawing(...lines))
    expect(parts[0]?.breaklines).toHaveLength(0)
    expect(parts[0]?.points).toHaveLength(10_002)
    expect(notes.some((note) => note.includes('5001 lines'))).toBe(true)
  })

  it(
    'reads a line of 60,000 corners and 20,000 attributes of one block in good time',
    () => {
      const long = `0\nLWPOLYLINE\n8\nL\n38\n5\n${'10\n1\n20\n2\n'.repeat(60_000)}`
      const block = `0\nINSERT\n8\nB\n10\n1\n20\n1\n${'0\nATTRIB\n2\nELEV\n1\n1.5\n'.repeat(20_000)}`
      const text = drawing().replace('0\nENDSEC', `${long}${block}0\nENDSEC`)
      expect(read(text).parts.map(({ id }) => id)).toEqual(['lines:L', 'blocks:B'])
    },
    PATIENCE_MS,
  )

  it('reads the first 500 layers of a drawing with more, and says so', () => {
    const { parts, notes } = read(
      drawing(...Array.from({ length: 600 }, (_, row) => point(1, 2, 3, `L${row}`))),
    )
    expect(parts).toHaveLength(500)
    expect(notes[0]).toBe('The file holds 600 layers; the first 500 are read.')
  })

  it(
    'leaves out a layer with more points than a plan takes, and says so',
    () => {
      const many = Array.from({ length: 100_001 }, (_, row) => point(row, row % 7, 1))
      expect(refused(drawing(...many))).toContain('100001 points')
      const { parts, notes } = read(drawing(...many, point(1, 1, 1, 'B')))
      expect(parts.map(({ id }) => id)).toEqual(['points:B'])
      expect(notes.some((note) => note.includes('100001 points'))).toBe(true)
    },
    PATIENCE_MS,
  )
})
