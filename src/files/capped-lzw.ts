/** Codes of TIFF 6.0 section 13: begin anew, and the end. */
const CLEAR = 256
const END = 257
const FIRST_FREE = 258
const LEAST_BITS = 9
const MOST_BITS = 12
const MOST_CODES = 2 ** MOST_BITS

/** Strings seen so far: each is an earlier one and a byte more. */
interface Strings {
  readonly before: Uint16Array
  readonly last: Uint8Array
  readonly length: Uint32Array
  next: number
}

/**
 * Unpacks LZW as TIFF 6.0 section 13 has it: codes of 9 to 12 bits, highest bit first, one bit more a code early.
 *
 * @param packed - one strip or tile
 * @param mostBytes - what it can hold at most [bytes], above 0
 * @returns the bytes
 * @throws RangeError when the codes make no sense, or hold more than they can
 * @see TIFF Revision 6.0, Aldus 1992, section 13
 */
export function unpackLzw(packed: Uint8Array, mostBytes: number): Uint8Array<ArrayBuffer> {
  const out = new Growing(mostBytes)
  const strings = freshStrings()
  let [bits, at, previous] = [LEAST_BITS, 0, -1]
  for (;;) {
    const code = codeAt(packed, at, bits)
    at += bits
    if (code === undefined || code === END) return out.bytes()
    if (code === CLEAR) {
      strings.next = FIRST_FREE
      bits = LEAST_BITS
      previous = -1
      continue
    }
    previous = step(code, previous, { strings, out })
    if (strings.next >= 2 ** bits - 1 && bits < MOST_BITS) bits++
  }
}

/** Writes the string of a code and learns the one it makes with the code before; gives the code. */
function step(code: number, previous: number, { strings, out }: { strings: Strings; out: Growing }): number {
  const known = code < CLEAR || (code >= FIRST_FREE && code < strings.next)
  if (!known && (code !== strings.next || previous < 0))
    throw new RangeError(`unpackLzw: a code must be known or the next one, got ${code}`)
  // A code that is only just being learnt is the string before it and that string's own first byte.
  if (!known) learn(strings, previous, firstOf(strings, previous))
  out.take(strings, code)
  if (known && previous >= 0) learn(strings, previous, firstOf(strings, code))
  return code
}

function freshStrings(): Strings {
  const strings = {
    before: new Uint16Array(MOST_CODES),
    last: new Uint8Array(MOST_CODES),
    length: new Uint32Array(MOST_CODES),
    next: FIRST_FREE,
  }
  for (let byte = 0; byte < CLEAR; byte++) {
    strings.last[byte] = byte
    strings.length[byte] = 1
  }
  return strings
}

function learn(strings: Strings, previous: number, byte: number): void {
  if (strings.next >= MOST_CODES) throw new RangeError(`unpackLzw: at most ${MOST_CODES} strings, got more`)
  strings.before[strings.next] = previous
  strings.last[strings.next] = byte
  strings.length[strings.next] = (strings.length[previous] ?? 0) + 1
  strings.next++
}

/** Every string is made of an older one, so this ends. */
function firstOf({ before, last, length }: Strings, code: number): number {
  let at = code
  while ((length[at] ?? 1) > 1) at = before[at] ?? 0
  return last[at] ?? 0
}

/** Bits of a stream, highest first; undefined where the stream ends. */
function codeAt(packed: Uint8Array, at: number, bits: number): number | undefined {
  if (at + bits > packed.length * 8) return undefined
  const byte = at >> 3
  const three = ((packed[byte] ?? 0) << 16) | ((packed[byte + 1] ?? 0) << 8) | (packed[byte + 2] ?? 0)
  return (three >> (24 - (at & 7) - bits)) & (2 ** bits - 1)
}

/** Bytes written so far, in a buffer that doubles up to its bound. */
class Growing {
  private room = new Uint8Array(1024)
  private filled = 0
  private readonly most: number

  constructor(most: number) {
    this.most = most
  }

  take({ before, last, length }: Strings, code: number): void {
    const end = this.filled + (length[code] ?? 1)
    if (end > this.most)
      throw new RangeError(`unpackLzw: a block must have at most ${this.most} bytes, got more`)
    if (end > this.room.length) {
      const wider = new Uint8Array(Math.max(end, this.room.length * 2))
      wider.set(this.room)
      this.room = wider
    }
    let from = code
    for (let place = end - 1; place >= this.filled; place--) {
      this.room[place] = last[from] ?? 0
      from = before[from] ?? 0
    }
    this.filled = end
  }

  bytes(): Uint8Array<ArrayBuffer> {
    return this.room.slice(0, this.filled)
  }
}
