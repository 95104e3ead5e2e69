import { describe, expect, it } from 'vitest'
import { groundOf, readSurveyFile, readWithColumns } from '../../src/files'
import { truth, understood, understoodText, utf8, wrongWith } from './gdal-truth'

const lines = [
  'Punkt;Rechtswert;Hochwert;Höhe;Code',
  'A1;1,5;2,25;10,125;Böschung',
  'A2;3,5;4,5;11,5;Fuß',
  'A3;5;9;12;Weg',
].join('\r\n')

const points = [
  { mark: 'A1', code: 'Böschung', eastM: 1.5, northM: 2.25, levelM: 10.125 },
  { mark: 'A2', code: 'Fuß', eastM: 3.5, northM: 4.5, levelM: 11.5 },
  { mark: 'A3', code: 'Weg', eastM: 5, northM: 9, levelM: 12 },
]

/** Bytes of Windows-1252: the first 256 code points of Unicode serve for these letters. */
const old = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0))

function utf16(text: string, little: boolean, mark: boolean): Uint8Array {
  const codes = [...(mark ? '\uFEFF' : ''), ...text].map((letter) => letter.charCodeAt(0))
  return Uint8Array.from(
    codes.flatMap((code) => (little ? [code & 255, code >> 8] : [code >> 8, code & 255])),
  )
}

describe('tables of points', () => {
  it.each([
    ['UTF-8', utf8(lines)],
    ['UTF-8 with a byte-order mark', utf8(`\uFEFF${lines}`)],
    ['UTF-16, low byte first, with its mark', utf16(lines, true, true)],
    ['UTF-16, high byte first, with its mark', utf16(lines, false, true)],
    ['UTF-16, low byte first, without', utf16(lines, true, false)],
    ['Windows-1252', old(lines)],
    ['old line ends', utf8(lines.replace(/\r\n/g, '\r'))],
  ])('%s: the same points, codes kept', async (_encoding, bytes) => {
    const read = await readSurveyFile(bytes, 'table')
    expect(read.ok && read.value.parts[0]?.points).toEqual(points)
    expect(read.ok && read.value.doubts).toEqual([])
  })

  it.each(['points.csv', 'points-tab.csv'])(
    '%s by ogr2ogr (GDAL 3.6.2): every figure as written',
    async (name) => {
      const read = await understood(name)
      expect(read.format).toBe('table')
      expect(read.parts[0]?.points).toEqual(
        truth.points.map(([mark, code, eastM, northM, levelM]) => ({ mark, code, eastM, northM, levelM })),
      )
    },
  )

  it('without headings the order is asked, and our reading and the usual orders are shown', async () => {
    const read = await understoodText(
      '1,114200.25,432100.5,101.3,TOP\n2,114203.1,432105.5,102.2,TOE\n3,114201,432110,98,TOE',
    )
    expect(read.doubts.map(({ about }) => about)).toContain('columns')
    expect(read.table?.orders.map(({ name }) => name)).toEqual(['PENZD', 'PNEZD'])
    const pnezd = read.table?.orders[1]?.columns
    const turned = pnezd && readWithColumns(read, pnezd)
    expect(turned?.ok && turned.value.parts[0]?.points[0]).toEqual({
      mark: '1',
      code: 'TOP',
      eastM: 432_100.5,
      northM: 114_200.25,
      levelM: 101.3,
    })
    expect(turned?.ok && turned.value.doubts).toEqual([])
  })

  it('titles, remarks and lines between are told; thousands are read', async () => {
    const read = await understoodText(
      '# site\nJob 12\nEast\tNorth\tLevel\n1,234.50\t2,345.25\t10.5\n1,235.50\t2,346.25\t11.5\n1,236.50\t2,340.25\t12.5\n',
    )
    expect(read.parts[0]?.points[0]).toEqual({ eastM: 1234.5, northM: 2345.25, levelM: 10.5 })
    expect(read.notes.join(' ')).toContain('line 1, 2')
  })

  it('commas that may be either are asked about', async () => {
    const read = await understoodText('E;N;Z\n1,234;2,345;10,125\n1,235;2,346;10,250\n1,236;2,340;10,500')
    expect(read.doubts.map(({ about }) => about)).toContain('decimals')
  })

  it('headings name the units: levels in feet over metres', async () => {
    const read = await understoodText('Easting (m),Northing (m),Elevation (ft)\n1,2,10\n30,4,20\n5,60,30')
    expect([read.unit, read.levelUnit]).toEqual(['m', 'ft'])
    const made = groundOf(read, { partIds: ['points'], unit: 'm' })
    expect(made.ok && made.value.ground.kind === 'levels' && made.value.ground.points[0]).toEqual({
      eastM: 1,
      northM: 2,
      levelM: 3.048,
    })
  })

  it('international yard and pound agreement (1959), NIST SP 811: 0.3048 m and 1200/3937 m, shifted first', async () => {
    const read = await understoodText(
      'E,N,Z\n6000000.01,2000000.02,100\n6000010.01,2000000.02,101\n6000000.01,2000010.02,102',
    )
    const level = (unit: 'ft' | 'us-ft') => {
      const made = groundOf(read, { partIds: ['points'], unit })
      return made.ok && made.value.ground.kind === 'levels' ? made.value.ground.points[1] : undefined
    }
    expect(level('ft')).toEqual({ eastM: 10.01 * 0.3048, northM: 0.02 * 0.3048, levelM: 101 * 0.3048 })
    const us = 1200 / 3937
    expect(level('us-ft')).toEqual({ eastM: 10.01 * us, northM: 0.02 * us, levelM: 101 * us })
  })

  it('names every line that cannot be used, and refuses what is no survey', async () => {
    expect(await wrongWith('E,N,Z\n1,2,3\n4,x,6\n7,8,\n1,1,1')).toMatch(/line 3, north.*line 4, level/s)
    expect(await wrongWith('')).toContain('empty')
    expect(await wrongWith(Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0))).toContain('packed')
    expect(await wrongWith('%PDF-1.7')).toContain('PDF')
    expect(await wrongWith('<kml></kml>')).toContain('not LandXML')
    expect(await wrongWith(new Uint8Array(65 * 1024 * 1024))).toContain('at most 64 MiB')
  })
})
