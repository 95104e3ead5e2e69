/** Text of a file, and the encoding it was written in. */
export interface DecodedText {
  readonly text: string
  readonly encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252'
}

/** Bytes looked at to tell an encoding without a byte-order mark. */
const LOOKED_AT = 2000

/**
 * Text from bytes: UTF-8 and UTF-16 with or without a byte-order mark, otherwise Windows-1252. Line ends of any age
 * become a plain new line.
 *
 * @param bytes - the file
 * @returns its text, without the mark
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  const { encoding, text } = decoded(bytes)
  return { encoding, text: text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n') }
}

function decoded(bytes: Uint8Array): DecodedText {
  const [first, second] = bytes
  if (first === 0xff && second === 0xfe) return utf16(bytes, 'utf-16le')
  if (first === 0xfe && second === 0xff) return utf16(bytes, 'utf-16be')
  const zeros = zerosOf(bytes)
  if (zeros.odd > 0.4 && zeros.even < 0.1) return utf16(bytes, 'utf-16le')
  if (zeros.even > 0.4 && zeros.odd < 0.1) return utf16(bytes, 'utf-16be')
  try {
    return { encoding: 'UTF-8', text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) }
  } catch {
    return { encoding: 'Windows-1252', text: new TextDecoder('windows-1252').decode(bytes) }
  }
}

const utf16 = (bytes: Uint8Array, label: 'utf-16le' | 'utf-16be'): DecodedText => ({
  encoding: 'UTF-16',
  text: new TextDecoder(label).decode(bytes),
})

/** Share of zero bytes at even and odd places: in UTF-16 every plain letter has one. */
function zerosOf(bytes: Uint8Array): { even: number; odd: number } {
  const head = bytes.subarray(0, LOOKED_AT)
  const half = Math.max(1, Math.floor(head.length / 2))
  let even = 0
  let odd = 0
  head.forEach((byte, at) => {
    if (byte !== 0) return
    if (at % 2 === 0) even++
    else odd++
  })
  return { even: even / half, odd: odd / half }
}
