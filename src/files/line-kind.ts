import type { Breakline } from '#core/survey'

type EdgeKind = Exclude<Breakline['kind'], 'wall'>

/** Words in names of lines and layers that say what bends there. */
const words: readonly (readonly [EdgeKind, RegExp])[] = [
  ['toe', /(^|[^a-z])(toe|foot|bottom)(?!way|path|print|ing)/i],
  ['top', /(^|[^a-z])(top|crest)(?!o|soil)/i],
  ['ridge', /(^|[^a-z])ridge/i],
  ['channel', /(^|[^a-z])(channel|ditch|swale|thalweg|flow ?line|valley)/i],
]

/** What a line is, as far as its name or type says so; otherwise any edge. */
export function lineKind(name: string): EdgeKind {
  return words.find(([, pattern]) => pattern.test(name))?.[0] ?? 'edge'
}

/** Whether a name calls the line a wall: two levels at one place, of which such a file gives one. */
export const namesWall = (name: string): boolean => /(^|[^a-z])(wall|retaining)(?!flower|paper)/i.test(name)
