import type { Plant } from '#core/plants'
import { slopeAreaFactor } from '#core/units'
import type { DrawnPlanting, SectionZone, Stretch } from '../section-view.types'
import { grownShare } from './growth'
import { seededRandom } from './seeded'

/** How a plant is drawn. */
export type PlantForm = 'tree' | 'shrub' | 'tussock' | 'herb' | 'blades' | 'mat' | 'fern'

/** One plant that the section meets. */
export interface StandingPlant {
  readonly key: string
  readonly plant: Plant
  readonly form: PlantForm
  readonly atM: number
  readonly heightM: number
  readonly spreadM: number
  readonly rootDeepM: number
  readonly rootBulkM: number
}

/** Wetness class from which grasses stand upright, as on damp ground: "moist" on the 1 to 12 scale. */
const DAMP_MOISTURE = 7

/** A plant lower than this and wider than high is drawn as a mat [m]. */
const MAT_HEIGHT_M = 0.3

/** Damp herbs taller than this are drawn as upright blades [m]. */
const TALL_HERB_M = 0.6

/** Plants closer on the sheet than this are thinned out for reading [px]. */
const LEAST_GAP_PX = 3.4

/**
 * The plants that the section meets in a zone: along a line, a layer's share of the ground is its share of the
 * length, and its plants stand at their spacing. Seeded, so the same plan always draws the same bank.
 *
 * @param zone - zone of the section
 * @param years - years since planting [a]
 * @param xPxPerM - scale, for thinning out what could not be told apart [px/m]
 * @returns plants from the top down
 */
export function standingPlants(zone: SectionZone, years: number, xPxPerM: number): StandingPlant[] {
  const factor = slopeAreaFactor(Math.min(zone.slopeDegMean, 60))
  return zone.spans
    .flatMap((span, at) =>
      zone.planting.flatMap((line, row) =>
        placesOf(line, span, { seed: `${zone.id} ${at} ${row}`, factor, xPxPerM }).map((atM, index) =>
          grown(line, atM, { zone, years, index }),
        ),
      ),
    )
    .sort((one, other) => one.atM - other.atM)
}

interface Setting {
  readonly seed: string
  /** Length on the slope over length in plan. */
  readonly factor: number
  readonly xPxPerM: number
}

function placesOf(line: DrawnPlanting, span: Stretch, { seed, factor, xPxPerM }: Setting): number[] {
  const lengthM = span.toM - span.fromM
  const random = seededRandom(`${seed} ${line.plant.id}`)
  const met = (lengthM * factor * line.share) / line.spacingM
  const whole = Math.floor(met) + (random() < met % 1 ? 1 : 0)
  const readable = Math.floor((lengthM * xPxPerM) / LEAST_GAP_PX)
  const count = Math.min(whole, Math.max(readable, 1))
  const woody = line.layer === 'tree' || line.layer === 'shrub'
  const edgeM = woody ? Math.min(line.spacingM * 0.4, lengthM * 0.2) : 0
  const start = random()
  return Array.from({ length: count }, (_, at) => {
    const share = (at + 0.2 + 0.6 * start + (random() - 0.5) * 0.45) / count
    return span.fromM + edgeM + Math.min(0.995, Math.max(0.005, share)) * (lengthM - 2 * edgeM)
  })
}

interface Growing {
  readonly zone: SectionZone
  readonly years: number
  readonly index: number
}

function grown(line: DrawnPlanting, atM: number, { zone, years, index }: Growing): StandingPlant {
  const { plant } = line
  const share = grownShare(plant, years)
  const random = seededRandom(`${zone.id} ${plant.id} ${index}`)
  const vigour = 0.88 + random() * 0.2
  const deep = (depthM: number) => Math.min(depthM * share, zone.soil.depthM)
  return {
    key: `${zone.id}-${plant.id}-${index}-${Math.round(atM * 100)}`,
    plant,
    form: formOf(plant),
    atM,
    heightM: plant.heightM * share * vigour,
    spreadM: plant.spreadM * share * vigour,
    rootDeepM: deep(plant.rootDepthM.max),
    rootBulkM: deep(plant.rootDepthM.bulk),
  }
}

/** Forms that follow from the life form alone. */
const forms: Readonly<Partial<Record<Plant['lifeForm'], PlantForm>>> = {
  tree: 'tree',
  shrub: 'shrub',
  subshrub: 'shrub',
  climber: 'mat',
  fern: 'fern',
}

/** The mark that a plant is drawn with. */
function formOf(plant: Plant): PlantForm {
  if (plant.heightM < MAT_HEIGHT_M && plant.spreadM > plant.heightM) return 'mat'
  const form = forms[plant.lifeForm]
  if (form) return form
  const damp = plant.moisture.best >= DAMP_MOISTURE
  const grassy = plant.lifeForm === 'grass' || plant.lifeForm === 'sedge-rush'
  if (grassy) return damp ? 'blades' : 'tussock'
  return damp && plant.heightM > TALL_HERB_M ? 'blades' : 'herb'
}
