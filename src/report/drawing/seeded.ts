/** Multiplier and increment of the linear congruential generator of Knuth's MMIX. Low bits are dropped. */
const MULTIPLIER = 6364136223846793005n
const INCREMENT = 1442695040888963407n
const WORD = (1n << 64n) - 1n

/** Numbers from 0 to below 1 that depend on the seed alone: the same plan always draws the same bank. */
export function seededRandom(seed: string): () => number {
  let state = hash(seed)
  const next = () => {
    state = (state * MULTIPLIER + INCREMENT) & WORD
    return Number(state >> 11n) / 2 ** 53
  }
  next()
  return next
}

/** FNV-1a, 64 bits: spreads short, similar words far apart. */
function hash(words: string): bigint {
  let state = 14695981039346656037n
  for (let at = 0; at < words.length; at++)
    state = ((state ^ BigInt(words.charCodeAt(at))) * 1099511628211n) & WORD
  return state
}
