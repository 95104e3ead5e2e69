import { z } from 'zod'
import { textureClasses } from '#core/soil'
import { figure, twelve } from './figure'

const east = figure('east of the plot’s origin', { unit: 'm', decimals: 3 })
const north = figure('north of the plot’s origin', { unit: 'm', decimals: 3 })
const fromTop = { unit: 'm plan from the top edge', decimals: 3 }
const shares = { unit: '0 to 1', decimals: 4, least: 0, most: 1 }

/** An outline in plan, first corner not repeated. */
export const ringSchema = z.array(z.strictObject({ eastM: east, northM: north }))

/** A stretch of the section. */
export const stretchSchema = z.strictObject({
  fromM: figure('where it begins', fromTop),
  toM: figure('where it ends', fromTop),
})

/** Where the cells of a grid lie; row 0 is the northernmost, column 0 the westernmost. */
export const frameSchema = z.strictObject({
  columns: z.int().min(1).describe('cells from west to east [number]'),
  rows: z.int().min(1).describe('cells from north to south [number]'),
  cellM: figure('side of a cell', { unit: 'm', decimals: 6 }),
  westM: figure('east of the west edge', { unit: 'm', decimals: 6 }),
  southM: figure('north of the south edge', { unit: 'm', decimals: 6 }),
})

const surfaceNote = z.strictObject({
  kind: z
    .enum(['merged', 'left-out', 'snapped', 'split', 'outlier', 'spike', 'disagreement', 'overlap'])
    .describe('what was done, or what is doubted'),
  what: z.string().describe('in a sentence, with the row or line'),
  at: z.strictObject({ eastM: east, northM: north }).nullable().describe('where; null for the whole survey'),
})

export const surfaceSchema = z.strictObject({
  frame: frameSchema,
  highestM: figure('highest measured level', { unit: 'm', decimals: 3 }),
  lowestM: figure('lowest measured level', { unit: 'm', decimals: 3 }),
  fallM: figure('their difference, the first figure of any survey', { unit: 'm', decimals: 3 }),
  facesDeg: figure('direction the plot as a whole faces, null when level', {
    unit: '° clockwise from true north',
    decimals: 2,
  }).nullable(),
  boundary: ringSchema,
  holes: z.array(ringSchema).describe('parts of the plot that are no ground'),
  notes: z.array(surfaceNote).describe('what was changed or looks odd while the surface was made'),
})

const station = z.strictObject({
  distanceM: figure('distance', fromTop),
  eastM: east,
  northM: north,
  levelM: figure('level of the ground', { unit: 'm', decimals: 3 }),
  slopeDeg: figure('steepness there', { unit: '°', decimals: 2 }),
})

export const sectionSchema = z.strictObject({
  lengthM: figure('length of the section', { unit: 'm plan', decimals: 3 }),
  stations: z.array(station).describe('the ground along the section, from the top down'),
})

export const sightSchema = z.strictObject({
  name: z.string().describe('the house'),
  eye: z.strictObject({
    distanceM: figure('where the eye is', fromTop),
    levelM: figure('level of the eye', { unit: 'm', decimals: 3 }),
  }),
  hidden: z.array(stretchSchema).describe('ground that is out of sight'),
})

const celsius = { unit: '°C', decimals: 2 }
const energy = { unit: 'MJ/m² a day', decimals: 3 }

const monthClimate = z.strictObject({
  tMinC: figure('mean daily minimum', celsius),
  tMaxC: figure('mean daily maximum', celsius),
  tMeanC: figure('middle of the two', celsius),
  rainMm: figure('rain of the month', { unit: 'mm', decimals: 1, least: 0 }),
  windMPerS: figure('wind at 2 m', { unit: 'm/s', decimals: 2, least: 0 }),
  daylightHours: figure('sunrise to sunset', { unit: 'h', decimals: 2, least: 0, most: 24 }),
  extraterrestrialMjPerM2: figure('radiation above the air, level', energy),
  solarMjPerM2: figure('radiation on open level ground', energy),
  solarFrom: z
    .enum(['radiation', 'sunshine', 'temperature'])
    .describe('what of the climate that radiation was reckoned from'),
  clearness: figure('radiation on level ground over that above the air', shares),
  diffuseShare: figure('share of it from the whole sky', shares),
  vapourKPa: figure('vapour pressure', { unit: 'kPa', decimals: 3, least: 0 }),
  pressureKPa: figure('air pressure', { unit: 'kPa', decimals: 2, least: 0 }),
  netLongwaveMjPerM2: figure('heat radiated away', energy),
  soilHeatMjPerM2: figure('heat going into the soil', energy),
  referenceEtMmPerDay: figure('FAO-56 reference evapotranspiration, level', {
    unit: 'mm a day',
    decimals: 3,
    least: 0,
  }),
  hargreavesEtMmPerDay: figure('the same by Hargreaves, to compare', {
    unit: 'mm a day',
    decimals: 3,
    least: 0,
  }),
  frostNights: figure('nights with air frost', { unit: 'nights a month', decimals: 1, least: 0, most: 31 }),
  growing: z.boolean().describe('warm enough for grass to grow'),
})

export const climateFindingsSchema = twelve(monthClimate).describe('the twelve months, January first')

const openDay = z.strictObject({
  dayOfYear: z.int().min(1).max(366).describe('the day that stands for the month [1 to 366]'),
  sunHours: figure('direct sun', { unit: 'h', decimals: 2, least: 0, most: 24 }),
  beamWhPerM2: figure('direct radiation', { unit: 'Wh/m²', decimals: 0, least: 0 }),
  diffuseWhPerM2: figure('radiation from the sky', { unit: 'Wh/m²', decimals: 0, least: 0 }),
  usualWhPerM2: figure('radiation under the usual sky of the month', {
    unit: 'Wh/m²',
    decimals: 0,
    least: 0,
  }),
})

export const openLevelSchema = twelve(openDay).describe('a clear day on open level ground, each month')

const water = { unit: 'm³/m³', decimals: 4, least: 0, most: 1 }
const percent = { unit: '%', decimals: 1, least: 0, most: 100 }

export const soilFindingsSchema = z.strictObject({
  sampleId: z.string(),
  textureClass: z.enum(textureClasses),
  sandPercent: figure('sand', percent),
  siltPercent: figure('silt', percent),
  clayPercent: figure('clay', percent),
  organicPercent: figure('organic matter by weight', percent),
  wiltingPoint: figure('water held at wilting point', water),
  fieldCapacity: figure('water held at field capacity', water),
  saturation: figure('water held when full', water),
  conductivityMmPerH: figure('saturated conductivity', { unit: 'mm/h', decimals: 2, least: 0 }),
  depthM: figure('depth that roots can use', { unit: 'm', decimals: 2, least: 0 }),
  stonesPercent: figure('stones by volume', percent),
  availableWaterMm: figure('water that plants can take', { unit: 'mm', decimals: 1, least: 0 }),
  drainableMm: figure('room for water above field capacity', { unit: 'mm', decimals: 1, least: 0 }),
  hydrologicGroup: z.enum(['A', 'B', 'C', 'D']),
  ph: figure('acidity, null when not tested', { unit: 'pH', decimals: 1 }).nullable(),
})
