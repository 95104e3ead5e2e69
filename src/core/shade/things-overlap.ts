/** Spans of one direction that things cover, seen from one cell, as rise over distance [m/m]; the first `count` count. */
export interface Spans {
  count: number
  readonly low: Float64Array
  readonly high: Float64Array
  /** What covers it: the number of its layer. */
  readonly layer: Int32Array
  /** Room to put their ends in order. */
  readonly ends: Float64Array
}

/**
 * Room for spans.
 *
 * @param most - how many there may be [count]
 * @returns no spans yet
 */
export function emptySpans(most: number): Spans {
  return {
    count: 0,
    low: new Float64Array(most),
    high: new Float64Array(most),
    layer: new Int32Array(most),
    ends: new Float64Array(2 * most),
  }
}

/**
 * Cuts spans at each other's ends.
 *
 * @param spans - the spans
 * @param tell - takes each stretch between two neighbouring ends, from below upwards [m/m]; some may be covered by none
 */
export function eachStretch(spans: Spans, tell: (low: number, high: number) => void): void {
  const { count, low, high, ends } = spans
  if (count === 1) {
    tell(low[0]!, high[0]!)
    return
  }
  for (let at = 0; at < count; at += 1) {
    ends[2 * at] = low[at]!
    ends[2 * at + 1] = high[at]!
  }
  const inOrder = ends.subarray(0, 2 * count).sort()
  for (let at = 1; at < inOrder.length; at += 1)
    if (inOrder[at]! > inOrder[at - 1]!) tell(inOrder[at - 1]!, inOrder[at]!)
}

/**
 * Share of light that comes through everything that covers a stretch. Layers of one thing lie together and count once.
 *
 * @param spans - the spans, in the order of their layers
 * @param through - share that comes through each layer [1]
 * @param thingOf - number of the thing that each layer belongs to
 * @param stretch - lower and upper end of the stretch [m/m]
 * @returns share of light [1], 0 to 1; 1 where nothing covers it
 */
export function throughStretch(
  spans: Spans,
  through: Float64Array,
  thingOf: Int32Array,
  stretch: readonly [low: number, high: number],
): number {
  const [low, high] = stretch
  let share = 1
  let counted = -1
  for (let at = 0; at < spans.count; at += 1) {
    const layer = spans.layer[at]!
    if (spans.low[at]! > low || spans.high[at]! < high || thingOf[layer] === counted) continue
    share *= through[layer]!
    counted = thingOf[layer]!
  }
  return share
}
