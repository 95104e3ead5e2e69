/** Seeded chance for simulations: the same seed gives the same numbers (mulberry32). */
function chance(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

/** Standard normal numbers by the polar way of Box and Muller. */
export function normals(seed: number): () => number {
  const next = chance(seed)
  return () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next())
}

/** A place in plan. */
export interface Place {
  readonly xM: number
  readonly yM: number
}

/**
 * Levels of fractional Brownian ground at some places: from the covariance c (|x|^2H + |y|^2H - |x-y|^2H) of ground that is
 * 0 at the origin (Mandelbrot & Van Ness 1968), by Cholesky's triangular root.
 */
export function roughGround(places: readonly Place[], coefficient: number, smoothness: number) {
  const power = (one: Place, other: Place) =>
    Math.hypot(one.xM - other.xM, one.yM - other.yM) ** (2 * smoothness)
  const origin = { xM: -1000.123, yM: -999.321 }
  const root = cholesky(
    places.map((one) =>
      places.map((other) => coefficient * (power(one, origin) + power(other, origin) - power(one, other))),
    ),
  )
  return (normal: () => number): number[] => {
    const free = places.map(() => normal())
    return root.map((row) => row.reduce((sum, weight, at) => sum + weight * free[at]!, 0))
  }
}

function cholesky(matrix: readonly (readonly number[])[]): number[][] {
  const root: number[][] = []
  for (const [at, row] of matrix.entries()) {
    const own: number[] = []
    for (let below = 0; below <= at; below++) {
      const other = below === at ? own : root[below]!
      let left = row[below]!
      for (let k = 0; k < below; k++) left -= own[k]! * other[k]!
      own.push(below === at ? Math.sqrt(Math.max(0, left)) : left / other[below]!)
    }
    root.push(own)
  }
  return root
}

/** Root of the mean square. */
export const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length)

/** Standard deviation around the mean. */
export function deviation(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1))
}
