import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { groundOf } from '../../src/files/ground-of'
import { readSurveyFile } from '../../src/files/read-survey-file'

type Triple = readonly [number, number, number]

const folder = join(import.meta.dirname, '../truth/files')
const truth = JSON.parse(readFileSync(join(folder, 'dxf-provenance.json'), 'utf8')) as { pointsM: Triple[] }

/** Tenth of a millimetre [m]. */
const NEAR_M = 1e-4

/** Points of a file as a plan keeps them, from its first one. */
async function keptPoints(name: string, partIds: readonly string[]) {
  const read = await readSurveyFile(readFileSync(join(folder, name)), name)
  if (!read.ok) throw new Error(read.problems[0]?.what)
  const made = groundOf(read.value, { partIds, unit: read.value.unit ?? 'm' })
  if (!made.ok) throw new Error(made.problems[0]?.what)
  const { ground } = made.value
  if (ground.kind !== 'levels') throw new Error(`not levels but ${ground.kind}`)
  return ground
}

const fromFirst = (points: readonly Triple[]) =>
  points.map(([east, north, level]) => {
    const [firstEast, firstNorth] = points[0] ?? [0, 0]
    return [east - firstEast, north - firstNorth, level]
  })

it.each([
  ['ezdxf 1.4.4, metres', 'dxf-metres-r2018.dxf', 'points:SPOT LEVELS', 5],
  ['ezdxf 1.4.4, feet', 'dxf-feet-r2010.dxf', 'points:SPOT LEVELS', 5],
  ['ezdxf 1.4.4, US survey feet', 'dxf-us-survey-feet-r2000.dxf', 'points:SPOT LEVELS', 5],
  ['LandXML writer of a QGIS plugin, metres', 'landxml-mesh-writer.xml', 'surface:A', 5],
  ['LandXML 1.0 schema by hand, metres', 'landxml-prefixed-1-0.xml', 'surface:OG', 3],
])('%s: the file becomes ground in metres to a tenth of a millimetre', async (_, name, part, count) => {
  const { points } = await keptPoints(name, [part])
  const found = fromFirst(points.map(({ eastM, northM, levelM }): Triple => [eastM, northM, levelM]))
  const wanted = fromFirst(truth.pointsM.slice(0, count))
  expect(found).toHaveLength(count)
  found.forEach((row, at) =>
    row.forEach((value, axis) =>
      expect(Math.abs(value - (wanted[at]?.[axis] ?? Number.NaN))).toBeLessThan(NEAR_M),
    ),
  )
})

it('ezdxf 1.4.4: points and lines of several layers are taken together, lines with ids of their own', async () => {
  const ground = await keptPoints('dxf-everything-r2010.dxf', [
    'texts:LEVELS',
    'lines:CONTOURS',
    'lines:SITE BOUNDARY',
  ])
  expect(ground.points).toHaveLength(12)
  const ids = (ground.breaklines ?? []).map(({ id }) => id)
  expect(ids).toHaveLength(3)
  expect(new Set(ids).size).toBe(3)
})

it('LandXML 1.2 schema, US survey feet by hand: triangles come along, 40 ft are 12.192024 m in level too', async () => {
  const read = await readSurveyFile(readFileSync(join(folder, 'landxml-us-survey-feet.xml')), 'survey.xml')
  if (!read.ok) throw new Error(read.problems[0]?.what)
  const made = groundOf(read.value, { partIds: ['surface:EG & bank'], unit: 'us-ft' })
  if (!made.ok) throw new Error(made.problems[0]?.what)
  const { ground, boundary } = made.value
  if (ground.kind !== 'levels') throw new Error(`not levels but ${ground.kind}`)
  expect(ground.faces).toHaveLength(4)
  expect(boundary).toHaveLength(4)
  const [one, other] = ground.points
  expect(((other?.levelM ?? 0) - (one?.levelM ?? 0)) / 3).toBeCloseTo(1200 / 3937, 6)
  const apartM = Math.hypot(
    (other?.eastM ?? 0) - (one?.eastM ?? 0),
    (other?.northM ?? 0) - (one?.northM ?? 0),
  )
  expect(Math.abs(apartM - (40 * 1200) / 3937)).toBeLessThan(NEAR_M)
})

it('worked by hand: layer names in an old encoding (Windows-1252) and \\U+ escapes are read, and said so', async () => {
  const drawing =
    '0\nSECTION\n2\nENTITIES\n0\nPOINT\n8\nBöschung\n10\n1\n20\n2\n30\n3\n0\nPOINT\n8\nM\\U+00FCnster\n10\n1\n20\n2\n30\n3\n0\nENDSEC\n0\nEOF\n'
  const read = await readSurveyFile(Buffer.from(drawing, 'latin1'), 'old.dxf')
  if (!read.ok) throw new Error(read.problems[0]?.what)
  expect(read.value.parts.map(({ id }) => id)).toEqual(['points:Böschung', 'points:Münster'])
  expect(read.value.notes.some((note) => note.includes('Windows-1252'))).toBe(true)
})
