/**
 * Keeps the last result of each named stage, and makes it again only when one of its inputs is another one.
 * Inputs are compared by identity, so results of earlier stages serve as inputs of later ones; parts of a plan,
 * which arrive as fresh copies, are first passed through `keep`.
 */
export interface StageMemory {
  /** The part kept from last time when it is alike in every entry, else this one. */
  keep<T>(name: string, part: T): T
  /** The stage's result, made anew only when an input changed. */
  run<T>(name: string, inputs: readonly unknown[], make: () => T): T
  /** Forgets every part and result whose name begins so, but for those that begin with one of the names to keep. */
  forget(prefix: string, keep: readonly string[]): void
}

interface Kept {
  readonly text: string
  readonly part: unknown
}

interface Made {
  readonly inputs: readonly unknown[]
  readonly result: unknown
}

/** A memory with nothing in it yet. */
export function stageMemory(): StageMemory {
  const parts = new Map<string, Kept>()
  const results = new Map<string, Made>()
  return {
    keep<T>(name: string, part: T): T {
      const text = JSON.stringify(part) ?? ''
      const kept = parts.get(name)
      if (kept?.text === text) return kept.part as T
      parts.set(name, { text, part })
      return part
    },
    run<T>(name: string, inputs: readonly unknown[], make: () => T): T {
      const made = results.get(name)
      if (made && made.inputs.length === inputs.length && made.inputs.every((one, at) => one === inputs[at]))
        return made.result as T
      const result = make()
      results.set(name, { inputs, result })
      return result
    },
    forget(prefix: string, keep: readonly string[]): void {
      for (const known of [parts, results])
        for (const name of known.keys())
          if (name.startsWith(prefix) && !keep.some((kept) => name.startsWith(kept))) known.delete(name)
    },
  }
}
