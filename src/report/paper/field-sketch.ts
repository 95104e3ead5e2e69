import type { SurveyMethod } from '#core/booking'

/** A word of a sketch at its place. */
interface SketchWord {
  readonly text: string
  readonly xPx: number
  readonly yPx: number
}

/** Lines and words of a sketch 320 px wide and 130 px high. */
interface Sketch {
  readonly says: string
  readonly ground: string
  /** Lines of sight and water levels. */
  readonly sights: readonly string[]
  readonly tools: readonly string[]
  readonly words: readonly SketchWord[]
}

const SLOPE = 'M6 62 L70 66 L150 92 L230 108 L314 116'

/**
 * What a method measures, drawn on a slope.
 *
 * @param method - the method
 * @returns its sketch; undefined for methods that fill no field book
 */
export function sketchOf({ id, book }: Pick<SurveyMethod, 'id' | 'book'>): Sketch | undefined {
  if (id === 'line-level') return lineLevel
  return book === null ? undefined : sketches[book]
}

const lineLevel: Sketch = {
  says: 'A level string between two poles: the drop is its height on the lower pole less that on the upper.',
  ground: SLOPE,
  sights: ['M70 38 H230'],
  tools: ['M70 66 V20', 'M230 108 V20', 'M144 38 V44 H156 V38'],
  words: [
    { text: 'string', xPx: 96, yPx: 32 },
    { text: 'level', xPx: 140, yPx: 56 },
    { text: 'height', xPx: 34, yPx: 54 },
    { text: 'height', xPx: 236, yPx: 72 },
  ],
}

const sketches: Readonly<Record<NonNullable<SurveyMethod['book']>, Sketch>> = {
  'level-book': {
    says: 'A level between two staffs: back sight uphill on the known mark, fore sight downhill.',
    ground: SLOPE,
    sights: ['M30 34 H290'],
    tools: [
      'M30 63 V10',
      'M290 115 V10',
      'M150 92 L158 36 L168 95 M150 34 H168',
      'M26 63 H34',
      'M286 115 H294',
    ],
    words: [
      { text: 'back sight', xPx: 38, yPx: 28 },
      { text: 'fore sight', xPx: 226, yPx: 28 },
      { text: 'known mark', xPx: 6, yPx: 80 },
    ],
  },
  chain: {
    says: 'A tape along the ground, and the angle sighted from eye mark to eye mark of two canes.',
    ground: SLOPE,
    sights: ['M70 34 L150 60', 'M70 34 H146'],
    tools: ['M70 66 V34', 'M150 92 V60', 'M70 62 L150 88'],
    words: [
      { text: 'angle', xPx: 118, yPx: 44 },
      { text: 'length on the ground', xPx: 62, yPx: 108 },
    ],
  },
  steps: {
    says: 'A frame held level: one foot on the ground, the drop measured below the other.',
    ground: SLOPE,
    sights: ['M70 66 H152', 'M111 14 V50'],
    tools: ['M70 66 L111 14 L152 66', 'M90 40 H132', 'M156 66 V93', 'M152 66 H160 M152 93 H160'],
    words: [
      { text: 'drop', xPx: 164, yPx: 84 },
      { text: 'span', xPx: 100, yPx: 62 },
    ],
  },
  string: {
    says: 'A level string from a stake at the top; the depth to the ground measured straight down at every bend.',
    ground: SLOPE,
    sights: ['M70 66 H262'],
    tools: ['M70 70 V40', 'M262 112 V40', 'M150 66 V92', 'M230 66 V108'],
    words: [
      { text: 'run', xPx: 104, yPx: 60 },
      { text: 'depth', xPx: 154, yPx: 84 },
      { text: 'depth', xPx: 234, yPx: 92 },
    ],
  },
}
