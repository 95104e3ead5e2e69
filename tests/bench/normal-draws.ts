/** Digits of a 64-bit and a 128-bit number. */
const MASK_64 = (1n << 64n) - 1n
const MASK_128 = (1n << 128n) - 1n

/** Multiplier of the 128-bit generator (O'Neill 2014). */
const MULTIPLIER = 0x2360ed051fc65da44385df649fccf645n

/** The layers under the bell curve, where the last begins, and the area of each (Marsaglia and Tsang 2000). */
const LAYERS = 256
const TAIL = 3.6541528853610088
const LAYER_AREA = 0.00492867323399

/** Random bits that make one place across a layer. */
const PLACE_BITS = 52n
const PLACES = 2 ** 52

/** State of the generator: where it stands, and its stream. */
export interface Seed {
  readonly state: bigint
  readonly stream: bigint
}

/** 64 random bits at a time: permuted congruential generator PCG XSL RR 128/64 (O'Neill 2014, HMC-CS-2014-0905). */
function randomBits({ state: seed, stream }: Seed): () => bigint {
  let state = seed
  return () => {
    state = (state * MULTIPLIER + stream) & MASK_128
    const mixed = (state >> 64n) ^ (state & MASK_64)
    const turn = state >> 122n
    return ((mixed >> turn) | (mixed << (64n - turn))) & MASK_64
  }
}

const bell = (x: number) => Math.exp(-0.5 * x * x)

/** Width of each layer, from the lowest; the lowest counts its tail. */
function layerWidths(): Float64Array {
  const widths = new Float64Array(LAYERS + 1)
  widths[0] = LAYER_AREA / bell(TAIL)
  widths[1] = TAIL
  for (let layer = 2; layer < LAYERS; layer++) {
    const below = widths[layer - 1] ?? 0
    widths[layer] = Math.sqrt(-2 * Math.log(LAYER_AREA / below + bell(below)))
  }
  return widths
}

/**
 * Draws from the standard normal distribution, the same as numpy's default_rng from the same state: the ziggurat of
 * Marsaglia and Tsang 2000 (Journal of Statistical Software 5: 8), layer 0 the tail, then 255 the widest down to 1.
 */
export function normalDraws(seed: Seed): () => number {
  const bits = randomBits(seed)
  const unit = () => Number(bits() >> 11n) / 2 ** 53
  const widths = layerWidths()
  return () => {
    for (;;) {
      const random = bits()
      const index = Number(random & 0xffn)
      const sign = random & 0x100n ? -1 : 1
      const place = Number((random >> 9n) & ((1n << PLACE_BITS) - 1n))
      const layer = index === 0 ? 0 : LAYERS - index
      const width = widths[layer] ?? 0
      const x = (place * width) / PLACES
      if (x < (widths[layer + 1] ?? 0)) return sign * x
      if (index === 0) return (place & 0x100 ? -1 : 1) * tail(unit)
      const [outer, inner] = [bell(width), bell(widths[layer + 1] ?? 0)]
      if ((inner - outer) * unit() + outer < bell(x)) return sign * x
    }
  }
}

function tail(unit: () => number): number {
  for (;;) {
    const beyond = -Math.log1p(-unit()) / TAIL
    const height = -Math.log1p(-unit())
    if (height + height > beyond * beyond) return TAIL + beyond
  }
}
