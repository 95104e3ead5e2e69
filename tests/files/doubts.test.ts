import { describe, expect, it } from 'vitest'
import { groundOf } from '../../src/files'
import { understoodText } from './gdal-truth'

const doubtsOf = async (text: string) => (await understoodText(text)).doubts

describe('what looks wrong is asked, not put right (common practice, no source)', () => {
  it('levels of exactly zero apart from all others, and they can be left out', async () => {
    const read = await understoodText('E,N,Z\n0,0,101\n10,0,102\n0,10,103\n10,10,0\n5,5,102')
    expect(read.doubts.map(({ about }) => about)).toContain('levels')
    const made = groundOf(read, { partIds: ['points'], unit: 'm', zeroLevels: 'leave-out' })
    expect(made.ok && made.value.ground.kind === 'levels' && made.value.ground.points.length).toBe(4)
  })

  it('a zero among levels around it is a level', async () => {
    expect(await doubtsOf('E,N,Z\n0,0,-0.4\n10,0,0\n0,10,0.5\n10,10,0.2')).toEqual([])
  })

  it('a lost decimal point: ten, a hundred, a thousand times its neighbours', async () => {
    for (const wrong of ['1021', '10210', '102100']) {
      const [doubt] = await doubtsOf(
        `P,E,N,Z\na,0,0,101.5\nb,10,0,102.3\nc,0,10,103.1\nd,10,10,${wrong}\ne,5,5,102.2`,
      )
      expect(doubt?.what).toContain(`d ${wrong} (rather 102.1?)`)
    }
  })

  it('one column constant, two levels at one place, more fall than extent', async () => {
    const about = async (text: string) => (await doubtsOf(text)).map(({ about: one }) => one)
    expect(await about('E,N,Z\n0,0,5\n10,0,5\n0,10,5\n10,10,5')).toContain('levels')
    expect(await about('E,N,Z\n7,0,1\n7,10,2\n7,20,3')).toContain('columns')
    expect(await about('E,N,Z\n0,0,1\n10,0,2\n0,10,3\n0,0,2.5')).toContain('places')
    expect(await about('E,N,Z\n0,0,100\n10,0,150\n0,10,190')).toContain('unit')
  })

  it('levels that no ground on Earth has, in the unit that the headings name', async () => {
    const doubts = await doubtsOf('E (m),N (m),Z (m)\n0,0,12000\n10000,0,12050\n0,10000,12100')
    expect(doubts.map(({ about }) => about)).toContain('unit')
  })

  it('swapped columns: Lambert-93 fits only the other way round', async () => {
    // Paris lies at 650 km east and 6860 km north.
    const far = 'E (m),N (m),Z (m)\n6860000,650000,20\n6860020,650000,21\n6860000,650030,22'
    expect((await doubtsOf(far)).map(({ about }) => about)).toContain('columns')
  })
})

describe('a wrong label is noticed by where the survey would lie (EPSG dataset v10.076)', () => {
  const geojson = (epsg: number, east: number, north: number) =>
    JSON.stringify({
      type: 'FeatureCollection',
      crs: { type: 'name', properties: { name: `urn:ogc:def:crs:EPSG::${epsg}` } },
      features: [
        [0, 0, 10],
        [30, 0, 11],
        [0, 30, 12],
      ].map(([dx = 0, dy = 0, level]) => ({
        type: 'Feature',
        properties: {},
        geometry: { type: 'Point', coordinates: [east + dx, north + dy, level] },
      })),
    })

  it('feet called metres: New York Long Island in feet under the code of its metres', async () => {
    // The same place is 984300, 205000 in EPSG:2263 (US survey feet).
    const doubts = await doubtsOf(geojson(32118, 984_300, 205_000))
    expect(doubts.map(({ about }) => about)).toEqual(['unit'])
    expect(await doubtsOf(geojson(2263, 984_300, 205_000))).toEqual([])
  })

  it('metres called metres, without a system, and feet of California called metres', async () => {
    const table = (east: number, north: number) =>
      `E (m),N (m),Z (m)\n${east},${north},10\n${east + 30},${north},11\n${east},${north + 30},12`
    expect(await doubtsOf(table(432_100, 114_200))).toEqual([])
    expect((await doubtsOf(table(6_050_000, 2_120_000))).map(({ about }) => about)).toEqual(['unit'])
  })

  it('east and north swapped under a known code; a code of elsewhere', async () => {
    expect((await doubtsOf(geojson(2193, 5_920_000, 1_757_000))).map(({ about }) => about)).toEqual([
      'columns',
    ])
    expect((await doubtsOf(geojson(27700, 3_500_000, 5_800_000))).map(({ about }) => about)).toEqual(['crs'])
  })
})
