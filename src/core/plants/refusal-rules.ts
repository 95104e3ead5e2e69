import { lightName, moistureName } from './words'
import { bars } from './legal'
import type { Meeting } from './match.types'

/** One reason never to offer a plant on a site. */
interface RefusalRule {
  readonly id: string
  readonly refuses: (meeting: Meeting) => boolean
  readonly because: (meeting: Meeting) => string
  /** Key of data/sources.json, or where the meeting itself names it. */
  readonly source: string | ((meeting: Meeting) => string)
}

/** Days a year short of air that each waterlogging class bears on loam and clay [d; own judgement]. */
const WET_DAYS_BORNE = [60, 110, 190, 280, 366] as const

/** Sand lets air back in about twice as fast [own judgement]. */
const SAND_WET_DAYS_FACTOR = 2

/** On ground drier than `below` on the moisture scale a plant needs at least this drought class [own judgement]. */
const DROUGHT_NEEDED = [
  { below: 3, droughtClass: 3 },
  { below: 4, droughtClass: 2 },
] as const

/** Share of the usual depth of its roots that a plant needs to find soil for [own judgement]. */
const ROOT_DEPTH_NEEDED = 0.7

/** A tree this tall [m] levers a bank this steep [°] when the wind takes it [common practice]. */
const TALL_TREE_M = 8
const TALL_TREE_SLOPE_DEG = 30

/** No tree is offered on ground this steep [°; common practice]. */
const TREE_SLOPE_DEG = 38

/** Every hard filter, in the order the reasons are shown. */
export const refusalRules: readonly RefusalRule[] = [
  {
    id: 'barred-by-law',
    refuses: ({ flags }) => flags.barred,
    because: ({ flags }) => {
      const row = flags.legal.find(bars)
      return `${row?.region ?? ''}: ${row?.effect ?? ''} (${row?.list ?? ''})`
    },
    source: ({ flags }) => flags.legal.find(bars)?.source ?? 'own-judgement',
  },
  {
    id: 'too-dry',
    refuses: ({ plant, site }) => site.moistureClass < plant.moisture.from,
    because: ({ plant, site }) =>
      `Too dry: the zone is ${moistureName(site.moistureClass)}, the plant needs at least ${moistureName(plant.moisture.from)} ground.`,
    source: ({ plant }) => plant.source,
  },
  {
    id: 'too-wet',
    refuses: ({ plant, site }) => site.moistureClass > plant.moisture.to,
    because: ({ plant, site }) =>
      `Too wet: the zone is ${moistureName(site.moistureClass)}, the plant bears no more than ${moistureName(plant.moisture.to)} ground.`,
    source: ({ plant }) => plant.source,
  },
  {
    id: 'too-dark',
    refuses: ({ plant, site }) => site.lightClass < plant.light.from,
    because: ({ plant, site }) =>
      `Too dark: the zone has ${lightName(site.lightClass)}, the plant needs at least ${lightName(plant.light.from)}.`,
    source: ({ plant }) => plant.source,
  },
  {
    id: 'too-bright',
    refuses: ({ plant, site }) => site.lightClass > plant.light.to,
    because: ({ plant, site }) =>
      `Too bright: the zone has ${lightName(site.lightClass)}, the plant bears no more than ${lightName(plant.light.to)}.`,
    source: ({ plant }) => plant.source,
  },
  {
    id: 'too-acid',
    refuses: ({ plant, site }) => site.ph !== undefined && site.ph < plant.ph.from,
    because: ({ plant, site }) =>
      `Too acid: pH ${site.ph?.toFixed(1) ?? ''}, the plant needs ${plant.ph.from.toFixed(1)} or more.`,
    source: ({ plant }) => plant.source,
  },
  {
    id: 'too-limy',
    refuses: ({ plant, site }) => site.ph !== undefined && site.ph > plant.ph.to,
    because: ({ plant, site }) =>
      `Too much lime: pH ${site.ph?.toFixed(1) ?? ''}, the plant bears ${plant.ph.to.toFixed(1)} at most.`,
    source: ({ plant }) => plant.source,
  },
  {
    id: 'texture',
    refuses: ({ plant, site }) => !plant.textures[site.texture],
    because: ({ site }) => `It does not thrive in ${site.texture}.`,
    source: ({ plant }) => plant.source,
  },
  {
    id: 'hard-winter',
    refuses: ({ plant, site }) => site.hardWinterC < plant.tMinC,
    because: ({ plant, site }) =>
      `A hard winter here falls to ${site.hardWinterC.toFixed(0)} °C; the plant bears ${plant.tMinC.toFixed(0)} °C.`,
    source: ({ plant }) => plant.source,
  },
  {
    id: 'waterlogged',
    refuses: ({ plant, site }) => site.wetDays > wetDaysBorne(plant.waterlogging, site.texture),
    because: ({ plant, site }) =>
      `Roots are short of air on ${Math.round(site.wetDays)} days a year; the plant bears about ${wetDaysBorne(plant.waterlogging, site.texture)}.`,
    source: 'own-judgement',
  },
  {
    id: 'wet-winter-dry-summer',
    refuses: ({ plant, site }) => site.wetWinterDrySummer && !plant.wetWinterDrySummer,
    because: () => 'The zone is wet in winter and dry in summer, and the plant bears only one of the two.',
    source: ({ plant }) => plant.source,
  },
  {
    id: 'drought',
    refuses: ({ plant, site }) => plant.drought < droughtNeeded(site.moistureClass),
    because: ({ plant, site }) =>
      `The zone dries out in summer: it asks for drought class ${droughtNeeded(site.moistureClass)} of 4, the plant has ${plant.drought}.`,
    source: 'own-judgement',
  },
  {
    id: 'shallow-soil',
    refuses: ({ plant, site }) => site.soilDepthM < plant.rootDepthM.bulk * ROOT_DEPTH_NEEDED,
    because: ({ plant, site }) =>
      `The soil is ${site.soilDepthM.toFixed(2)} m deep; most of its roots go down ${plant.rootDepthM.bulk.toFixed(2)} m.`,
    source: 'own-judgement',
  },
  {
    id: 'tall-tree-on-steep-bank',
    refuses: ({ plant, site }) =>
      plant.lifeForm === 'tree' &&
      (site.slopeDeg > TREE_SLOPE_DEG ||
        (site.slopeDeg > TALL_TREE_SLOPE_DEG && plant.heightM > TALL_TREE_M)),
    because: ({ plant, site }) =>
      `A tree of ${plant.heightM} m levers at a bank of ${Math.round(site.slopeDeg)}° in the wind. Ask an arborist first.`,
    source: 'common-practice',
  },
  {
    id: 'not-sold-here',
    refuses: ({ plant, site }) => !plant.sold.includes(site.region),
    because: () => 'Nurseries of the region do not commonly have it.',
    source: ({ plant }) => plant.source,
  },
  {
    id: 'poisonous-with-children-or-pets',
    refuses: ({ flags, brief }) => (brief.children || brief.pets) && flags.toxicity?.ingestion === 'severe',
    because: ({ flags }) =>
      `Severely poisonous (${flags.toxicity?.parts ?? ''}), and children or pets come here.`,
    source: ({ flags }) => flags.toxicity?.source ?? 'own-judgement',
  },
  {
    id: 'poisonous-in-hay',
    refuses: ({ flags, brief }) => brief.cover === 'meadow' && flags.toxicity?.ingestion === 'severe',
    because: ({ flags }) =>
      `Severely poisonous (${flags.toxicity?.parts ?? ''}): never in a sward that may be grazed or cut for hay.`,
    source: ({ flags }) => flags.toxicity?.source ?? 'own-judgement',
  },
  {
    id: 'too-tall',
    refuses: ({ plant, brief }) => brief.heightLimitM !== undefined && plant.heightM > brief.heightLimitM,
    because: ({ plant, brief }) =>
      `It grows to ${plant.heightM} m; you want nothing taller than ${brief.heightLimitM ?? 0} m.`,
    source: 'yours',
  },
  {
    id: 'not-wanted',
    refuses: ({ plant, brief }) => brief.without?.includes(plant.id) ?? false,
    because: () => 'You do not want it here.',
    source: 'yours',
  },
]

function wetDaysBorne(waterloggingClass: number, texture: Meeting['site']['texture']): number {
  const days = WET_DAYS_BORNE[waterloggingClass] ?? 0
  return texture === 'sand' ? Math.min(366, days * SAND_WET_DAYS_FACTOR) : days
}

function droughtNeeded(moistureClass: number): number {
  return DROUGHT_NEEDED.find(({ below }) => moistureClass < below)?.droughtClass ?? 0
}
