import fc from 'fast-check'
import { hostile } from './fuzz-check'

/** What is done to a good file: cut, bytes changed, a piece doubled or replaced by something hostile, encoded anew. */
export function broken(seeds: readonly (string | Uint8Array)[]): fc.Arbitrary<Uint8Array> {
  const whole = fc.constantFrom(...seeds.map((seed) => (typeof seed === 'string' ? encoded(seed) : seed)))
  const damage = fc.record({
    kind: fc.constantFrom('cut', 'flip', 'double', 'replace', 'utf-16', 'latin'),
    at: fc.nat({ max: 10_000 }),
    length: fc.nat({ max: 40 }),
    byte: fc.nat({ max: 255 }),
    word: fc.constantFrom(...hostile),
  })
  return fc
    .tuple(whole, fc.array(damage, { minLength: 1, maxLength: 4 }))
    .map(([bytes, steps]) => steps.reduce((sofar, step) => damaged(sofar, step), bytes))
}

interface Damage {
  readonly kind: string
  readonly at: number
  readonly length: number
  readonly byte: number
  readonly word: string
}

const encoded = (text: string): Uint8Array => new TextEncoder().encode(text)

function damaged(bytes: Uint8Array, { kind, at, length, byte, word }: Damage): Uint8Array {
  const place = bytes.length === 0 ? 0 : at % bytes.length
  const [head, tail] = [bytes.subarray(0, place), bytes.subarray(place)]
  if (kind === 'cut') return head
  if (kind === 'double') return joined(head, bytes.subarray(place, place + length), tail)
  if (kind === 'replace') return joined(head, encoded(word), tail.subarray(length))
  if (kind === 'utf-16') return joined(Uint8Array.of(0xff, 0xfe), wide(bytes))
  if (kind === 'latin') return joined(head, Uint8Array.of(0xe4, byte), tail)
  const flipped = bytes.slice()
  if (flipped.length > 0) flipped[place] = byte
  return flipped
}

/** Plain letters as UTF-16, low byte first. */
function wide(bytes: Uint8Array): Uint8Array {
  const wider = new Uint8Array(bytes.length * 2)
  bytes.forEach((byte, at) => (wider[at * 2] = byte))
  return wider
}

function joined(...pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0))
  let at = 0
  for (const piece of pieces) {
    whole.set(piece, at)
    at += piece.length
  }
  return whole
}
