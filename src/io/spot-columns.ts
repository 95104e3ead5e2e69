/** A column of figures: its range, unit, and whether every row needs it. */
export interface FigureColumn {
  readonly name: string
  readonly least: number
  readonly most: number
  readonly unit: string
}

/** Columns of figures besides the twelve months. */
export const figureColumns = {
  latitudeDeg: { name: 'latitudeDeg', least: -90, most: 90, unit: '°' },
  slopeDeg: { name: 'slopeDeg', least: 0, most: 80, unit: '°' },
  aspectDeg: { name: 'aspectDeg', least: 0, most: 360, unit: '°' },
  soilDepthM: { name: 'soilDepthM', least: 0.05, most: 5, unit: ' m' },
  stonesPercent: { name: 'stonesPercent', least: 0, most: 90, unit: ' %' },
  organicPercent: { name: 'organicPercent', least: 0, most: 8, unit: ' %' },
  ph: { name: 'ph', least: 3, most: 10, unit: '' },
  elevationM: { name: 'elevationM', least: -430, most: 6000, unit: ' m' },
} as const satisfies Record<string, FigureColumn>

/** The twelve columns of one kind of normals. */
function twelveColumns(kind: string, range: Omit<FigureColumn, 'name'>): readonly FigureColumn[] {
  return Array.from({ length: 12 }, (_, month) => ({ ...range, name: `${kind}${month + 1}` }))
}

/** Columns of the climate, January first. */
export const monthColumns = {
  tMinC: twelveColumns('tmin', { least: -70, most: 45, unit: ' °C' }),
  tMaxC: twelveColumns('tmax', { least: -60, most: 60, unit: ' °C' }),
  rainMm: twelveColumns('rain', { least: 0, most: 3000, unit: ' mm' }),
} as const

/** Columns of what tells the radiation better than temperature does, January first; all twelve or none. */
export const lightColumns = {
  solarMjPerM2: twelveColumns('radiation', { least: 0, most: 45, unit: ' MJ/m² a day' }),
  sunshineHours: twelveColumns('sunshine', { least: 0, most: 24, unit: ' h a day' }),
} as const

/** Positions by word, each the middle of its fifth of the slope, 0 foot to 1 crest. */
export const positionWords: ReadonlyMap<string, number> = new Map([
  ['foot', 0.1],
  ['lower', 0.3],
  ['mid', 0.5],
  ['upper', 0.7],
  ['crest', 0.9],
])

/** Columns that every file needs. */
export const neededColumns = ['id', 'latitudeDeg', 'slopeDeg', 'position', 'texture'] as const

/** Every column that is read, as the manual spells it. */
export const knownColumns: readonly string[] = [
  'id',
  'position',
  'texture',
  'formDown',
  'formAcross',
  'place',
  'coast',
  ...Object.keys(figureColumns),
  ...Object.values({ ...monthColumns, ...lightColumns }).flatMap((columns) =>
    columns.map(({ name }) => name),
  ),
]
