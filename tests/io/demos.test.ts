import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { demos } from '../../src/io/demos'
import { openPlan } from '#plan'

const folder = new URL('../../data/demos/', import.meta.url)

describe('demos', () => {
  it('lists every file of data/demos', () => {
    const files = readdirSync(folder).sort()
    expect(demos.map(({ id }) => `${id}.lynchet.json`)).toEqual(files)
  })

  it.each(demos)('$id opens as the plan of its file and says that it is invented', ({ id, title, text }) => {
    const opened = openPlan(text)
    const filed = openPlan(readFileSync(new URL(`${id}.lynchet.json`, folder), 'utf8'))
    if (!opened.ok || !filed.ok) throw new Error('a demo must open')
    expect(opened.value).toEqual(filed.value)
    expect(opened.value.name).toBe(title)
    expect(opened.value.note).toContain('invented')
  })
})
