/** One hatch as a repeated tile: pure data, for any figure that fills with it. */
export interface Hatch {
  readonly widthPx: number
  readonly heightPx: number
  /** Turn of the whole pattern, clockwise [°]. */
  readonly turnDeg: number
  readonly marks: readonly HatchMark[]
}

/** A mark of a tile; its class gives colour and weight. */
interface HatchMark {
  readonly look: string
  readonly d: string
}

function tile(size: readonly [number, number, number?], ...marks: (readonly [string, string])[]): Hatch {
  const [widthPx, heightPx, turnDeg = 0] = size
  return { widthPx, heightPx, turnDeg, marks: marks.map(([look, d]) => ({ look, d })) }
}

/** Every hatch of the drawings, by what it means. Solid "mow" needs none. */
export const hatches = {
  'mow-on-foot': tile([7, 7, -45], ['hatch-leaf', 'M0 0H3.7V7H0Z']),
  'cut-once': tile([13, 10], ['hatch-leaf', 'M0 0H3.2V10H0Z']),
  leave: tile([5, 5, 45], ['hatch-ink', 'M0 0V5']),
  never: tile([5, 5], ['hatch-red', 'M0 0L5 5M5 0L0 5']),
  sand: tile([17, 11], ['fleck', 'M2 2h.1M8 5h.1M14 1.5h.1M5 9h.1M11.5 8.5h.1']),
  loam: tile([19, 12], ['fleck', 'M2 2.5l2.2 1M10 4.5l2-1.2M5.5 9l2 .5M14.5 9.5l1.6-.9M16 2.4h.1']),
  clay: tile([16, 9], ['fleck', 'M0.6 2.2H8.4M8.6 6.7H15.4']),
  base: tile([40, 17, 5], ['hatch-earth', 'M2 4h21M29 4h7M8 12.5h25']),
  stone: tile([14, 8], ['hatch-ink', 'M0 0H14M0 4H14M4 0V4M11 4V8']),
  wet: tile([9, 6], ['hatch-light', 'M0.5 2h5M5 5h4']),
  dry: tile([6, 6], ['hatch-dark', 'M1.5 1.5h.1M4.5 4.5h.1']),
  slope: tile([5, 5, 45], ['hatch-ink', 'M0 0V5']),
  'sky-solid': tile([4, 4, 45], ['sky-ink', 'M0 0V4']),
  'sky-leafy': tile([9, 7], ['sky-leaf', 'M0 3q2.2-3.4 4.4 0M4.6 6.5q2.2-3.4 4.4 0']),
  'sky-bare': tile([11, 9], ['sky-twig', 'M2.5 9V3M2.5 6l2-2.4M8 5V.5M8 4L6.4 2']),
  'sky-own': tile([6, 6, 45], ['sky-earth', 'M0 0V6']),
  'sky-far': tile([9, 3], ['sky-earth', 'M0 1.5h6']),
  afternoon: tile([4, 4, 45], ['hatch-dark', 'M0 0V4']),
  'cover-mown': tile([7, 6], ['cover-mark', 'M1 5l1-2.4 1 2.4M4.5 2.6l1-2.4 1 2.4']),
  'cover-meadow': tile(
    [14, 11],
    ['cover-mark', 'M2 10V4M2 7l2-2M9 6V1M9 4L7 2'],
    ['cover-bloom', 'M2 3.4h.1M9 .9h.1'],
  ),
  'cover-ground-cover': tile([12, 8], ['cover-mark', 'M0.5 7q1.6-4 3.2 0q1.6-4 3.2 0M7 3q1.4-3 2.6 0']),
  'cover-shrubs': tile([16, 12], ['cover-mark', 'M1 10a4 4 0 0 1 7 0ZM9.5 5.5a3 3 0 0 1 5 0Z']),
  'cover-trees': tile(
    [18, 14],
    ['cover-mark', 'M5 13V9M5 9a3.6 3.6 0 1 1 .1 0M14 6V4M14 4.4a2 2 0 1 1 .1 0'],
  ),
  'cover-terrace': tile([18, 10], ['cover-mark', 'M0 3h8v3h10']),
  'cover-leave': tile([9, 9, 45], ['cover-mark', 'M0 0V9']),
} as const satisfies Readonly<Record<string, Hatch>>

export type HatchName = keyof typeof hatches

/** What the section, the plan, and the strips of soil and mowing fill with. */
export const sectionHatches: readonly HatchName[] = [
  'mow-on-foot',
  'cut-once',
  'leave',
  'never',
  'sand',
  'loam',
  'clay',
  'base',
  'stone',
]

/** What the strips of cover, hours, wetness and sun fill with. */
export const stripHatches: readonly HatchName[] = [
  'wet',
  'dry',
  'slope',
  'cover-mown',
  'cover-meadow',
  'cover-ground-cover',
  'cover-shrubs',
  'cover-trees',
  'cover-terrace',
  'cover-leave',
]
