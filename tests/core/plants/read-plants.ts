import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import {
  legalRowSchema,
  plantNamed,
  plantSchema,
  toxicityRowSchema,
  type Plant,
  type PlantTables,
} from '#core/plants'

const folder = join(import.meta.dirname, '../../../data/plants')
const otherTables = ['legal.json', 'toxicity.json']

function parsed(name: string): unknown {
  return JSON.parse(readFileSync(join(folder, name), 'utf8'))
}

/** Every file of plant rows with its contents, as written. */
export function plantFiles(): { readonly name: string; readonly rows: unknown }[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json') && !otherTables.includes(name))
    .sort()
    .map((name) => ({ name, rows: parsed(name) }))
}

/** The tables as the program reads them. */
export function realTables(): PlantTables {
  return {
    plants: plantFiles().flatMap(({ rows }) => z.array(plantSchema).parse(rows)),
    legal: z.array(legalRowSchema).parse(parsed('legal.json')),
    toxicity: z.array(toxicityRowSchema).parse(parsed('toxicity.json')),
  }
}

/** The row of a plant that a fact is about; its absence fails the test. */
export function needed(tables: PlantTables, name: string): Plant {
  const plant = plantNamed(tables, name)
  if (!plant) throw new Error(`the table has no ${name}`)
  return plant
}
