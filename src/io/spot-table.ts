import type { Place } from '#core/climate'
import type { PlantRegion } from '#core/plants'
import { textureClasses, type SoilSample } from '#core/soil'
import type { Outcome, Problem } from '#core/units'
import { regionAt, spotForms, usualSoil, type Spot } from '#plan'
import { spotCells, type SpotCells } from './spot-cells'
import { spotClimate } from './spot-climate'
import { figureColumns, knownColumns, neededColumns, positionWords } from './spot-columns'
import { toNumber } from './table-numbers'
import { readTextTable, type TextTable } from './text-table'

/** What goes for every row. */
export interface SpotReading {
  readonly places: readonly Place[]
  /** Where plants are bought; guessed from the place or the hemisphere when not said. */
  readonly plantRegion?: PlantRegion
  readonly legalRegion?: string
}

/** Places as read, and columns that nobody reads. */
export interface ReadSpots {
  readonly spots: readonly Spot[]
  readonly ignoredColumns: readonly string[]
}

/**
 * Places on slopes from a CSV file, one row each.
 *
 * @param text - the file
 * @param reading - what goes for every row
 * @returns every place, or every problem by row and column
 */
export function spotsFromText(text: string, reading: SpotReading): Outcome<ReadSpots> {
  const table = readTextTable(text)
  if (!table.ok) return table
  const missing = missingColumns(table.value)
  if (missing.length > 0) return { ok: false, problems: missing }
  const problems: Problem[] = []
  const spots = table.value.rows.flatMap((_, index) => {
    const cells = spotCells(table.value, index, problems)
    return spotOf(cells, reading, table.value.decimalMark) ?? []
  })
  if (problems.length > 0) return { ok: false, problems }
  const known = knownColumns.map((name) => name.toLowerCase())
  const ignoredColumns = table.value.columns.filter((name) => !known.includes(name.toLowerCase()))
  return { ok: true, value: { spots, ignoredColumns } }
}

function missingColumns({ columns }: TextTable): Problem[] {
  const there = columns.map((name) => name.toLowerCase())
  return neededColumns
    .filter((name) => !there.includes(name.toLowerCase()))
    .map((name) => ({
      where: 'heading row',
      what: `There is no column “${name}”.`,
      mend: `The first row must name the columns ${neededColumns.join(', ')}.`,
    }))
}

function spotOf(cells: SpotCells, reading: SpotReading, decimalMark: '.' | ','): Spot | undefined {
  const ground = groundOf(cells, decimalMark)
  const soil = soilOf(cells)
  const climate = spotClimate(cells, reading.places, ground?.latitudeDeg)
  if (!ground || !soil || !climate) return undefined
  return {
    ...ground,
    soil,
    elevationM: climate.elevationM,
    climate: climate.climate,
    plantRegion: reading.plantRegion ?? usualRegion(climate.place, ground.latitudeDeg),
    legalRegion: reading.legalRegion,
  }
}

/** Where plants are bought: at the listed place, or in the temperate lands of the hemisphere. */
function usualRegion(place: Place | undefined, latitudeDeg: number): PlantRegion {
  if (place) return regionAt(place.latitudeDeg, place.longitudeDeg)
  return latitudeDeg < 0 ? 'australia-nz' : 'europe'
}

type SpotGround = Pick<
  Spot,
  'id' | 'latitudeDeg' | 'slopeDeg' | 'aspectDeg' | 'position' | 'formDown' | 'formAcross'
>

function groundOf(cells: SpotCells, decimalMark: '.' | ','): SpotGround | undefined {
  const id = cells.text('id') ?? missing(cells, 'id')
  const latitudeDeg = neededFigure(cells, 'latitudeDeg')
  const slopeDeg = neededFigure(cells, 'slopeDeg')
  const aspectDeg = aspectOf(cells, slopeDeg)
  const position = positionOf(cells, decimalMark)
  const formDown = cells.word('formDown', spotForms) ?? 'straight'
  const formAcross = cells.word('formAcross', spotForms) ?? 'straight'
  if (id === undefined || latitudeDeg === undefined) return undefined
  if (slopeDeg === undefined || position === undefined) return undefined
  return { id, latitudeDeg, slopeDeg, aspectDeg, position, formDown, formAcross }
}

const missing = (cells: SpotCells, column: string): undefined =>
  cells.refuse(column, 'The cell is empty.', `Every row needs ${neededColumns.join(', ')}.`)

function neededFigure(cells: SpotCells, name: 'latitudeDeg' | 'slopeDeg'): number | undefined {
  return cells.text(name) === undefined ? missing(cells, name) : cells.figure(figureColumns[name])
}

function aspectOf(cells: SpotCells, slopeDeg: number | undefined): number | undefined {
  if (cells.text('aspectDeg') !== undefined || slopeDeg === undefined || slopeDeg === 0)
    return cells.figure(figureColumns.aspectDeg)
  return cells.refuse(
    'aspectDeg',
    'A slope faces some direction.',
    'Give it in degrees, 0 north, 90 east; leave it empty only where slopeDeg is 0.',
  )
}

function positionOf(cells: SpotCells, decimalMark: '.' | ','): number | undefined {
  const written = cells.text('position')
  if (written === undefined) return missing(cells, 'position')
  const value = positionWords.get(written.toLowerCase()) ?? toNumber(written, decimalMark)
  return value !== undefined && value >= 0 && value <= 1
    ? value
    : cells.refuse(
        'position',
        `“${written}” is no place on a slope.`,
        `Give 0 (foot) to 1 (crest), or one of ${[...positionWords.keys()].join(', ')}.`,
      )
}

function soilOf(cells: SpotCells): SoilSample | undefined {
  const id = cells.text('id') ?? ''
  const textureClass =
    cells.text('texture') === undefined ? missing(cells, 'texture') : cells.word('texture', textureClasses)
  const depthM = cells.figure(figureColumns.soilDepthM)
  const stonesPercent = cells.figure(figureColumns.stonesPercent)
  const organicPercent = cells.figure(figureColumns.organicPercent)
  const ph = cells.figure(figureColumns.ph)
  if (textureClass === undefined) return undefined
  return {
    id,
    name: id,
    texture: { by: 'class', class: textureClass },
    compaction: usualSoil.compaction,
    depthM: depthM ?? usualSoil.depthM,
    stonesPercent: stonesPercent ?? usualSoil.stonesPercent,
    organicPercent: organicPercent ?? usualSoil.organicPercent,
    ...(ph === undefined ? {} : { ph }),
  }
}
