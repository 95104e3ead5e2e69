/** Exit codes of the command line, as the manual lists them. */
export const exitCodes = {
  /** The work was done. */
  done: 0,
  /** The input has problems that the person can mend; each was printed. */
  problems: 1,
  /** The command was not understood. */
  usage: 2,
  /** The program itself failed; please report it. */
  failed: 3,
} as const

/** A command that was not understood, with what to type instead. */
export class UsageError extends Error {}
