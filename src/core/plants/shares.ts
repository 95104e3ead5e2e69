/** Most of a zone that a plant of each dominance class may have beside others [share 0 to 1; own synthesis]. */
const SHARE_CAPS = [1, 1, 1, 0.4, 0.2, 0] as const

/** The most that a plant has which the person insists on, however it spreads [share 0 to 1; own judgement]. */
const INSISTED_CAP = 0.2

/** First-come weights of a layer's plants: the best fit gets most [own judgement]. */
const RANK_WEIGHTS = [0.34, 0.24, 0.16, 0.14, 0.12] as const

/** Weight of every further plant [own judgement]. */
const LATER_WEIGHT = 0.1

/** Shares closer than this are the same [share]. */
const SHARE_TOLERANCE = 1e-12

/** A plant that asks for a share of a zone. */
interface Sharer {
  readonly dominance: number
  readonly insisted: boolean
}

/**
 * The most of a zone that a plant may have beside others.
 *
 * @param sharer - dominance class 0 to 5 [class], and whether the person insists on it
 * @returns largest share of the zone, 0 to 1 [m²/m²]
 */
export function shareCap(sharer: Sharer): number {
  const cap = SHARE_CAPS[sharer.dominance] ?? 0
  return sharer.insisted ? Math.max(cap, INSISTED_CAP) : cap
}

/**
 * Shares of a layer among its plants, best first, none above its cap.
 *
 * @param sharers - the layer's plants, best first
 * @param layerShare - share of the zone that the layer has, 0 to 1 [m²/m²]
 * @returns share of the zone for each plant [m²/m²]; they sum to the layer's share as far as the caps let them.
 *   A plant that has the whole zone to itself knows no cap.
 */
export function layerShares(sharers: readonly Sharer[], layerShare: number): number[] {
  const alone = sharers.length === 1 && layerShare === 1
  const caps = sharers.map((sharer) => (alone ? 1 : shareCap(sharer)))
  const shares = sharers.map(() => 0)
  let open = sharers.map((_, index) => index)
  let left = layerShare
  // Each round gives what is left by weight; who reaches the cap leaves the round.
  while (left > SHARE_TOLERANCE && open.length > 0) {
    left -= giveRound(shares, { open, caps, left })
    open = open.filter((index) => (caps[index] ?? 0) - (shares[index] ?? 0) > SHARE_TOLERANCE)
  }
  return shares
}

function giveRound(
  shares: number[],
  round: { readonly open: readonly number[]; readonly caps: readonly number[]; readonly left: number },
): number {
  const weightOf = (index: number) => RANK_WEIGHTS[index] ?? LATER_WEIGHT
  const weights = round.open.reduce((sum, index) => sum + weightOf(index), 0)
  let givenInAll = 0
  for (const index of round.open) {
    const before = shares[index] ?? 0
    const given = Math.min((round.left * weightOf(index)) / weights, (round.caps[index] ?? 0) - before)
    shares[index] = before + given
    givenInAll += given
  }
  return givenInAll
}
