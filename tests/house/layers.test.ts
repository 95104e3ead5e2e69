import { ESLint } from 'eslint'
import { beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'

const { coreOrder, layers } = z
  .object({ coreOrder: z.array(z.string()), layers: z.record(z.string(), z.array(z.string())) })
  .parse(await import(new URL('../../eslint.config.js', import.meta.url).href))

let eslint: ESLint

beforeAll(() => {
  eslint = new ESLint({
    overrideConfig: { languageOptions: { parserOptions: { projectService: false, project: null } } },
    ruleFilter: ({ ruleId }) =>
      [
        'no-restricted-imports',
        'no-restricted-globals',
        'no-restricted-properties',
        'no-restricted-syntax',
      ].includes(ruleId),
  })
})

/** Names of the rules that refuse this code at this place. */
async function refusals(code: string, filePath: string): Promise<(string | null)[]> {
  const [result] = await eslint.lintText(code, { filePath })
  return result?.messages.map(({ ruleId }) => ruleId) ?? []
}

const importing = (from: string) => `import '${from}'\n`

describe('core modules import only from the left', () => {
  const rows = coreOrder.flatMap((name, at) => coreOrder.slice(at + 1).map((right) => [name, right] as const))
  it.each(rows)('%s may not import %s', async (name, right) => {
    expect(await refusals(importing(`#core/${right}`), `src/core/${name}/zoning-canary.ts`)).toContain(
      'no-restricted-imports',
    )
  })
})

describe('layers point one way', () => {
  const rightOf: Readonly<Record<string, readonly string[]>> = {
    'core/units': [
      '#plan',
      '#io',
      '#report',
      '#worker',
      '#data/sources',
      'vue',
      'node:fs',
      '../geometry/ring',
    ],
    plan: ['#io', '#report', '#worker', '#data/sources', 'vue', 'node:fs', '../io/tables'],
    files: ['#report', '#worker', 'vue', 'node:fs', '../cli/main'],
    io: ['#files', '#report', '#worker', 'vue', 'node:fs', '../cli/main'],
    report: ['#io', '#worker', '#data/sources', 'pinia', 'node:fs', '../app/main'],
    worker: ['#report', 'vue', 'node:fs', '../app/main'],
    cli: ['#worker', 'vue', '../app/main'],
    app: ['node:fs', '../cli/main', '#data/sources'],
    'app/components': ['pinia', '#io', '#worker', '../stores/plan'],
  }
  const rows = Object.entries(rightOf).flatMap(([place, names]) =>
    names.map((name) => [place, name] as const),
  )
  it.each(rows)('%s may not import %s', async (place, name) => {
    expect(await refusals(importing(name), `src/${place}/canary.ts`)).toContain('no-restricted-imports')
  })

  it('every layer of the table has a canary', () => {
    expect(Object.keys(rightOf)).toEqual(expect.arrayContaining(Object.keys(layers)))
  })

  it('a single-file component is held to the same table', async () => {
    const component = '<script setup lang="ts">\nimport \'pinia\'\n</script>\n<template><p /></template>\n'
    expect(await refusals(component, 'src/app/components/Canary.vue')).toContain('no-restricted-imports')
  })
})

describe('core is deterministic', () => {
  it.each([
    ['no-restricted-globals', 'export const now = Date.now()\n', 'src/core/units/canary.ts'],
    ['no-restricted-globals', 'export const now = performance.now()\n', 'src/core/water/canary.ts'],
    ['no-restricted-properties', 'export const any = Math.random()\n', 'src/core/units/canary.ts'],
    ['no-restricted-syntax', 'export const now = Date.now()\n', 'src/core/sun/canary.ts'],
    ['no-restricted-syntax', 'export const now = new Date()\n', 'src/core/sun/canary.ts'],
    ['no-restricted-syntax', "export const late = import('zod')\n", 'src/plan/canary.ts'],
  ])('%s refuses %s', async (rule, code, file) => {
    expect(await refusals(code, file)).toContain(rule)
  })
})

describe('what is allowed stays allowed', () => {
  it.each([
    ['#core/units', 'src/core/care/canary.ts'],
    ['#core/care', 'src/plan/canary.ts'],
    ['#data/sources', 'src/io/canary.ts'],
    ['#plan', 'src/report/canary.ts'],
    ['./ring', 'src/core/geometry/canary.ts'],
  ])('%s in %s', async (name, file) => {
    expect(await refusals(importing(name), file)).toEqual([])
  })
})
