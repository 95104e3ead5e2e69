// Runs every command of docs/guide/command-line.md again. As a program it writes the guide anew:
//   npm run build:cli && node tests/cli/guide.mjs
import { spawnSync } from 'node:child_process'
import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../../', import.meta.url))
export const guideFile = join(root, 'docs/guide/command-line.md')

const demos = join(root, 'data/demos')

/** Names of the tables that the guide shows, in their order. */
const tables = ['places.csv', 'wrong.csv', 'book.csv', 'survey.csv']

/** Splits a command line at spaces outside of quotes. */
const wordsOf = (line) => [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain)

/** Runs one line of the guide and gives what it prints. */
function outputOf(line, folder) {
  const [command, head] = line.split(' | head -')
  const [, ...words] = wordsOf(command)
  const run = spawnSync(process.execPath, ['lynchet.mjs', ...words], { cwd: folder, encoding: 'utf8' })
  const lines = `${run.stderr}${run.stdout}`.replaceAll('\r\n', '\n').trimEnd().split('\n')
  return lines.slice(0, head === undefined ? undefined : Number(head)).join('\n')
}

/** The guide with the output of every command as it is now. */
export function freshGuide() {
  const guide = readFileSync(guideFile, 'utf8')
  const folder = mkdtempSync(join(tmpdir(), 'lynchet-guide-'))
  copyFileSync(join(root, 'dist-cli/lynchet.mjs'), join(folder, 'lynchet.mjs'))
  for (const demo of readdirSync(demos)) copyFileSync(join(demos, demo), join(folder, demo))
  const shown = [...guide.matchAll(/```csv\n([^]*?)```/g)]
  shown.forEach(([, table], at) => writeFileSync(join(folder, tables[at] ?? `table-${at}.csv`), table))
  const fresh = guide.replace(/```console\n([^]*?)```/g, (_, block) => {
    const commands = block.split('\n').filter((line) => line.startsWith('$ lynchet '))
    const parts = commands.map((line) => {
      const output = outputOf(line.slice(2), folder)
      return output === '' ? line : `${line}\n${output}`
    })
    return `\`\`\`console\n${parts.join('\n')}\n\`\`\``
  })
  rmSync(folder, { recursive: true })
  return fresh
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(guideFile, freshGuide())
