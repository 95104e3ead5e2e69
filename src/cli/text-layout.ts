/** Width of printed text [characters]. */
const WIDTH = 100

/** A cell of a printed table; figures stand to the right. */
export type Cell = string | number

/** A heading with a line under it. */
export function heading(text: string): readonly string[] {
  return ['', text.toUpperCase(), '-'.repeat(text.length)]
}

/**
 * Text broken between words.
 *
 * @param text - one paragraph
 * @param first - what stands before its first line; later lines stand below its end
 * @returns lines of at most 100 characters, where words allow
 */
export function wrapped(text: string, first = ''): readonly string[] {
  const hang = ' '.repeat(first.length)
  const lines: string[] = []
  let line = first
  for (const word of plain(text).split(/\s+/)) {
    if (line.length + word.length + 1 > WIDTH && line.trim() !== '') {
      lines.push(line.trimEnd())
      line = hang
    }
    line += line.length > hang.length || (lines.length === 0 && line !== first) ? ` ${word}` : word
  }
  return [...lines, line.trimEnd()]
}

/** A table with its columns under one another, two spaces apart. */
export function columns(head: readonly string[], rows: readonly (readonly Cell[])[]): readonly string[] {
  const all: readonly (readonly Cell[])[] = [head, ...rows]
  const widths = head.map((_, at) => Math.max(...all.map((row) => plain(String(row[at] ?? '')).length)))
  // Times of day read from the left.
  const isFigure = head.map((_, at) => rows.every((row) => /^[−\d][^:]*$/.test(String(row[at] ?? '0'))))
  return all.map((row) =>
    row
      .map((cell, at) => {
        const text = plain(String(cell))
        const width = widths[at] ?? 0
        return isFigure[at] ? text.padStart(width) : text.padEnd(width)
      })
      .join('  ')
      .trimEnd(),
  )
}

/** Spaces that tie a figure to its unit are for browsers; a terminal shows them as others. */
export function plain(text: string): string {
  return text.replaceAll('\u00A0', ' ')
}
