/** Spans of one direction that things cover, seen from one cell, as rise over distance [m/m]; the first `count` count. */
export interface Spans {
  count: number
  readonly low: Float64Array
  readonly high: Float64Array
  /** What covers it: the number of its layer, each higher than the one before. */
  readonly layer: Int32Array
  /** Their ends in order once they are cut; some may be equal. */
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
 * Adds a span.
 *
 * @param spans - the spans so far
 * @param layer - number of its layer [count]
 * @param low - its lower end [m/m]
 * @param high - its upper end [m/m]
 */
export function addSpan(spans: Spans, layer: number, low: number, high: number): void {
  spans.low[spans.count] = low
  spans.high[spans.count] = high
  spans.layer[spans.count] = layer
  spans.count += 1
}

/**
 * Cuts spans at each other's ends.
 *
 * @param spans - the spans; its `ends` are put in order
 * @returns how many ends there are [count]
 */
export function cutSpans(spans: Spans): number {
  if (spans.count === 1) {
    spans.ends[0] = spans.low[0]!
    spans.ends[1] = spans.high[0]!
    return 2
  }
  let count = 0
  for (let at = 0; at < spans.count; at += 1) {
    count = sortedIn(spans.ends, count, spans.low[at]!)
    count = sortedIn(spans.ends, count, spans.high[at]!)
  }
  return count
}

function sortedIn(ends: Float64Array, count: number, end: number): number {
  let at = count
  while (at > 0 && ends[at - 1]! > end) {
    ends[at] = ends[at - 1]!
    at -= 1
  }
  ends[at] = end
  return count + 1
}

/**
 * Share of light that comes through everything that covers one stretch between two ends. Layers of one thing lie together
 * and count once.
 *
 * @param spans - the spans, cut
 * @param through - share that comes through each layer [1]
 * @param thingOf - number of the thing that each layer belongs to
 * @param end - number of the stretch's upper end [count], 1 or more
 * @returns share of light [1], 0 to 1; 1 where nothing covers it
 */
export function throughStretch(
  spans: Spans,
  through: Float64Array,
  thingOf: Int32Array,
  end: number,
): number {
  if (spans.count === 1) return through[spans.layer[0]!]!
  const low = spans.ends[end - 1]!
  const high = spans.ends[end]!
  let share = 1
  let counted = -1
  for (let at = 0; at < spans.count; at += 1) {
    const thing = thingOf[spans.layer[at]!]!
    if (spans.low[at]! > low || spans.high[at]! < high || thing === counted) continue
    share *= through[spans.layer[at]!]!
    counted = thing
  }
  return share
}
