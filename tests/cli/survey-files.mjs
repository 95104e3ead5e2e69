// Tests of the commands that read a survey file, follow water, draw contours and write grids. run.mjs runs them.
import assert from 'node:assert/strict'
import { copyFileSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fromArrayBuffer } from 'geotiff'

/** The US survey foot: NIST SP 811, B.6 [m]. */
const US_FOOT_M = 1200 / 3937

const files = [
  'landxml-us-survey-feet.xml',
  'float64-us-feet.tif',
  'turned.tif',
  'points.csv',
  'points-rfc7946.geojson',
  'dxf-feet-r2010.dxf',
  'dxf-no-unit-r12.dxf',
  'dxf-ogr.dxf',
]

/** Registers the tests with what run.mjs hands in: how to run a line, and where. */
export function surveyFileTests({ test, lynchet, good, read, gridOf, folder, root }) {
  const truthFile = (name) => readFileSync(join(root, 'tests/truth/files', name), 'utf8')
  for (const name of files) copyFileSync(join(root, 'tests/truth/files', name), join(folder, name))
  const volcano = (name) => gridOf(readFileSync(join(root, 'tests/truth/volcano', name), 'utf8'))
  const ground = (text) => JSON.parse(text).survey.ground

  test('read: each format is told by what it holds, with unit, system and parts; twice the same bytes', () => {
    const expected = {
      'landxml-us-survey-feet.xml': ['landxml', 'us-ft', 2264, 4],
      'float64-us-feet.tif': ['geotiff', 'us-ft', 2263, 1],
      'points.csv': ['table', null, undefined, 1],
      'points-rfc7946.geojson': ['geojson', 'm', 4326, 1],
      'dxf-feet-r2010.dxf': ['dxf', 'ft', undefined, 3],
      'dxf-no-unit-r12.dxf': ['dxf', null, undefined, 3],
    }
    for (const [name, understood] of Object.entries(expected)) {
      const json = good(['read', name, '--json'])
      const { format, unit, crs, parts } = JSON.parse(json)
      assert.deepEqual([format, unit, crs?.epsg, parts.length], understood, name)
      assert.equal(good(['read', name, '--json']), json)
      assert.ok(good(['read', name]).startsWith(`FORMAT  ${format}`))
    }
    const { parts } = JSON.parse(good(['read', 'landxml-us-survey-feet.xml', '--json']))
    // LandXML 1.2 schema: northing comes first, so 540000 is north.
    assert.deepEqual(parts[0].extent, { west: 1500000, south: 540000, east: 1500060, north: 540040 })
  })

  test('new --survey, LandXML 1.2 schema in US survey feet: 60 by 40 ft, northing first, placed by EPSG 2264', () => {
    const line = ['new', '--survey', 'landxml-us-survey-feet.xml', '--part', 'EG & bank']
    const plan = good(line)
    const { points, faces, breaklines } = ground(plan)
    const feet = [
      [0, 0, 812],
      [0, 40, 815],
      [60, 40, 814],
      [60, 0, 811],
      [30, 20, 813.5],
    ]
    feet.forEach(([east, north, level], at) => {
      assert.ok(Math.abs(points[at].eastM - east * US_FOOT_M) < 1e-6)
      assert.ok(Math.abs(points[at].northM - north * US_FOOT_M) < 1e-6)
      assert.ok(Math.abs(points[at].levelM - level * US_FOOT_M) < 1e-9)
    })
    assert.deepEqual([faces.length, breaklines.length, breaklines[0].kind], [4, 2, 'toe'])
    assert.equal(good(line), plan)
    assert.ok(lynchet(line).err.includes('moved by 457200.914'))
    const findings = JSON.parse(good(['assess', '-', '--json', '--without-layers'], plan))
    assert.ok(Math.abs(findings.surface.fallM - 4 * US_FOOT_M) < 1e-3)
    const drawn = findings.zones.reduce((sum, { planAreaM2 }) => sum + planAreaM2, 0)
    assert.ok(Math.abs(drawn - 60 * 40 * US_FOOT_M ** 2) < 0.05, `${drawn} m² on plan`)
  })

  test('new --survey, GeoTIFF written by GDAL 3.6.2 in US survey feet: every level, and EPSG 2263 near New York', () => {
    good(['new', '--survey', 'float64-us-feet.tif', '--name', 'Grid in feet', '--out', 'feet.lynchet.json'])
    const plan = JSON.parse(read('feet.lynchet.json'))
    const { levels } = JSON.parse(truthFile('gdal.json')).rasters['float64-us-feet.tif']
    assert.deepEqual(
      plan.survey.ground.levelsM,
      levels.map((level) => (level === null ? null : level * US_FOOT_M)),
    )
    assert.ok(Math.abs(plan.site.latitudeDeg - 40.73) < 0.05 && Math.abs(plan.site.longitudeDeg + 74) < 0.05)
    assert.ok(good(['check', 'feet.lynchet.json']).includes('sound plan'))
  })

  test('new --survey, GeoJSON written by GDAL 3.6.2 in degrees: places of PROJ 9.1.1, to 1 mm', () => {
    const { pointsLocal } = JSON.parse(truthFile('gdal.json'))
    const { points } = ground(good(['new', '--survey', 'points-rfc7946.geojson']))
    const [first] = points
    const [, eastM, northM] = pointsLocal[0]
    pointsLocal.forEach(([mark, east, north, level], at) => {
      assert.equal(points[at].mark, mark)
      assert.ok(Math.abs(points[at].eastM - first.eastM - (east - eastM)) < 1e-3, mark)
      assert.ok(Math.abs(points[at].northM - first.northM - (north - northM)) < 1e-3, mark)
      assert.equal(points[at].levelM, level)
    })
  })

  test('new --survey asks instead of guessing, and writes nothing until it is answered', () => {
    const place = ['--latitude', '51', '--longitude', '0']
    const asked = [
      [['dxf-no-unit-r12.dxf', '--part', 'GROUND: faces', ...place], 'unit'],
      [['dxf-no-unit-r12.dxf', '--unit', 'm', ...place], 'parts'],
      [['dxf-ogr.dxf', '--part', 'SPOT: points', ...place], '$INSUNITS'],
      [['landxml-us-survey-feet.xml', '--part', 'Nonsuch'], 'parts'],
    ]
    for (const [words, where] of asked) {
      const { code, out, err } = lynchet(['new', '--survey', ...words])
      assert.deepEqual([code, out], [1, ''], words.join(' '))
      assert.ok(err.startsWith(`${where}:`) || err.includes(`\n${where}:`), err)
    }
    const answered = ['dxf-no-unit-r12.dxf', '--part', 'GROUND: faces', '--unit', 'ft', ...place]
    const { points } = ground(good(['new', '--survey', ...answered]))
    const { pointsM } = JSON.parse(truthFile('dxf-provenance.json'))
    assert.ok(Math.abs(points[0].levelM - pointsM[0][2] * 0.3048) < 1e-9)
  })

  test('survey files that are damaged end with 1, words not understood with 2, and print nothing', () => {
    writeFileSync(join(folder, 'cut.xml'), truthFile('landxml-us-survey-feet.xml').slice(0, 700))
    writeFileSync(join(folder, 'noise.bin'), Buffer.from([1, 2, 3, 0, 255, 254, 7, 7]))
    for (const name of ['cut.xml', 'noise.bin', 'turned.tif'])
      for (const line of [
        ['read', name],
        ['new', '--survey', name, '--latitude', '51', '--longitude', '0'],
      ]) {
        const { code, out, err } = lynchet(line)
        assert.deepEqual([code, out], [1, ''], line.join(' '))
        assert.ok(err.length > 20 && !/\bat .*\.mjs:/.test(err), err)
      }
    const wrong = [
      ['read'],
      ['read', 'no-such-file.xml'],
      ['read', 'landxml-us-survey-feet.xml', '--columns', 'PENZ'],
      ['new', '--survey', 'points.csv', '--unit', 'yards'],
      ['new', '--survey', 'points.csv', '--columns', 'ZZZ'],
      ['new', '--survey', 'points.csv', '--unit', 'm'],
      ['new', '--survey', 'float64-us-feet.tif', '--window', '1,2,0,4'],
    ]
    for (const line of wrong) assert.equal(lynchet(line).code, 2, line.join(' '))
  })

  test('layer --out F.tif: a GeoTIFF that the geotiff library reads, GRASS r.slope.aspect in every interior cell', async () => {
    good(['layer', 'volcano.lynchet.json', 'slope', '--out', 'slope.tif'])
    good(['layer', 'volcano.lynchet.json', 'slope', '--out', 'again.tif'])
    const bytes = readFileSync(join(folder, 'slope.tif'))
    assert.ok(bytes.equals(readFileSync(join(folder, 'again.tif'))))
    const theirs = volcano('grass_slope_horn_deg.asc')
    const buffer = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length)
    const image = await (await fromArrayBuffer(buffer)).getImage()
    assert.deepEqual([image.getWidth(), image.getHeight()], [87, 61])
    assert.deepEqual(image.getResolution().slice(0, 2), [10, -10])
    assert.deepEqual(image.getOrigin().slice(0, 2), [
      theirs.xllcorner,
      theirs.yllcorner + theirs.nrows * theirs.cellsize,
    ])
    const [ours] = await image.readRasters()
    theirs.cells.forEach((value, cell) => {
      if (value !== null) assert.ok(Math.abs(ours[cell] - value) < 1e-4, `cell ${cell}`)
    })
  })

  test('layer tpi --radius: SAGA 8.5.0 with radii of 3 and 10 cells, every cell to 1 mm', () => {
    for (const radius of [3, 10]) {
      const ours = gridOf(good(['layer', 'volcano.lynchet.json', 'tpi', '--radius', `${radius}`]))
      const theirs = volcano(`saga_tpi_r${radius}_m.asc`)
      let compared = 0
      theirs.cells.forEach((value, cell) => {
        if (value === null) return
        compared++
        assert.ok(Math.abs(ours.cells[cell] - value) <= 1e-3, `radius ${radius}, cell ${cell}`)
      })
      assert.ok(compared > 5000, `${compared} cells compared`)
    }
    for (const radius of ['0', 'wide', '-3'])
      assert.equal(lynchet(['layer', 'volcano.lynchet.json', 'tpi', '--radius', radius]).code, 2, radius)
  })

  /** A roof of two planes that fall 1 in 2 from a ridge at east 10, 5 m up, to east 0 and 20. */
  const ridge = () => {
    writeFileSync(
      join(folder, 'ridge.csv'),
      'east,north,level\n0,0,0\n0,12,0\n10,0,5\n10,12,5\n20,0,0\n20,12,0\n',
    )
    const plan = JSON.parse(good(['new', '--levels', 'ridge.csv', '--latitude', '51', '--longitude', '0']))
    const at = { eastM: 2, northM: 6 }
    plan.survey.viewpoints = [{ id: 'bench', name: 'Bench', kind: 'seat', at, eyeM: 1.2 }]
    return JSON.stringify(plan)
  }

  test('layer seen --from: similar triangles, a ridge hides all that lies behind it and nothing before it', () => {
    const plan = ridge()
    for (const name of ['Bench', 'bench']) {
      const seen = gridOf(good(['layer', '-', 'seen', '--from', name], plan))
      seen.cells.forEach((value, cell) => {
        const eastM = ((cell % seen.ncols) + 0.5) * seen.cellsize + seen.xllcorner
        if (Math.abs(eastM - 10) > seen.cellsize) assert.equal(value, eastM < 10 ? 1 : 0, `east ${eastM}`)
      })
    }
    assert.equal(lynchet(['layer', '-', 'seen', '--from', 'Window'], plan).code, 2)
    assert.equal(lynchet(['layer', '-', 'seen'], plan).code, 2)
  })

  test('trace: a plane of 1 in 2 by trigonometry; two slopes of a ridge; off the plot', () => {
    const plane = good(['new', '--bank', '12,1:2,180,30', '--latitude', '51', '--longitude', '0'])
    const line = ['trace', '-', '--at', '2,1', '--json']
    const traced = JSON.parse(good(line, plane))
    assert.equal(good(line, plane), good(line, plane))
    // 12 m along a slope of 1 in 2 fall 12 / √5 m over 24 / √5 m; its middle lies at the origin.
    const planM = 24 / Math.sqrt(5)
    const near = (value, exact, within) =>
      assert.ok(Math.abs(value - exact) <= within, `${value}, not ${exact}`)
    near(traced.levelM, (planM / 2 + 1) / 2, 1e-3)
    near(traced.slopeDeg, 26.565, 0.01)
    near(traced.facesDeg, 180, 1e-6)
    assert.equal(traced.drop.ends, 'boundary')
    near(traced.drop.lengthM, planM / 2 + 1, 0.01)
    near(traced.drop.points.at(-1).eastM, 2, 1e-6)
    near(traced.steepestLine.fallM, planM / 2, 0.01)
    const text = good(['trace', '-', '--at', '2,1'], plane)
    for (const part of ['3.183 m', '26.6°', 'leaves the plot']) assert.ok(text.includes(part), part)
    const west = JSON.parse(good(['trace', '-', '--at', '6,6', '--json'], ridge()))
    const east = JSON.parse(good(['trace', '-', '--at', '14,6', '--json'], ridge()))
    assert.deepEqual([west.facesDeg, east.facesDeg], [270, 90])
    near(west.drop.points.at(-1).eastM, 0, 0.01)
    near(east.drop.points.at(-1).eastM, 20, 0.01)
    const off = lynchet(['trace', '-', '--at', '99,1'], plane)
    assert.deepEqual([off.code, off.out], [1, ''])
    for (const at of [[], ['--at', '2'], ['--at', '2,1,3'], ['--at', 'here']])
      assert.equal(lynchet(['trace', '-', ...at], plane).code, 2, at.join(' '))
    assert.equal(lynchet(['trace', '-', '--at', '2,1'], 'not json').code, 1)
  })

  test('contours: GeoJSON whose lines lie on a plane of 1 in 2 at their levels, every interval there', () => {
    const plane = good(['new', '--bank', '12,1:2,180,30', '--latitude', '51', '--longitude', '0'])
    const planM = 24 / Math.sqrt(5)
    for (const interval of [0.25, 0.5, 1]) {
      const text = good(['contours', '-', '--interval', `${interval}`], plane)
      assert.equal(good(['contours', '-', '--interval', `${interval}`], plane), text)
      const { type, intervalM, features } = JSON.parse(text)
      assert.deepEqual([type, intervalM], ['FeatureCollection', interval])
      const levels = new Set(features.map(({ properties }) => properties.levelM))
      const fallM = planM / 2
      const wanted = Array.from({ length: Math.floor(fallM / interval) }, (_, at) => (at + 1) * interval)
      for (const level of wanted) assert.ok(levels.has(level), `${level} m is missing`)
      for (const { geometry, properties } of features) {
        assert.equal(geometry.type, 'LineString')
        const lengthM = Math.abs(geometry.coordinates.at(-1)[0] - geometry.coordinates[0][0])
        assert.ok(Math.abs(lengthM - 30) < 0.01, 'it runs from side to side')
        for (const [, northM] of geometry.coordinates)
          assert.ok(Math.abs(northM - (2 * properties.levelM - planM / 2)) < 1e-3)
      }
    }
    good(['contours', '-', '--out', 'lines.geojson'], plane)
    assert.equal(JSON.parse(read('lines.geojson')).intervalM > 0, true)
    for (const interval of ['0', '-1', 'narrow', '0.0001'])
      assert.equal(lynchet(['contours', '-', '--interval', interval], plane).code, 2, interval)
    assert.equal(lynchet(['contours'], plane).code, 2)
    assert.equal(lynchet(['contours', '-'], 'not json').code, 1)
  })
}
