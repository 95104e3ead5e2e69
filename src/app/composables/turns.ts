/**
 * Does one thing after the other, so that an older version never overwrites a newer one.
 *
 * @param failed - told, in words, what did not work
 */
export function turns(failed: (words: string) => void) {
  let queue: Promise<void> = Promise.resolve()
  return (work: () => Promise<void>, otherwise: string): Promise<void> => {
    queue = queue
      .then(work)
      .catch((error: unknown) => failed(`${otherwise} (${reason(error)}). Save a copy.`))
    return queue
  }
}

/** What an error says. */
export function reason(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}
