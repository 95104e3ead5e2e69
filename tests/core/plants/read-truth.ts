import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'

function truth(name: string): unknown {
  return JSON.parse(readFileSync(join(import.meta.dirname, '../../truth', name), 'utf8'))
}

const names = z.array(z.string())

export const spacingTruth = z
  .object({
    squareFoot: z.object({ m2: z.number() }),
    inch: z.object({ m: z.number() }),
    plantsPer100SquareFeet: z.array(z.object({ inches: z.number(), plants: z.number() })),
    staggeredPerM2: z.array(z.object({ spacingM: z.number(), plants: z.number() })),
    hexagonalPackingDensity: z.number(),
  })
  .parse(truth('plants-spacing.json'))

export const legalTruth = z
  .object({
    facts: z.array(
      z.object({
        id: z.string(),
        list: z.string(),
        name: z.string(),
        where: z.string(),
        barred: z.boolean(),
        flagged: z.boolean(),
        year: z.number().optional(),
      }),
    ),
  })
  .parse(truth('plants-legal.json'))

export const factsTruth = z
  .object({
    facts: z.array(
      z.object({
        id: z.string(),
        name: z.string(),
        kind: z.enum(['never', 'can']),
        where: z.string(),
        because: z.string().optional(),
      }),
    ),
    twins: z.array(z.object({ id: z.string(), drier: z.string(), wetter: z.string() })),
    takesAll: z.object({ id: z.string(), names }),
    salt: z.object({ id: z.string(), tolerant: names, not: names }),
    severelyPoisonous: z.object({ id: z.string(), names }),
    neverInHay: z.object({ id: z.string(), names }),
  })
  .parse(truth('plants-facts.json'))

export const practiceTruth = z
  .object({
    monthsToCover: z.array(z.object({ name: z.string(), from: z.number(), to: z.number() })),
    bindingClasses: z.array(z.object({ class: z.number(), names })),
  })
  .parse(truth('plants-practice.json'))
