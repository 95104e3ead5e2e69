const NEWLINE = 10

/** Whether lines of a text can be told in its bytes: in UTF-16 and in texts with bare carriage returns they cannot. */
export function hasPlainLines(bytes: Uint8Array): boolean {
  const [first, second] = bytes
  const wide = (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)
  return !wide && bytes.includes(NEWLINE)
}

/**
 * The same text with some lines emptied, so that all others keep their numbers.
 *
 * @param bytes - the text, in any encoding in which a line ends with the byte 10
 * @param lines - lines to empty, counted from 1
 */
export function blankLines(bytes: Uint8Array, lines: ReadonlySet<number>): Uint8Array {
  const kept: number[] = []
  let line = 1
  for (const byte of bytes) {
    if (byte === NEWLINE) line += 1
    if (byte === NEWLINE || !lines.has(line)) kept.push(byte)
  }
  return Uint8Array.from(kept)
}
