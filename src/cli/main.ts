#!/usr/bin/env node
import { readArguments } from './arguments'
import { commands, misfit } from './commands'
import { terminal } from './console'
import { exitCodes, UsageError } from './exit'
import { manual } from './manual'
import { version } from './version'

/** Runs one command line and gives its exit code. */
async function run(line: readonly string[]): Promise<number> {
  const given = readArguments(line)
  const [name, ...words] = given.words
  if (given.flag('version')) {
    terminal.print(version)
    return exitCodes.done
  }
  if (given.flag('help') || name === 'help') {
    terminal.print(manual)
    return exitCodes.done
  }
  if (name === undefined) throw new UsageError('Say what to do.')
  const command = commands.get(name)
  if (!command) throw new UsageError(`There is no command “${name}”.`)
  const wrong = misfit(name, command, { ...given, words })
  if (wrong !== undefined) throw new UsageError(wrong)
  return command.run({ ...given, words }, terminal)
}

// A reader such as head may close the pipe early: that is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? exitCodes.done : exitCodes.failed)
})

run(process.argv.slice(2)).then(
  (code) => {
    process.exitCode = code
  },
  (error: unknown) => {
    const message = error instanceof Error ? error.message : String(error)
    const misread = error instanceof UsageError
    terminal.complain(
      misread ? `${message} “lynchet --help” lists the commands.` : `Lynchet failed: ${message}`,
    )
    process.exitCode = misread ? exitCodes.usage : exitCodes.failed
  },
)
