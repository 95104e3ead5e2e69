import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'

const core = join(import.meta.dirname, '../../src/core')
const tests = join(import.meta.dirname, '..')

const sourceFiles = readdirSync(core, { recursive: true, encoding: 'utf8' }).filter(
  (file) => file.endsWith('.ts') && !file.endsWith('index.ts'),
)
/** Titles of every test: an `it`, `test` or `describe`, with or without rows. */
const title = /\b(?:it|test|describe)(?:\.each\((?:[^`]|`(?!\)))*?\)|\.\w+)?\(\s*(['"`])((?:(?!\1)[^])*)\1/g
const titles = readdirSync(tests, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.test.ts'))
  .flatMap((file) => [...readFileSync(join(tests, file), 'utf8').matchAll(title)].map(([, , words]) => words))
  .join('\n')

interface PublicFunction {
  readonly name: string
  readonly node: ts.FunctionDeclaration
}

function publicFunctions(file: string): PublicFunction[] {
  const text = readFileSync(join(core, file), 'utf8')
  const parsed = ts.createSourceFile(file, text, ts.ScriptTarget.ES2023, true)
  return parsed.statements
    .filter(ts.isFunctionDeclaration)
    .filter((node) => node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword))
    .map((node) => ({ name: node.name?.text ?? '', node }))
}

const isNumber = (type: ts.TypeNode | undefined): boolean =>
  type !== undefined && /^(number|number \| undefined)$/.test(type.getText())

const commentOf = (tag: ts.JSDocTag | undefined): string => ts.getTextOfJSDocComment(tag?.comment) ?? ''

/** What a function's contract leaves unsaid about its numbers. */
function unsaid({ name, node }: PublicFunction): string[] {
  const tags = ts.getJSDocTags(node)
  const params = node.parameters.flatMap((parameter) => {
    if (!isNumber(parameter.type)) return []
    const tag = tags.find(
      (one) => ts.isJSDocParameterTag(one) && one.name.getText() === parameter.name.getText(),
    )
    return hasUnit(commentOf(tag)) ? [] : [`${name}: parameter ${parameter.name.getText()} has no unit`]
  })
  const returns = tags.find((tag) => ts.isJSDocReturnTag(tag))
  return isNumber(node.type) && !hasUnit(commentOf(returns))
    ? [...params, `${name}: result has no unit`]
    : params
}

/** A unit in brackets, or the words for a number that has none. */
const hasUnit = (comment: string): boolean =>
  /\[[^\]]+\]|\b(0 to 1|ratio|share|index|count|number of|points|class|0 to 100|any integer|seed)\b/.test(
    comment,
  )

describe.each(sourceFiles)('src/core/%s', (file) => {
  it('gives the unit of every number that a public function takes or gives', () => {
    expect(publicFunctions(file).flatMap(unsaid)).toEqual([])
  })

  it('has a test whose title names each source it cites', () => {
    const text = readFileSync(join(core, file), 'utf8')
    const cited = [...text.matchAll(/@see\s+([\p{L}\d&.-]+)/gu)].map(([, word]) => word ?? '')
    expect(cited.filter((word) => !titles.includes(word.replace(/[.,;:]+$/, '')))).toEqual([])
  })
})
