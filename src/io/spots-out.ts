import type { PlantVerdict } from '#core/plants'
import type { SpotFindings } from '#plan'
import { citedSources } from './cited-sources'
import { csvText, rounded, type CsvCell } from './csv-text'
import { verdictBody } from './findings-json'
import { shaped } from './shaped'
import { spotsSchema } from './spots.schema'

/** A place with what was asked about plants. */
export interface SpotOut {
  readonly found: SpotFindings
  /** The best plants; undefined when not asked for. */
  readonly plants: readonly PlantVerdict[] | undefined
  /** The verdict on the plant asked about; undefined when none was. */
  readonly plant: PlantVerdict | undefined
}

/**
 * Places as CSV, one row each: scores, classes and heat load, then plants where they were asked for.
 *
 * @param spots - what was found
 * @returns CSV text
 */
export function spotsCsv(spots: readonly SpotOut[]): string {
  const columns = [
    ...scoreColumns,
    ...(spots.some(({ plants }) => plants) ? plantColumns : []),
    ...(spots.some(({ plant }) => plant) ? verdictColumns : []),
  ]
  return csvText(
    columns.map(({ name }) => name),
    spots.map((spot) => columns.map(({ cell }) => cell(spot))),
  )
}

/**
 * Places as JSON with the level book behind every score (docs/schema/spots.md).
 *
 * @param spots - what was found
 * @returns the file's text
 */
export function spotsJson(spots: readonly SpotOut[]): string {
  const body = {
    format: 'lynchet-spots',
    version: 1,
    spots: spots.map(({ found, plants, plant }) => ({
      ...found,
      plants: (plants ?? []).map(verdictBody),
      plant: plant && verdictBody(plant),
    })),
  }
  return `${JSON.stringify(shaped(spotsSchema, { ...body, sources: citedSources(body) }), null, 1)}\n`
}

interface Column {
  readonly name: string
  readonly cell: (spot: SpotOut) => CsvCell
}

const scoreColumns: readonly Column[] = [
  { name: 'id', cell: ({ found }) => found.id },
  { name: 'wetnessScore', cell: ({ found }) => found.scores.wetness.value },
  { name: 'wetnessClass', cell: ({ found }) => found.scores.wetness.class },
  { name: 'sunScore', cell: ({ found }) => found.scores.sun.value },
  { name: 'sunClass', cell: ({ found }) => found.scores.sun.class },
  { name: 'heatLoad', cell: ({ found }) => rounded(found.heatLoad, 3) },
  { name: 'erosionScore', cell: ({ found }) => found.scores.erosion.value },
  { name: 'frostScore', cell: ({ found }) => found.scores.frost.value },
]

const plantColumns: readonly Column[] = [
  {
    name: 'plants',
    cell: ({ plants }) => plants?.map(({ plant, fit }) => `${plant.name} (${fit})`).join('; '),
  },
]

const verdictColumns: readonly Column[] = [
  { name: 'plant', cell: ({ plant }) => plant?.plant.name },
  { name: 'plantVerdict', cell: ({ plant }) => plant && (plant.offered ? 'offered' : 'refused') },
  { name: 'plantFit', cell: ({ plant }) => plant?.fit },
  { name: 'plantReasons', cell: ({ plant }) => plant && reasonWords(plant) },
]

/** Reasons for, then against; no sign leads them, since a spreadsheet would take it for a formula. */
function reasonWords({ reasons }: PlantVerdict): string {
  const said = (wanted: boolean) =>
    reasons
      .filter((reason) => reason.for === wanted)
      .map(({ because }) => because)
      .join(' ')
  const [good, bad] = [said(true), said(false)]
  return [good && `For: ${good}`, bad && `Against: ${bad}`].filter(Boolean).join(' ')
}
