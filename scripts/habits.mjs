// The habits that no linter sees. Each prints what it found and fails the run.
import { spawnSync } from 'node:child_process'

const topLevel = [
  '.ci',
  '.gitignore',
  '.prettierignore',
  '.prettierrc.json',
  'DEVELOPERS.md',
  'README.md',
  'data',
  'docs',
  'eslint.config.js',
  'package-lock.json',
  'package.json',
  'public',
  'scripts',
  'src',
  'tests',
  'tsconfig.json',
  'vite.cli.config.ts',
  'vite.config.ts',
  'vitest.config.ts',
]

const git = (...args) => {
  const { stdout, status, stderr } = spawnSync('git', args, { encoding: 'utf8' })
  if (status === null || status > 1) throw new Error(stderr)
  return stdout.split('\n').filter(Boolean)
}

const habits = {
  'escape hatches in src': () =>
    git(
      'grep',
      '-nE',
      'eslint-disable|@ts-(ignore|nocheck|expect-error)|\\bas any\\b|\\bas unknown as\\b',
      '--',
      'src',
    ),
  'parked work': () => git('grep', '-nwE', 'TODO|FIXME|XXX', '--', 'src', 'tests'),
  'catch-all files': () =>
    git('ls-files', 'src').filter((file) => /(utils?|helpers?|misc|common)(\.ts|\.vue|\/)/.test(file)),
  'top level beyond what DEVELOPERS.md lists': () =>
    [...new Set(git('ls-files').map((file) => file.split('/')[0]))].filter(
      (name) => !topLevel.includes(name),
    ),
  'skipped or lone tests': () =>
    git('grep', '-nE', '(it|describe|test)\\.(skip|only|todo)\\b', '--', 'tests'),
}

let found = 0
for (const [name, look] of Object.entries(habits)) {
  const lines = look()
  found += lines.length
  if (lines.length > 0) console.error(`${name}:\n  ${lines.join('\n  ')}`)
}
process.exit(found > 0 ? 1 : 0)
