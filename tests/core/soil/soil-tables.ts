import { readFileSync } from 'node:fs'
import { soilTablesSchema, type SoilSample, type SoilTables, type Texture } from '#core/soil'

const read = (path: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8'))

/** Published values of tests/truth, shaped as the test says. */
export const truth = <Shape>(name: string): Shape => read(`tests/truth/${name}.json`) as Shape

export const soilTables: SoilTables = soilTablesSchema.parse({
  classes: read('data/soil/classes.json'),
  compaction: read('data/soil/compaction.json'),
  drainage: read('data/soil/drainage.json'),
  erodibility: read('data/soil/erodibility.json'),
})

/** A plain pit of a texture, to vary. */
export const pit = (texture: Texture, changes: Partial<SoilSample> = {}): SoilSample => ({
  id: 'pit',
  name: 'Pit',
  texture,
  depthM: 1,
  stonesPercent: 0,
  organicPercent: 2.5,
  compaction: 'normal',
  ...changes,
})
