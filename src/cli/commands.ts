import type { Arguments } from './arguments'
import { assess } from './command-assess'
import { calendar } from './command-calendar'
import { check } from './command-check'
import { layer } from './command-layer'
import { start } from './command-new'
import { report } from './command-report'
import { schema } from './command-schema'
import { spot } from './command-spot'
import type { Console } from './console'

/** A command: what it was given, and where it speaks. Gives the exit code. */
export type Command = (given: Arguments, console: Console) => number | Promise<number>

/** Every command by its name. */
export const commands: ReadonlyMap<string, Command> = new Map<string, Command>([
  ['assess', assess],
  ['spot', spot],
  ['layer', layer],
  ['report', report],
  ['calendar', calendar],
  ['check', check],
  ['new', start],
  ['schema', schema],
])
