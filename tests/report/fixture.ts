import type { Plant } from '#core/plants'
import { eachMonth, months, type Month } from '#core/units'
import type { GroundPoint, SectionView, SectionZone } from '../../src/report/section-view.types'

/** An invented bank of five zones with an oak, for drawing; its figures prove nothing. */
export const exampleView = (): SectionView => viewOf({ lengthM: 30, fallM: 9 })

/** A long, gentle field: only a declared exaggeration shows its fall. */
export const gentleView = (): SectionView => ({
  ...viewOf({ lengthM: 220, fallM: 9 }),
  name: 'Long meadow',
  obstacles: [],
})

/** Banks of any length, fall and number of zones, for what must hold on all of them. */
export function anyView(random: () => number): SectionView {
  const shape = { lengthM: 6 + random() * 150, fallM: 1 + random() * 14 }
  const view = viewOf(shape)
  const count = 1 + Math.floor(random() * 9)
  const edges = [0, ...Array.from({ length: count - 1 }, () => random()), 1].sort((a, b) => a - b)
  const zones = Array.from({ length: count }, (_, at) => {
    const like = view.zones[at % view.zones.length]
    if (!like) throw new Error('the example has no zones')
    const [from, to] = [edges[at] ?? 0, edges[at + 1] ?? 1]
    return {
      ...like,
      id: `zone-${at}`,
      letter: String.fromCharCode(65 + at),
      name: `${like.name} ${'and further on '.repeat(Math.floor(random() * 3))}`.trim(),
      spans: [{ fromM: from * shape.lengthM, toM: to * shape.lengthM }],
    }
  })
  return { ...view, zones, obstacles: view.obstacles.filter(() => random() < 0.6) }
}

interface Shape {
  readonly lengthM: number
  readonly fallM: number
}

function viewOf({ lengthM, fallM }: Shape): SectionView {
  const ground = groundOf(lengthM, fallM)
  const k = lengthM / 30
  const steepest = ground.reduce((best, point) => (point.slopeDeg > best.slopeDeg ? point : best))
  return {
    name: 'Example bank',
    lengthM,
    fallM,
    footLevelM: 102.4,
    bearingDeg: 205,
    latitudeDeg: 52.1,
    ground,
    measured: [],
    drawn: { fromM: -3.4 * k, toM: lengthM + 2 * k },
    zones: zonesOf(k),
    obstacles: [
      { id: 'hall', kind: 'house', name: 'hall', fromM: -9 * k, toM: -2.2 * k, heightM: 5.4, cut: true },
      { id: 'oak', kind: 'tree', name: 'oak', fromM: 10.2 * k, toM: 20.4 * k, heightM: 9.6, cut: true },
      {
        id: 'wall',
        kind: 'wall',
        name: 'garden wall',
        fromM: 30 * k,
        toM: 30.4 * k,
        heightM: 1.1,
        cut: true,
      },
      { id: 'pipe', kind: 'downpipe', name: 'downpipe', fromM: -2.1, toM: -2, heightM: 3, cut: true },
      { id: 'gas', kind: 'services', name: 'buried cable', fromM: 3, toM: 3, heightM: undefined, cut: true },
    ],
    machines: [
      { name: 'ride-on mower', limitDeg: 12 },
      { name: 'walk-behind mower', limitDeg: 20 },
      { name: 'on foot', limitDeg: 25 },
    ],
    steepest,
    dangers: [
      {
        id: 'steep',
        fromM: 18.6 * k,
        toM: 23.4 * k,
        what: '30° is too steep for any mower',
        mend: 'Hand tools, two people, dry ground.',
        zoneId: 'd',
      },
    ],
  }
}

const knots = [
  [-3.2, 9.06],
  [0, 9],
  [2, 8.83],
  [4, 8.5],
  [8.5, 7.12],
  [12, 5.93],
  [13.2, 5.6],
  [15.5, 5.27],
  [18, 4.87],
  [19.2, 4.3],
  [21.5, 3.0],
  [24, 1.75],
  [27, 0.7],
  [30, 0],
] as const

function groundOf(lengthM: number, fallM: number): GroundPoint[] {
  const steps = 240
  const level = (share: number) => (smooth(share * 30) * fallM) / 9
  return Array.from({ length: steps + 1 }, (_, at) => {
    const share = at / steps
    const [above, below] = [Math.max(0, share - 0.01), Math.min(1, share + 0.01)]
    const gradient = (level(above) - level(below)) / ((below - above) * lengthM)
    return {
      distanceM: share * lengthM,
      heightM: level(share),
      levelSdM: 0.01,
      slopeDeg: (Math.atan(gradient) * 180) / Math.PI,
    }
  })
}

function smooth(x: number): number {
  const at = Math.max(
    1,
    knots.findIndex((knot) => knot[0] >= x),
  )
  const [x0, y0] = knots[at - 1] ?? [0, 9]
  const [x1, y1] = knots[at] ?? [30, 0]
  const before = knots[at - 2] ?? [x0 - 1, y0]
  const after = knots[at + 1] ?? [x1 + 1, y1]
  const h = x1 - x0
  const t = (x - x0) / h
  const m0 = (y1 - before[1]) / (x1 - before[0])
  const m1 = (after[1] - y0) / (after[0] - x0)
  const u = 1 - t
  return y0 * u * u * (1 + 2 * t) + h * m0 * t * u * u + y1 * t * t * (3 - 2 * t) - h * m1 * t * t * u
}

function zonesOf(k: number): SectionZone[] {
  const shrubs = [
    { plant: dogwood, layer: 'shrub', share: 0.35, spacingM: 1.2, count: 42 },
    { plant: burnet, layer: 'shrub', share: 0.25, spacingM: 0.8, count: 60 },
    { plant: woodrush, layer: 'ground', share: 0.4, spacingM: 0.35, count: 520 },
  ] as const
  const meadow = [
    { plant: loosestrife, layer: 'meadow', share: 0.5, spacingM: 0.35, count: 300 },
    { plant: sedge, layer: 'meadow', share: 0.5, spacingM: 0.3, count: 340 },
  ] as const
  const rows = [
    { letter: 'A', name: 'Shoulder', to: 4, steep: 11, mowing: 'mow', cover: 'mown', planting: [] },
    {
      letter: 'B',
      name: 'Upper face',
      to: 12.5,
      steep: 20,
      mowing: 'mow-on-foot',
      cover: 'mown',
      planting: [],
    },
    {
      letter: 'C',
      name: 'Oak bench',
      to: 18,
      steep: 16,
      mowing: 'leave',
      cover: 'ground-cover',
      planting: [{ plant: maleFern, layer: 'ground', share: 0.8, spacingM: 0.6, count: 120 }],
    },
    {
      letter: 'D',
      name: 'Steep riser',
      to: 24.5,
      steep: 30,
      mowing: 'never',
      cover: 'shrubs',
      planting: shrubs,
    },
    {
      letter: 'E',
      name: 'Wet foot',
      to: 30,
      steep: 21,
      mowing: 'cut-once',
      cover: 'meadow',
      planting: meadow,
    },
  ] as const
  return rows.map((row, at) =>
    zoneOf({ ...row, planting: [...row.planting] }, (rows[at - 1]?.to ?? 0) * k, k),
  )
}

type Row = Pick<SectionZone, 'letter' | 'name' | 'mowing' | 'cover' | 'planting'> & {
  to: number
  steep: number
}

function zoneOf(row: Row, fromM: number, k: number): SectionZone {
  const toM = row.to * k
  const areaM2 = (toM - fromM) * 24
  const rainM3 = areaM2 * 0.78
  const wet = row.letter === 'E'
  return {
    id: row.letter.toLowerCase(),
    letter: row.letter,
    name: row.name,
    spans: [{ fromM, toM }],
    slopeDegMean: row.steep * 0.8,
    slopeDegSteep: row.steep,
    slopeSdDeg: 1,
    planAreaM2: areaM2,
    slopeAreaM2: areaM2 / Math.cos((row.steep * 0.8 * Math.PI) / 180),
    soil: {
      texture: wet ? 'clay' : 'sandy loam',
      depthM: { A: 0.9, B: 0.6, C: 1.1, D: 0.5, E: 1.2 }[row.letter] ?? 1,
      stonesPercent: 10,
    },
    cover: row.cover,
    mowing: row.mowing,
    allowedMachines:
      row.mowing === 'mow'
        ? ['ride-on mower', 'walk-behind mower']
        : row.mowing === 'mow-on-foot'
          ? ['walk-behind mower']
          : [],
    sunHours: eachMonth((month) => 8 - 5.2 * Math.cos((month / 6) * Math.PI) - (row.letter === 'C' ? 2 : 0)),
    wetDays: eachMonth((month) => (wet ? 24 : 9) * (0.5 + 0.5 * Math.cos((month / 6) * Math.PI))),
    volumes: {
      rainM3,
      usedM3: rainM3 * 0.58,
      ranOffM3: rainM3 * (row.letter === 'D' ? 0.14 : 0.03),
      sidewaysM3: rainM3 * 0.2 * (1 + 'ABCDE'.indexOf(row.letter)) * 0.7,
      drainedM3: rainM3 * 0.15,
    },
    standing: wet ? { month: 0, thicknessM: 0.7 } : { month: 0, thicknessM: 0.12 },
    planting: row.planting,
    keepOff: row.letter === 'D' ? months.filter((month): month is Month => month >= 2 && month <= 7) : [],
  }
}

function plant(
  own: Pick<Plant, 'id' | 'name' | 'common' | 'lifeForm' | 'heightM' | 'spreadM'> & Partial<Plant>,
): Plant {
  return {
    synonyms: [],
    family: 'unknown',
    persistence: 'summer-green',
    winterCover: 0.2,
    yearsToMature: 6,
    spreadMPerYear: 0.1,
    rootHabit: ['fibrous'],
    rootDepthM: { bulk: 0.4, max: 0.9 },
    binding: { mat: 3, depth: 3, regrowth: 3, yearRound: 3 },
    dominance: 1,
    runMPerYear: 0,
    selfSeed: 1,
    moisture: { from: 4, best: 5, to: 7 },
    light: { from: 4, best: 7, to: 9 },
    ph: { from: 5, to: 8 },
    textures: { sand: true, loam: true, clay: true },
    drought: 2,
    waterlogging: 1,
    wetWinterDrySummer: false,
    tMinC: -20,
    heat: 'mild',
    exposure: 2,
    salt: 1,
    nitrogenFixing: false,
    native: ['british-isles'],
    sold: ['british-isles'],
    unit: '2 l pot',
    spacingM: 1,
    unitRadiusM: 0.12,
    establishes: 'usual',
    lifeYears: 30,
    thorns: 0,
    flammable: 0,
    wildlife: 2,
    cost: 2,
    meadowOnly: false,
    uses: ['ground'],
    confidence: 2,
    source: 'memory',
    ...own,
  }
}

const dogwood = plant({
  id: 'cornus-sanguinea',
  name: 'Cornus sanguinea',
  common: 'dogwood',
  lifeForm: 'shrub',
  heightM: 2.4,
  spreadM: 2.2,
  rootHabit: ['suckering'],
  rootDepthM: { bulk: 0.5, max: 1.2 },
})
const burnet = plant({
  id: 'rosa-spinosissima',
  name: 'Rosa spinosissima',
  common: 'burnet rose',
  lifeForm: 'shrub',
  heightM: 1.1,
  spreadM: 1.3,
  rootHabit: ['suckering'],
  rootDepthM: { bulk: 0.4, max: 1.5 },
})
const woodrush = plant({
  id: 'luzula-sylvatica',
  name: 'Luzula sylvatica',
  common: 'great wood-rush',
  lifeForm: 'sedge-rush',
  heightM: 0.6,
  spreadM: 0.6,
  yearsToMature: 4,
  rootHabit: ['tussock'],
  unitRadiusM: 0.05,
})
const maleFern = plant({
  id: 'dryopteris-filix-mas',
  name: 'Dryopteris filix-mas',
  common: 'male fern',
  lifeForm: 'fern',
  heightM: 0.9,
  spreadM: 0.9,
  rootHabit: ['rhizome-short'],
})
const loosestrife = plant({
  id: 'lythrum-salicaria',
  name: 'Lythrum salicaria',
  common: 'purple loosestrife',
  lifeForm: 'perennial',
  heightM: 1.3,
  spreadM: 0.5,
  yearsToMature: 3,
  moisture: { from: 6, best: 8, to: 10 },
  rootHabit: ['tap-branched'],
})
const sedge = plant({
  id: 'carex-flacca',
  name: 'Carex flacca',
  common: 'glaucous sedge',
  lifeForm: 'sedge-rush',
  heightM: 0.4,
  spreadM: 0.4,
  yearsToMature: 3,
  moisture: { from: 4, best: 7, to: 8 },
  rootHabit: ['rhizome-running'],
})

/** Level ground of one zone: nothing falls. */
export const levelView = (): SectionView => oneZone({ lengthM: 12, fallM: 0 })

/** A bank of 3 m, in one zone. */
export const shortView = (): SectionView => oneZone({ lengthM: 3, fallM: 1.1 })

function oneZone(shape: Shape): SectionView {
  const view = viewOf(shape)
  const zones = view.zones.slice(0, 1).map((zone) => ({ ...zone, spans: [{ fromM: 0, toM: shape.lengthM }] }))
  return { ...view, zones, obstacles: [], dangers: [] }
}
