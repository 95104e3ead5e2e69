import { describe, expect, it } from 'vitest'
import { groundOf, readSurveyFile } from '../../src/files'
import { bytesOf, truth, understood, wrongWith } from './gdal-truth'

const readable = Object.entries(truth.rasters).filter(([name]) => !/oblong|squared/.test(name))

describe('grids written by GDAL 3.6.2', () => {
  it.each(readable)('%s: place, size and every level are what GDAL reads', async (name, raster) => {
    const read = await understood(name)
    const grid = read.parts[0]?.grid
    expect(grid).toMatchObject({ columns: raster.columns, rows: raster.rows })
    expect(grid?.westM).toBeCloseTo(raster.west, 9)
    expect(grid?.southM).toBeCloseTo(raster.north - raster.rows * raster.cellNorth, 8)
    expect(grid?.cellM).toBeCloseTo(raster.cellEast, 12)
    // GDAL holds the figures of an ASCII grid in single precision; we keep what is written.
    const held = name.endsWith('.asc') ? Math.fround : (level: number) => level
    expect(grid?.levelsM.map((level) => (level === null ? null : held(level)))).toEqual(
      raster.levels.map((level) => (level === null ? null : level * (raster.scale ?? 1))),
    )
  })

  it.each(readable.filter(([name]) => name.endsWith('.tif')))(
    '%s: coordinate system is the one that GDAL names',
    async (name, { epsg }) => {
      const read = await understood(name)
      // GDAL gives no code for a system with levels of its own; its horizontal part is 2263.
      expect(read.crs?.epsg).toBe(name.includes('us-feet') ? 2263 : (epsg ?? undefined))
    },
  )

  it('float64-us-feet.tif: US survey feet across and up, and EPSG 2263 lies on Long Island', async () => {
    const read = await understood('float64-us-feet.tif')
    expect([read.unit, read.levelUnit]).toEqual(['us-ft', 'us-ft'])
    const made = groundOf(read, { partIds: ['grid'], unit: 'us-ft' })
    const raster = truth.rasters['float64-us-feet.tif']
    // The US survey foot is 1200/3937 m: NIST SP 811, B.6.
    const footM = 1200 / 3937
    expect(made.ok && made.value.shift).toEqual({ eastM: 984_300 * footM, northM: 205_000 * footM })
    expect(made.ok && made.value.ground).toMatchObject({ westM: 0, southM: 0, cellM: 1.5 * footM })
    expect(made.ok && made.value.ground.kind === 'grid' && made.value.ground.levelsM).toEqual(
      raster?.levels.map((level) => (level === null ? null : level * footM)),
    )
    expect(made.ok && made.value.site?.latitudeDeg).toBeCloseTo(40.73, 1)
    expect(made.ok && made.value.site?.longitudeDeg).toBeCloseTo(-74, 1)
  })

  it('oblong.asc: cells of 0.5 by 0.75 are read anew on square ones as gdalwarp -r bilinear does', async () => {
    const read = await understood('oblong.asc')
    expect(read.parts[0]).toMatchObject({ cellNorth: 0.75, grid: { cellM: 0.5 } })
    const made = groundOf(read, { partIds: ['grid'], unit: 'm' })
    const raster = truth.rasters['oblong-squared.tif']
    const ground = made.ok && made.value.ground
    expect(ground).toMatchObject({ kind: 'grid', columns: 12, rows: 8, cellM: 0.5, westM: 0, southM: 0.125 })
    const ours = ground && ground.kind === 'grid' ? ground.levelsM : []
    const compared = ours.flatMap((level, at) => {
      const theirs = raster?.levels[at]
      return level === null || theirs === null || theirs === undefined ? [] : [Math.abs(level - theirs)]
    })
    expect(compared.length).toBeGreaterThan(85)
    // Single precision at 108 m.
    expect(Math.max(...compared)).toBeLessThan(1e-5)
  })

  it.each([
    ['float32-4326.tif', 'm'],
    ['degrees.asc', 'm'],
  ] as const)('%s: cells in degrees are brought to square metres as gdalwarp does', async (name, unit) => {
    const read = await understood(name)
    expect(read.inDegrees).toBe(true)
    const made = groundOf(read, { partIds: ['grid'], unit })
    expect(made.ok && made.value.site).toEqual({ latitudeDeg: 55.40009, longitudeDeg: 10.20012 })
    const raster = truth.rasters['degrees-squared.tif']
    const ground = made.ok && made.value.ground
    expect(ground).toMatchObject({ kind: 'grid', columns: raster?.columns, rows: raster?.rows, cellM: 1.27 })
    const ours = ground && ground.kind === 'grid' ? ground.levelsM : []
    const apart = ours.flatMap((level, at) => {
      const theirs = raster?.levels[at]
      return level === null || theirs === null || theirs === undefined ? [] : [Math.abs(level - theirs)]
    })
    expect(apart.length).toBeGreaterThan(140)
    expect(Math.max(...apart)).toBeLessThan(1e-4)
  })

  it('three-bands.tif is no elevation model, turned.tif has no rows that run west to east', async () => {
    expect(await wrongWith(bytesOf('three-bands.tif'))).toContain('3 bands')
    expect(await wrongWith(bytesOf('turned.tif'))).toContain('turned')
  })

  it('bytes that are a view of a larger buffer are read as they stand', async () => {
    const bytes = bytesOf('float32-27700.tif')
    const larger = new Uint8Array(bytes.length + 100)
    larger.set(bytes, 100)
    const read = await readSurveyFile(Buffer.from(larger.buffer, 100), 'view.tif')
    expect(read.ok && read.value.format).toBe('geotiff')
  })

  it('a TIFF cut short is told, not half read', async () => {
    expect(await wrongWith(bytesOf('float32-27700.tif').slice(0, 300))).toContain('cannot be read')
  })
})
