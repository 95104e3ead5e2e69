import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { z } from 'zod'

const folder = join(import.meta.dirname, '../truth')

const provenance = z.looseObject({
  source: z.string().min(10),
  fetchedOn: z.iso.date(),
  how: z.string().min(10),
})

const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.json'),
)

it.each(files)('tests/truth/%s says where it came from, when and how to have it again', (file) => {
  const found = provenance.safeParse(JSON.parse(readFileSync(join(folder, file), 'utf8')))
  expect(found.error?.issues ?? []).toEqual([])
})
