import type { Problem } from '#core/units'

/** Entries whose id another entry before them already has. */
export function twice(rows: readonly { readonly id: string }[], path: string, kind: string): Problem[] {
  const seen = new Set<string>()
  return rows.flatMap(({ id }, index) => {
    const again = seen.has(id)
    seen.add(id)
    return again
      ? [
          {
            where: `plan › ${path}, row ${index + 1}`,
            what: `The id “${id}” is used by another ${kind}.`,
            mend: 'Give each its own id.',
          },
        ]
      : []
  })
}
