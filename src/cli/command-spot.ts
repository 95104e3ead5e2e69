import { loadTables, spotsCsv, spotsFromText, spotsJson } from '#io'
import { assessSpot, bestPlants, plantOfName, verdictAt, type Spot, type Tables } from '#plan'
import { legalRegions, plantRegions, type Plant, type PlantRegion } from '#core/plants'
import type { Arguments } from './arguments'
import { complainOf, readText, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'

/** Scores places without a survey. */
export function spot(given: Arguments, console: Console): number {
  const [file] = given.words
  if (file === undefined) throw new UsageError('spot needs a CSV file.')
  const tables = loadTables()
  const asked = { ...plantsAsked(given, tables), tables }
  const plantRegion = regionOf(given)
  const legalRegion = lawOf(given)
  const read = spotsFromText(readText(file), {
    places: tables.places,
    ...(plantRegion === undefined ? {} : { plantRegion }),
    ...(legalRegion === undefined ? {} : { legalRegion }),
  })
  if (!read.ok) return complainOf(read.problems, console)
  const { spots, ignoredColumns } = read.value
  if (ignoredColumns.length > 0) console.complain(`Not read: ${ignoredColumns.join(', ')}.`)
  if (asked.count !== undefined || asked.plant) sayWhere(spots, { plantRegion, legalRegion }, console)
  const out = spots.map((one) => outOf(one, asked))
  writeText(given.text('out'), given.flag('json') ? spotsJson(out) : spotsCsv(out), console)
  return exitCodes.done
}

interface Asked {
  readonly count: number | undefined
  readonly plant: Plant | undefined
  readonly tables: Tables
}

function outOf(one: Spot, { count, plant, tables }: Asked) {
  const found = assessSpot(one, tables)
  return {
    found,
    plants: count === undefined ? undefined : bestPlants(found, tables, count),
    plant: plant && verdictAt(found, plant, tables),
  }
}

function plantsAsked(given: Arguments, tables: Tables): Omit<Asked, 'tables'> {
  const count = given.number('plants')
  if (count !== undefined && !(Number.isInteger(count) && count >= 1))
    throw new UsageError(`--plants needs a whole number of 1 or more, not ${count}.`)
  const name = given.text('plant')
  const plant = name === undefined ? undefined : plantOfName(name, tables)
  if (name !== undefined && !plant)
    throw new UsageError(`“${name}” is not in the plant table, under no botanical, older or English name.`)
  return { count, plant }
}

function regionOf(given: Arguments): PlantRegion | undefined {
  const asked = given.text('region')
  const region = plantRegions.find((one) => one === asked)
  if (asked !== undefined && !region)
    throw new UsageError(`--region is one of ${plantRegions.join(', ')}, not “${asked}”.`)
  return region
}

function lawOf(given: Arguments): string | undefined {
  const asked = given.text('law')
  if (asked !== undefined && !legalRegions.includes(asked))
    throw new UsageError(
      `The plant laws of “${asked}” are not in the table. Known: ${legalRegions.join(', ')}.`,
    )
  return asked
}

/** What was taken where the command did not say, so that nobody is misled. */
function sayWhere(
  spots: readonly Spot[],
  {
    plantRegion,
    legalRegion,
  }: { readonly plantRegion?: string | undefined; readonly legalRegion?: string | undefined },
  console: Console,
): void {
  if (plantRegion === undefined) {
    const regions = [...new Set(spots.map((one) => one.plantRegion))]
    console.complain(`Plants as sold in ${regions.join(', ')}; --region says otherwise.`)
  }
  if (legalRegion === undefined)
    console.complain(
      'No country is set: plants are not checked against the law. --law NAME says whose counts.',
    )
}
