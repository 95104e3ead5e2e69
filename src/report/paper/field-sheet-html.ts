import { createSSRApp } from 'vue'
import { renderToString } from 'vue/server-renderer'
import type { SurveyTables } from '#core/booking'
import tokens from '../style/tokens.css?inline'
import print from '../style/print.css?inline'
import sheetStyle from './field-sheet.css?inline'
import FieldSheet from './FieldSheet.vue'

/** How a sheet is to be printed. */
export interface FieldSheetOptions {
  /** Blank lines to fill in. */
  readonly lines: number
}

/**
 * The field sheet of a method to print and take outside: one file with its style inside, that asks nothing of any network.
 *
 * @param methodId - key of data/survey/methods.json
 * @param tables - the methods
 * @param options - number of blank lines, 1 to 500
 * @returns an HTML document; the same method gives the same bytes
 * @throws RangeError when the method is not in the table or the lines are out of range
 */
export async function fieldSheetHtml(
  methodId: string,
  tables: Pick<SurveyTables, 'methods'>,
  options: FieldSheetOptions,
): Promise<string> {
  const method = tables.methods.find(({ id }) => id === methodId)
  if (!method) throw new RangeError(`fieldSheetHtml: methodId must be in the table, got ${methodId}`)
  const { lines } = options
  if (!(Number.isInteger(lines) && lines >= 1 && lines <= 500))
    throw new RangeError(`fieldSheetHtml: lines must be 1 to 500, got ${lines}`)
  const body = await renderToString(createSSRApp(FieldSheet, { method, lines }))
  return `<!doctype html>
<html lang="en-GB" data-theme="light">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="Lynchet">
<title>Field sheet: ${escaped(method.name)}</title>
<style>
${tokens}
${print}
${sheetStyle}
</style>
</head>
<body class="field-sheet">
${body.replace(/<!--(?:\[|\])?-->/g, '')}
</body>
</html>
`
}

const escaped = (text: string): string =>
  text.replace(/[&<>]/g, (mark) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;' })[mark] ?? mark)
