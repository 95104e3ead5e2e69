import { expect } from 'vitest'
import { groundSurveySchema } from '../../src/core/survey'
import { groundOf, readSurveyFile } from '../../src/files'

/** Malformed files each importer must survive. */
export const FUZZ_RUNS = 20_000

/**
 * A file must give a plain problem or a right result: every figure finite, every part whole, and ground that a plan
 * accepts; never a throw.
 */
export async function survives(bytes: Uint8Array): Promise<void> {
  const read = await readSurveyFile(bytes, 'fuzzed')
  if (!read.ok) {
    expect(read.problems.length).toBeGreaterThan(0)
    for (const { where, what, mend } of read.problems) expect(where && what && mend).toBeTruthy()
    return
  }
  for (const part of read.value.parts) {
    expect(
      part.points.every(({ eastM, northM, levelM }) => [eastM, northM, levelM].every(Number.isFinite)),
    ).toBe(true)
    if (part.grid) expect(part.grid.levelsM.length).toBe(part.grid.columns * part.grid.rows)
    const made = groundOf(read.value, { partIds: [part.id], unit: read.value.unit ?? 'm' })
    if (made.ok) expect(groundSurveySchema.safeParse(made.value.ground).success).toBe(true)
    else expect(made.problems.every(({ what, mend }) => what !== '' && mend !== '')).toBe(true)
  }
}

/** Words and figures that break careless readers. */
export const hostile = [
  '__proto__',
  'constructor',
  'hasOwnProperty',
  'NaN',
  'Infinity',
  '-1e999',
  '1e308',
  '99999999999999999999',
  '-0',
  '',
  ' ',
  '\0',
  '\uFEFF',
  '"',
  "'",
  ',',
  ';',
  '\t',
  '1,5',
  '1.234,5',
  'ß',
  '💧',
  '0x10',
  '<script>',
  '=1+1',
] as const
