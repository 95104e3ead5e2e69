import fc from 'fast-check'
import { expect, it, vi } from 'vitest'
import { broken } from './fuzz-bytes'
import { FUZZ_RUNS, survives } from './fuzz-check'
import { bytesOf } from './gdal-truth'

it(
  'GeoTIFF: 20,000 malformed files give a plain problem or a right result',
  { timeout: 60_000 },
  async () => {
    const tiffs = [
      'float32-27700.tif',
      'float64-tiled-deflate.tif',
      'int16-packbits.tif',
      'float32-lzw-25832.tif',
      'float32-4326.tif',
      'big-endian.tif',
    ].map(bytesOf)
    // The library says on the console what it then throws.
    vi.spyOn(console, 'warn').mockImplementation(() => undefined)
    await fc.assert(fc.asyncProperty(broken(tiffs), survives), { numRuns: FUZZ_RUNS, seed: 34 })
    expect.hasAssertions()
  },
)
