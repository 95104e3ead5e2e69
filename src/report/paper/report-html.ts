import { createSSRApp } from 'vue'
import { renderToString } from 'vue/server-renderer'
import type { Findings, Plan, Tables } from '#plan'
import { styleText } from '../style/style-text'
import paper from './paper.css?inline'
import PaperReport from './PaperReport.vue'

/**
 * The report to print or hand over: one file with its drawings and style inside, that asks nothing of any network.
 *
 * @param plan - the plan
 * @param findings - what follows from it
 * @param tables - sources, and the limits of light classes
 * @returns an HTML document; the same plan gives the same bytes
 */
export async function reportHtml(
  plan: Plan,
  findings: Findings,
  tables: Pick<Tables, 'shade' | 'sources'>,
): Promise<string> {
  const body = await renderToString(createSSRApp(PaperReport, { plan, findings, tables }))
  return `<!doctype html>
<html lang="en-GB" data-theme="light">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="Lynchet">
<title>${escaped(plan.name)}</title>
<style>
${styleText}
${paper}
</style>
</head>
<body class="paper">
${body.replace(/<!--(?:\[|\])?-->/g, '')}
</body>
</html>
`
}

const escaped = (text: string): string =>
  text.replace(/[&<>]/g, (mark) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;' })[mark] ?? mark)
