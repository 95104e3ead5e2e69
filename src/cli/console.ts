import type { Problem } from '#core/units'
import { readFileSync, writeFileSync } from 'node:fs'
import { exitCodes, UsageError } from './exit'

/** What a command needs of the outside, so that tests can hand in their own. */
export interface Console {
  print(text: string): void
  complain(text: string): void
}

/** The real terminal. */
export const terminal: Console = {
  print: (text) => void process.stdout.write(text.endsWith('\n') ? text : `${text}\n`),
  complain: (text) => void process.stderr.write(text.endsWith('\n') ? text : `${text}\n`),
}

/** Reads a text file, or standard input when the name is "-". */
export function readText(file: string): string {
  try {
    return readFileSync(file === '-' ? 0 : file, 'utf8')
  } catch (error) {
    throw new UsageError(
      `${file} cannot be read (${error instanceof Error ? error.message : String(error)}).`,
    )
  }
}

/** Writes a text file, or standard output when no name is given. */
export function writeText(file: string | undefined, text: string, console: Console): void {
  if (file === undefined || file === '-') {
    console.print(text)
    return
  }
  try {
    writeFileSync(file, text)
  } catch (error) {
    throw new UsageError(
      `${file} cannot be written (${error instanceof Error ? error.message : String(error)}).`,
    )
  }
}

/** Writes a file of bytes. */
export function writeBytes(file: string, bytes: Uint8Array): void {
  try {
    writeFileSync(file, bytes)
  } catch (error) {
    throw new UsageError(
      `${file} cannot be written (${error instanceof Error ? error.message : String(error)}).`,
    )
  }
}

/** Prints every problem with its place and mend, and gives the exit code that goes with them. */
export function complainOf(problems: readonly Problem[], console: Console): number {
  for (const { where, what, mend } of problems) console.complain(`${where}: ${what} ${mend}`)
  return exitCodes.problems
}
