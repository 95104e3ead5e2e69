import { planSchema } from '#plan'
import { z } from 'zod'
import { findingsSchema } from './findings.schema'
import { fieldLines, type SchemaNode } from './schema-lines'
import { spotsSchema } from './spots.schema'
import { sunSchema } from './sun.schema'

/** A file of docs/schema. */
export interface SchemaPage {
  readonly file: string
  readonly text: string
}

/** The formats that files of this program have. */
const formats: readonly {
  readonly file: string
  readonly title: string
  readonly about: string
  readonly schema: z.ZodType
}[] = [
  {
    file: 'plan',
    title: 'The plan file',
    about:
      'A `*.lynchet.json` file holds what a person measured and decided, and nothing that follows from it. Lengths are metres in the plot’s own frame, east and north of an origin whose latitude and longitude the plan gives; angles are degrees.',
    schema: planSchema,
  },
  {
    file: 'findings',
    title: 'The findings file',
    about:
      'Everything that follows from a plan, as `lynchet assess PLAN --json` writes it. Keys always stand in this order, numbers are rounded to the decimals given, and null stands where nothing is known. It is written anew from the plan whenever it is wanted; nothing reads it back.',
    schema: findingsSchema,
  },
  {
    file: 'spots',
    title: 'The places file',
    about:
      'What follows from a table of places, as `lynchet spot FILE.csv --json` writes it, with the level book behind every score.',
    schema: spotsSchema,
  },
  {
    file: 'sun',
    title: 'The sun file',
    about:
      'Sun and shade of a plan, as `lynchet sun PLAN --json` writes them: hours of direct sun of every zone, month by month, and what takes them, every trial beside the plan as it is, and the sky from one place where `--at` asks for it. Times are by the sun, 12 when it is highest; energy is per m² of slope.',
    schema: sunSchema,
  },
]

/**
 * The format pages and JSON Schemas of plans and findings.
 *
 * @returns the files of docs/schema
 */
export function schemaPages(): readonly SchemaPage[] {
  return formats.flatMap(({ file, title, about, schema }) => {
    const json = z.toJSONSchema(schema)
    return [
      { file: `${file}.schema.json`, text: `${JSON.stringify(json, null, 2)}\n` },
      { file: `${file}.md`, text: page(title, about, json) },
    ]
  })
}

function page(title: string, about: string, schema: SchemaNode): string {
  return [
    `# ${title}`,
    '',
    about,
    '',
    'Written by `npm run docs:schema`; change the zod schemas, not this page. `[]` marks a list, `(word)` the kind of entry a field belongs to, and “may be left out” a field that a file need not have.',
    '',
    ...fieldLines(schema),
    '',
  ].join('\n')
}
