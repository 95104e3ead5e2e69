import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { surveyTablesSchema, type LevelBook } from '#core/booking'

const root = join(import.meta.dirname, '../../..')
const read = (file: string): unknown => JSON.parse(readFileSync(join(root, file), 'utf8'))

export const tables = surveyTablesSchema.parse({
  methods: read('data/survey/methods.json'),
  allowables: read('data/survey/allowables.json'),
  advice: read('data/survey/advice.json'),
})

export interface PrintedRow {
  mark?: string
  backM?: number
  interM?: number
  foreM?: number
  riseM?: number
  fallM?: number
  collimationM?: number
  levelM?: number
  adjustedM?: number
}

export interface LevellingTruth {
  booklet: {
    startM: number
    endM: number
    rows: PrintedRow[]
    sums: { backM: number; foreM: number; riseM: number; fallM: number; differenceM: number }
    misclosureM: number
    setUps: number
    perSetUpM: number
    setUpRuleMm: number
  }
  busse2011: {
    rows: PrintedRow[]
    sums: { backM: number; foreM: number; differenceM: number }
  }
  fgccThirdOrder: { lineKm: number; limitMm: number }
}

export const levelling = read('tests/truth/booking-levelling.json') as LevellingTruth

/** A level book of printed rows; only the sights are taken. */
export function levelBook(rows: readonly PrintedRow[], more: Partial<LevelBook> = {}): LevelBook {
  return {
    kind: 'level-book',
    id: 'book',
    name: 'Book',
    unit: 'm',
    reduction: 'rise-and-fall',
    startLevelM: 100,
    adjust: false,
    rows: rows.map(({ mark, backM, interM, foreM }) => ({
      ...(mark === undefined ? {} : { mark }),
      ...(backM === undefined ? {} : { backM }),
      ...(interM === undefined ? {} : { interM }),
      ...(foreM === undefined ? {} : { foreM }),
    })),
    ...more,
  }
}
