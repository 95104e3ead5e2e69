/** A figure as people type it, with either decimal mark and either minus; undefined when it is none. */
export function readFigure(text: string): number | undefined {
  const plain = text
    .trim()
    .replace(',', '.')
    .replace(/^\u2212/, '-')
  const value = Number(plain)
  return plain === '' || !Number.isFinite(value) ? undefined : value
}
