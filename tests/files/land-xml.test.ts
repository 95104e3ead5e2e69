import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readLandXml } from '../../src/files/land-xml'
import { unitLengthM } from '../../src/files/length-unit'

/** For large files on a busy machine [ms]; a second or less on an idle one. */
const PATIENCE_MS = 60_000

type Triple = readonly [number, number, number]

const folder = join(import.meta.dirname, '../truth/files')
const file = (name: string) => readFileSync(join(folder, name), 'utf8')
const truth = JSON.parse(file('landxml-provenance.json')) as { pointsM: Triple[]; faces: Triple[] }

const read = (text: string) => {
  const outcome = readLandXml(text)
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

/** What is wrong, in one text. */
const refused = (text: string) => {
  const outcome = readLandXml(text)
  return outcome.ok
    ? ''
    : outcome.problems.map(({ where, what, mend }) => `${where}: ${what} ${mend}`).join(' ')
}

const partOf = (text: string, id: string) => {
  const part = read(text).parts.find((one) => one.id === id)
  if (!part) throw new Error(`no part ${id}`)
  return part
}

const places = (points: readonly { eastM: number; northM: number; levelM?: number | undefined }[]) =>
  points.map(({ eastM, northM, levelM }) => [eastM, northM, levelM])

const metre = '<Units><Metric linearUnit="meter"/></Units>'
const triangle =
  '<Pnts><P id="1">10 20 1</P><P id="2">10 30 2</P><P id="3">15 25 3</P></Pnts><Faces><F>1 2 3</F></Faces>'
const surface = (definition: string, source = '', name = 'S') =>
  `<Surface name="${name}">${source}<Definition surfType="TIN">${definition}</Definition></Surface>`
const landXml = (content: string) => `<?xml version="1.0"?>\n<LandXML version="1.2">${content}</LandXML>`
const surfaces = (...all: readonly string[]) => landXml(`${metre}<Surfaces>${all.join('')}</Surfaces>`)

it('LandXML writer of the QGIS plugin landxmlconvertor, run outside QGIS: points, faces and metres come back exactly', () => {
  const { parts, unit, notes, doubts } = read(file('landxml-mesh-writer.xml'))
  expect(unit).toBe('m')
  expect(parts).toHaveLength(1)
  expect(parts[0]?.kind).toBe('surface')
  expect(places(parts[0]?.points ?? [])).toEqual(truth.pointsM)
  expect(parts[0]?.faces).toEqual(truth.faces)
  expect([notes, doubts]).toEqual([[], []])
})

describe('a file by hand after the LandXML 1.2 schema, in US survey feet', () => {
  const text = file('landxml-us-survey-feet.xml')

  it('LandXML 1.2 schema: northing comes first, ids are local to each surface', () => {
    const ground = partOf(text, 'surface:EG & bank')
    expect(places(ground.points)).toEqual([
      [1500000, 540000, 812],
      [1500000, 540040, 815],
      [1500060, 540040, 814],
      [1500060, 540000, 811],
      [1500030, 540020, 813.5],
    ])
    expect(ground.faces).toEqual([
      [0, 1, 4],
      [1, 2, 4],
      [2, 3, 4],
      [3, 0, 4],
    ])
    expect(partOf(text, 'surface:Design').points[2]).toEqual({ eastM: 1500060, northM: 540040, levelM: 822 })
  })

  it('LandXML 1.2 schema: USSurveyFoot is 1200/3937 m, and the system of coordinates is named', () => {
    const { unit, crs } = read(text)
    expect(unit).toBe('us-ft')
    expect(unit && 1500000 * unitLengthM[unit]).toBeCloseTo(457200.9144, 4)
    expect(crs).toEqual({ name: 'NAD83 / North Carolina (ftUS)', epsg: 2264, definition: undefined })
  })

  it('LandXML 1.2 schema: faces marked invisible are no ground, nor the points only they stand on', () => {
    const { notes } = read(text)
    expect(notes).toContain('Surface "EG & bank": left out, faces marked invisible, which are no ground: 1.')
    expect(notes).toContain('Surface "EG & bank": left out, points that no visible face stands on: 1.')
  })

  it('LandXML 1.2 schema: breaklines and the outer boundary, opened; inner ones are told', () => {
    const ground = partOf(text, 'surface:EG & bank')
    expect(ground.breaklines.map(({ id, kind, name }) => [id, kind, name])).toEqual([
      ['line-1', 'toe', 'Toe of bank'],
      ['line-2', 'edge', 'retaining wall'],
    ])
    expect(ground.breaklines[0]?.vertices[1]).toEqual({ eastM: 1500030, northM: 540020, levelM: 813.5 })
    expect(ground.boundary).toEqual([
      { eastM: 1500000, northM: 540000 },
      { eastM: 1500000, northM: 540040 },
      { eastM: 1500060, northM: 540040 },
      { eastM: 1500060, northM: 540000 },
    ])
    expect(read(text).notes.some((note) => note.includes('inner boundaries') && note.includes(': 1.'))).toBe(
      true,
    )
    expect(read(text).notes.some((note) => note.includes('called walls'))).toBe(true)
  })

  it('LandXML 1.2 schema: survey points without a level or at exactly zero are no ground', () => {
    expect(partOf(text, 'points:Field').points).toEqual([
      { mark: '1', code: 'GR', eastM: 1500000.2, northM: 540000.1, levelM: 812.34 },
      { mark: '2', code: 'TOP', eastM: 1500000.2, northM: 540040.1, levelM: 815 },
      { mark: '5', eastM: 1500030, northM: 540020, levelM: 813.5 },
    ])
    expect(read(text).notes).toContain('Field: left out, survey points without a level: 1.')
    expect(read(text).notes).toContain(
      'Field: left out, survey points with a level of exactly 0, which are no ground: 1.',
    )
  })

  it('LandXML 1.2 schema: points given by name (pntRef) are found', () => {
    expect(places(partOf(text, 'points:Corner marks').points)).toEqual([
      [1500000.2, 540000.1, 812.34],
      [1500000.2, 540040.1, 815],
    ])
  })
})

it('LandXML 1.0 schema, by hand: a prefix for its names, decimal commas, ids out of order', () => {
  const part = partOf(file('landxml-prefixed-1-0.xml'), 'surface:OG')
  expect(places(part.points)).toEqual(truth.pointsM.slice(0, 3))
  expect(part.faces).toEqual([[0, 1, 2]])
})

describe('units by the LandXML schema', () => {
  const inUnit = (units: string) => read(landXml(`${units}<Surfaces>${surface(triangle)}</Surfaces>`))
  it.each([
    ['<Metric linearUnit="meter"/>', 'm'],
    ['<Metric linearUnit="centimeter"/>', 'cm'],
    ['<Metric linearUnit="millimeter"/>', 'mm'],
    ['<Imperial linearUnit="foot"/>', 'ft'],
    ['<Imperial linearUnit="USSurveyFoot"/>', 'us-ft'],
    ['<Imperial linearUnit="inch"/>', 'in'],
  ])('LandXML schema: %s', (units, unit) => {
    expect(inUnit(`<Units>${units}</Units>`).unit).toBe(unit)
  })
  it('LandXML schema: without Units the person must say', () => {
    expect(inUnit('').unit).toBeUndefined()
    expect(inUnit('<Units><Metric/></Units>').unit).toBeUndefined()
  })
  it('LandXML schema: kilometers and miles are named and asked', () => {
    const { unit, doubts } = inUnit('<Units><Imperial linearUnit="mile"/></Units>')
    expect(unit).toBeUndefined()
    expect(doubts[0]?.what).toContain('"mile"')
  })
  it('LandXML schema: another unit for levels is given on and asked', () => {
    const { unit, levelUnit, doubts } = inUnit(
      '<Units><Imperial linearUnit="foot" elevationUnit="meter"/></Units>',
    )
    expect([unit, levelUnit, doubts.length]).toEqual(['ft', 'm', 1])
    const feet = inUnit('<Units><Imperial linearUnit="USSurveyFoot" elevationUnit="feet"/></Units>')
    expect([feet.unit, feet.levelUnit, feet.doubts.length]).toEqual(['us-ft', undefined, 0])
  })
})

describe('systems of coordinates, worked by hand', () => {
  const crsOf = (attributes: string) =>
    read(landXml(`<CoordinateSystem ${attributes}/><Surfaces>${surface(triangle)}</Surfaces>`)).crs
  it('reads a code, with or without its authority, and a name alone', () => {
    expect(crsOf('epsgCode="27700"')).toEqual({ name: 'EPSG:27700', epsg: 27700, definition: undefined })
    expect(crsOf('epsgCode="EPSG:27700" name="OSGB"')).toMatchObject({ name: 'OSGB', epsg: 27700 })
    expect(crsOf('name="Site grid" epsgCode="0"')).toEqual({
      name: 'Site grid',
      epsg: undefined,
      definition: undefined,
    })
    expect(crsOf('')).toBeUndefined()
  })
  it.each([
    [
      'EPSG dataset: 2264 counts in US survey feet',
      'epsgCode="2264" name="NC"',
      'Imperial',
      'USSurveyFoot',
      'meter',
    ],
    ['EPSG dataset: 27700 counts in metres', 'epsgCode="27700" name="GB"', 'Metric', 'meter', 'foot'],
    [
      'by hand: well-known text tells the two feet apart',
      'name="X" ogcWktCode="PROJCS[&quot;X&quot;,UNIT[&quot;Degree&quot;,0.0174],UNIT[&quot;Foot_US&quot;,0.30480060960122]]"',
      'Imperial',
      'USSurveyFoot',
      'foot',
    ],
  ])('%s: another unit is asked about', (_, crs, kind, right, wrong) => {
    const doubts = (unit: string) =>
      read(
        landXml(
          `<Units><${kind} linearUnit="${unit}"/></Units><CoordinateSystem ${crs}/><Surfaces>${surface(triangle)}</Surfaces>`,
        ),
      ).doubts
    expect(doubts(right)).toEqual([])
    expect(doubts(wrong)[0]?.what).toContain('counts in units of')
  })
  it('reads well-known text with its quotation marks', () => {
    const wkt = 'PROJCS[&quot;Here&quot;,UNIT[&quot;metre&quot;,1]]'
    expect(crsOf(`desc="Here" ogcWktCode="${wkt}"`)?.definition).toBe('PROJCS["Here",UNIT["metre",1]]')
  })
})

describe('traps and damage, worked by hand', () => {
  it.each(['1.0', '1.1', '1.2', '2.0'])('reads the namespace of version %s', (version) => {
    const text = surfaces(surface(triangle)).replace(
      '<LandXML ',
      `<LandXML xmlns="http://www.landxml.org/schema/LandXML-${version}" `,
    )
    expect(read(text).parts[0]?.faces).toHaveLength(1)
  })

  it('leaves out faces that name missing points or one point twice', () => {
    const { parts, notes } = read(
      surfaces(surface(triangle.replace('</Faces>', '<F>1 2 99</F><F>1 1 2</F><F>1 2</F><F></F></Faces>'))),
    )
    expect(parts[0]?.faces).toEqual([[0, 1, 2]])
    expect(notes.some((note) => note.includes('not there') && note.endsWith(': 4.'))).toBe(true)
  })

  it('keeps the first of two points with one id', () => {
    const { parts, notes } = read(
      surfaces(surface(triangle.replace('</Pnts>', '<P id="3">99 99 9</P></Pnts>'))),
    )
    expect(parts[0]?.points[2]).toEqual({ eastM: 25, northM: 15, levelM: 3 })
    expect(notes.some((note) => note.includes('earlier point'))).toBe(true)
  })

  it('cuts faces of four corners (grid surfaces) into two triangles', () => {
    const square =
      '<Pnts><P id="1">0 0 1</P><P id="2">0 5 2</P><P id="3">5 5 3</P><P id="4">5 0 3</P></Pnts><Faces><F>1 2 3 4</F></Faces>'
    expect(read(surfaces(surface(square))).parts[0]?.faces).toEqual([
      [0, 1, 2],
      [0, 2, 3],
    ])
  })

  it('refuses a surface whose faces are all invisible, and one that is empty', () => {
    expect(refused(surfaces(surface(triangle.replace('<F>', '<F i="1">'))))).toMatch(/holds no ground/)
    expect(refused(surfaces(surface('')))).toMatch(/Surface "S" holds no ground/)
    expect(refused(surfaces())).toMatch(/no surface and no survey points/)
  })

  it('gives every surface an id of its own, also where names are used twice or are missing', () => {
    const twice = read(surfaces(surface(triangle), surface(triangle), surface(triangle, '', '')))
    expect(twice.parts.map(({ id }) => id)).toEqual(['surface:S', 'surface:S#2', 'surface:Surface 3'])
  })

  it('takes points and lines as points where a surface has no faces', () => {
    const source =
      '<SourceData><DataPoints code="GR"><PntList3D>0 0 1 0 5 2 5 5 3</PntList3D></DataPoints>' +
      '<Contours><Contour elev="4"><PntList2D>7 0 7 5</PntList2D></Contour></Contours></SourceData>'
    const part = read(landXml(`<Surfaces><Surface name="S">${source}</Surface></Surfaces>`)).parts[0]
    expect([part?.kind, part?.points.length, part?.faces.length]).toEqual(['points', 3, 0])
    expect(part?.points[1]).toEqual({ eastM: 5, northM: 0, levelM: 2, code: 'GR' })
    expect(part?.breaklines[0]?.vertices[1]).toEqual({ eastM: 5, northM: 7, levelM: 4 })
  })

  it('finds corners of a boundary that are given by name', () => {
    const points =
      '<CgPoints><CgPoint name="A">0 0 1</CgPoint><CgPoint name="B">0 9 1</CgPoint><CgPoint name="C">9 9 1</CgPoint></CgPoints>'
    const ring =
      '<SourceData><Boundaries><Boundary bndType="outer"><P pntRef="A"/><P pntRef="B"/><P pntRef="C"/></Boundary></Boundaries></SourceData>'
    const { parts } = read(landXml(`${points}<Surfaces>${surface(triangle, ring)}</Surfaces>`))
    expect(parts[0]?.boundary).toEqual([
      { eastM: 0, northM: 0 },
      { eastM: 9, northM: 0 },
      { eastM: 9, northM: 9 },
    ])
  })

  it('asks when every survey point has a level of exactly zero', () => {
    const points =
      '<CgPoints><CgPoint name="A">0 1 0</CgPoint><CgPoint name="B">2 3 0.000</CgPoint></CgPoints>'
    const { parts, doubts } = read(landXml(points))
    expect(parts[0]?.points).toHaveLength(2)
    expect(doubts[0]?.what).toMatch(/^All 2 levels are exactly 0/)
  })

  it('says what else the file holds', () => {
    const text = landXml(
      `<Alignments><Alignment/><Alignment/></Alignments><Surfaces>${surface(triangle)}</Surfaces>`,
    )
    expect(read(text).notes).toContain('Not read: 2 alignments.')
  })

  it('reads numbers parted by commas, and leaves out what is none', () => {
    const pnts =
      '<Pnts><P id="1">10.5,20.5,1</P><P id="2">10, 30, 2</P><P id="3">15 25 3</P><P id="4">NaN 1 2</P><P id="5">1e400 1 2</P><P id="6">1 2</P></Pnts><Faces><F>1 2 3</F></Faces>'
    const { parts, notes } = read(surfaces(surface(pnts)))
    expect(places(parts[0]?.points ?? [])).toEqual([
      [20.5, 10.5, 1],
      [30, 10, 2],
      [25, 15, 3],
    ])
    expect(notes.some((note) => note.includes('northing') && note.endsWith(': 3.'))).toBe(true)
  })

  it('refuses a file cut off anywhere, naming the line', () => {
    const text = file('landxml-us-survey-feet.xml').trimEnd()
    for (let end = 60; end < text.length - 1; end += 41)
      expect(refused(text.slice(0, end)), `cut after ${end}`).toMatch(/^(line \d+|file): /)
  })

  it('refuses other XML, no XML, and text that multiplies itself', () => {
    expect(refused('<gml:Thing xmlns:gml="x"/>')).toContain('not LandXML')
    expect(refused('PK hello')).toMatch(/no XML/)
    expect(refused('')).toMatch(/no XML/)
    const bomb = '<!DOCTYPE a [<!ENTITY x "ha"><!ENTITY y "&x;&x;">]>'
    expect(refused(surfaces(surface(triangle)).replace('?>', `?>${bomb}`))).toContain('ENTITY')
  })

  it('refuses reserved names and very deep files in plain words', () => {
    expect(refused(landXml('<__proto__/>'))).toMatch(/^file: /)
    expect(refused(landXml('<a>'.repeat(500) + '</a>'.repeat(500)))).toMatch(/^file: /)
  })

  it(
    'reads 50,000 points and 90,000 faces',
    () => {
      const across = 250
      const points = Array.from(
        { length: 50_000 },
        (_, row) => `<P id="${row}">${row % across} ${row} 1.5</P>`,
      )
      const faces = Array.from(
        { length: 90_000 },
        (_, row) => `<F>${row % 49_000} ${(row % 49_000) + 1} ${(row % 49_000) + 300}</F>`,
      )
      const part = read(surfaces(surface(`<Pnts>${points.join('')}</Pnts><Faces>${faces.join('')}</Faces>`)))
        .parts[0]
      expect(part?.faces).toHaveLength(90_000)
    },
    PATIENCE_MS,
  )
})
