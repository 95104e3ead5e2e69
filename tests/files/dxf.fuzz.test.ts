import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { readDxf } from '../../src/files/dxf'
import { damagedText, hostileWords } from './damaged-text'
import { unsound } from './read-soundness'

const SEED = 20261125
/** Files of each kind; together 20,000. */
const DAMAGED = 12_000
const BUILT = 6000
const CUT = 2000
/** Ten times what it takes on an idle machine [ms]. */
const PATIENCE_MS = 300_000

const folder = join(import.meta.dirname, '../truth/files')

/** The unit and the entities of a drawing alone: a short file, so that damage meets what is read. */
function entitiesOf(name: string): string {
  const lines = readFileSync(join(folder, name), 'utf8').split(/\r?\n/)
  const start = lines.findIndex(
    (line, at) => line.trim() === 'SECTION' && lines[at + 2]?.trim() === 'ENTITIES',
  )
  const end = lines.findIndex((line, at) => at > start && line.trim() === 'ENDSEC')
  return `0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n6\n0\nENDSEC\n0\n${lines.slice(start, end + 1).join('\n')}\n0\nEOF\n`
}

const whole = [
  entitiesOf('dxf-everything-r2010.dxf'),
  entitiesOf('dxf-no-unit-r12.dxf'),
  entitiesOf('dxf-ogr.dxf'),
]

const types = [
  'SECTION',
  'ENDSEC',
  'POINT',
  'TEXT',
  'MTEXT',
  'INSERT',
  'ATTRIB',
  'SEQEND',
  'LINE',
  'LWPOLYLINE',
  'POLYLINE',
  'VERTEX',
  '3DFACE',
  'LAYER',
  'ACAD_PROXY_ENTITY',
]
const codes = [
  1, 2, 3, 8, 9, 10, 11, 12, 13, 20, 21, 22, 23, 30, 31, 32, 33, 38, 42, 62, 67, 70, 71, 72, 73, 74,
]
const axes = [101, 210, 220, 230, 999, 1010]

const value = fc.oneof(
  fc.constantFrom(...hostileWords.map((word) => word.replace(/[\r\n]/g, ' '))),
  fc.constantFrom(
    '0',
    '1',
    '2',
    '3',
    '4',
    '8',
    '16',
    '64',
    '128',
    '192',
    '-1',
    '12.5',
    '7,25',
    'HEADER',
    'ENTITIES',
  ),
)
const pair = fc.tuple(fc.constantFrom(...codes, ...axes), value).map(([code, word]) => `${code}\n${word}\n`)
const record = fc
  .tuple(fc.constantFrom(...types), fc.array(pair, { maxLength: 14 }))
  .map(([type, pairs]) => `0\n${type}\n${pairs.join('')}`)
const built = fc
  .tuple(fc.array(record, { maxLength: 12 }), fc.boolean())
  .map(
    ([records, ended]) => `0\nSECTION\n2\nENTITIES\n${records.join('')}${ended ? '0\nENDSEC\n0\nEOF\n' : ''}`,
  )

const sound = (text: string) => {
  expect(unsound(readDxf(text))).toEqual([])
}

it(
  'survives 12,000 damaged DXF files',
  () => {
    let readable = 0
    fc.assert(
      fc.property(damagedText(whole), (text) => {
        const outcome = readDxf(text)
        if (outcome.ok) readable++
        expect(unsound(outcome)).toEqual([])
      }),
      { seed: SEED, numRuns: DAMAGED },
    )
    expect(readable, 'the damage must reach what is read').toBeGreaterThan(DAMAGED / 10)
  },
  PATIENCE_MS,
)

it(
  'survives 6,000 DXF files of senseless entities',
  () => fc.assert(fc.property(built, sound), { seed: SEED, numRuns: BUILT }),
  PATIENCE_MS,
)

it(
  'refuses 2,000 DXF files cut off before their last section ends: never half an import',
  () =>
    fc.assert(
      fc.property(fc.constantFrom(...whole), fc.integer({ min: 0, max: 999_999 }), (text, part) => {
        const outcome = readDxf(text.slice(0, Math.floor((part / 1e6) * text.lastIndexOf('ENDSEC'))))
        expect(outcome.ok).toBe(false)
        expect(unsound(outcome)).toEqual([])
      }),
      { seed: SEED, numRuns: CUT },
    ),
  PATIENCE_MS,
)
