import { describe, expect, it } from 'vitest'
import { diffuseShare } from '../../../src/core/climate/diffuse-share'

/** Diffuse share of ONE HOUR by its clearness (Erbs, Klein & Duffie 1982); restated here, for the product has months. */
function hourly(k: number): number {
  if (k <= 0.22) return 1 - 0.09 * k
  if (k > 0.8) return 0.165
  return 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336)))
}

/** How often each clearness comes in a month of a mean clearness (Bendt, Collares-Pereira & Rabl 1981), unscaled. */
function frequencies(mean: number) {
  const [least, most] = [0.05, 0.6313 + 0.267 * mean - 11.9 * (mean - 0.75) ** 8]
  const clearness = Array.from({ length: 2001 }, (_, at) => least + ((most - least) * at) / 2000)
  const weights = (rise: number) => clearness.map((k) => Math.exp(rise * (k - (rise > 0 ? most : least))))
  const meanOf = (weight: readonly number[]) => weighted(clearness, weight, () => 1)
  let [low, high] = [-60, 60]
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2
    if (meanOf(weights(middle)) < mean) low = middle
    else high = middle
  }
  return { clearness, weight: weights(low) }
}

const weighted = (clearness: readonly number[], weight: readonly number[], of: (k: number) => number) =>
  clearness.reduce((sum, k, at) => sum + k * of(k) * weight[at]!, 0) /
  weight.reduce((sum, one) => sum + one, 0)

describe('diffuseShare beside the hourly correlation it does not use', () => {
  it.each([
    [0.405723511, 50, 41.5703604],
    [0.718132729, 1000, 217.860117],
    [0.768214312, 1000, 170.790318],
  ])('pvlib Erbs vectors: clearness %s, %s W/m²: %s W/m² diffuse', (k, level, diffuse) => {
    expect(Math.abs(hourly(k) * level - diffuse)).toBeLessThan(1e-4)
  })

  it.each([0.35, 0.4, 0.45, 0.5, 0.55, 0.6])(
    'Erbs, Klein & Duffie 1982, clearness %s: the months’ curve lies near the hours of such a month, the hourly curve of its mean hour does not',
    (mean) => {
      const { clearness, weight } = frequencies(mean)
      expect(weighted(clearness, weight, () => 1)).toBeCloseTo(mean, 6)
      const ofHours = weighted(clearness, weight, hourly) / mean
      const ofMonth = diffuseShare(mean, 13)
      expect(Math.abs(ofHours - ofMonth)).toBeLessThan(0.08)
      expect(Math.abs(hourly(mean) - ofMonth)).toBeGreaterThan(Math.abs(ofHours - ofMonth))
    },
  )

  it('Duffie & Beckman example 2.11.1, a single day: clearness 0.69, 0.26 diffuse', () => {
    expect(Math.abs(diffuseShare(0.692, 13) - 0.26)).toBeLessThan(0.01)
  })
})
