import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openPlan } from '#plan'

const folder = join(import.meta.dirname, 'versions')
const files = readdirSync(folder)

/** The version that plans have now. */
const NOW = 3

describe('plans as older programs saved them', () => {
  it('one is kept of every version', () => {
    expect(files.toSorted()).toEqual(Array.from({ length: NOW }, (_, at) => `version-${at + 1}.lynchet.json`))
  })

  it.each(files)('%s opens, and nothing of it is lost or added but the version', (file) => {
    const text = readFileSync(join(folder, file), 'utf8')
    const saved = JSON.parse(text) as Record<string, unknown>
    expect(saved.version).toBe(Number(/version-(\d+)/.exec(file)?.[1]))
    expect(openPlan(text)).toEqual({ ok: true, value: { ...saved, version: NOW } })
  })
})
