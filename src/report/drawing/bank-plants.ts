import { toRadians } from '#core/units'
import type { SectionObstacle, SectionView } from '../section-view.types'
import { fern, herb, mat, tussock, uprightBlades, turf, type HerbDrawing, type HerbSize } from './herbs'
import { drawnHeightM } from './obstacles'
import { groundPoints } from './ground-shape'
import type { Box, Px } from './path'
import { rootSystem } from './roots'
import { groundAt, type SectionScale } from './scale'
import { seededRandom } from './seeded'
import { standingPlants, type PlantForm, type StandingPlant } from './stand'
import { CLEAR_STEM, shrub, tree, type WoodyDrawing } from './woody'

/** One tree or shrub of the drawing. */
interface DrawnWoody {
  readonly key: string
  readonly drawing: WoodyDrawing
  readonly crown: Box
}

/** All that grows on the section. */
export interface BankPlants {
  readonly woody: readonly DrawnWoody[]
  /** Soft plants of all zones in two paths. */
  readonly blades: string
  readonly blooms: string
  readonly turf: string
  readonly roots: string
  /** Tops of the soft plants, for labels to keep off. */
  readonly tops: readonly Px[]
  readonly standing: readonly StandingPlant[]
}

type Soft = Exclude<PlantForm, 'tree' | 'shrub'>

const soft: Readonly<Record<Soft, (size: HerbSize, random: () => number) => HerbDrawing>> = {
  tussock,
  herb,
  blades: uprightBlades,
  mat,
  fern,
}

/** Width of a surveyed tree's crown as a share of its height, when no height was given either; our judgement. */
export const CROWN_SHARE = 0.8

/** A stem is clear to this share of the height at most, so that a crown is drawn [ratio]. */
const MOST_CLEAR = 0.85

/** Gap between turf ticks, and their height [px]. */
const TURF_GAP_PX = 3.2
const TURF_TALL_PX = 3.4

/** Draws the bank so many years after planting. */
export function bankPlants(view: SectionView, scale: SectionScale, years: number): BankPlants {
  const standing = view.zones.flatMap((zone) => standingPlants(zone, years, scale.xPxPerM))
  const [woodyPlants, softPlants] = [standing.filter(isWoody), standing.filter((each) => !isWoody(each))]
  const softDrawn = softPlants.map((each) => drawSoft(view, scale, each))
  return {
    woody: [
      ...view.obstacles.filter((each) => each.kind === 'tree').map((each) => surveyedTree(view, scale, each)),
      ...woodyPlants.map((each) => drawWoody(view, scale, each)),
    ],
    blades: softDrawn.map((each) => each.blades).join(''),
    blooms: softDrawn.map((each) => each.blooms).join(''),
    turf: mownTurf(view, scale),
    roots: standing.map((each) => drawRoots(view, scale, each)).join(''),
    tops: softPlants.map((each) => topOf(view, scale, each)),
    standing,
  }
}

function isWoody({ form }: StandingPlant): boolean {
  return form === 'tree' || form === 'shrub'
}

function baseOf(view: SectionView, scale: SectionScale, atM: number): Px {
  return { xPx: scale.axis.x(atM), yPx: scale.y(groundAt(view.ground, atM).heightM) }
}

function topOf(view: SectionView, scale: SectionScale, plant: StandingPlant): Px {
  const base = baseOf(view, scale, plant.atM)
  return { xPx: base.xPx, yPx: base.yPx - plant.heightM * scale.yPxPerM }
}

function drawWoody(view: SectionView, scale: SectionScale, plant: StandingPlant): DrawnWoody {
  return woodyAt(baseOf(view, scale, plant.atM), scale, {
    key: plant.key,
    form: plant.form === 'tree' ? 'tree' : 'shrub',
    heightM: plant.heightM,
    spreadM: plant.spreadM,
  })
}

function surveyedTree(view: SectionView, scale: SectionScale, obstacle: SectionObstacle): DrawnWoody {
  const middleM = (obstacle.fromM + obstacle.toM) / 2
  const crown = obstacle.standing?.crown
  const footM = groundAt(view.ground, middleM).heightM
  const heightM = Math.max(crown ? crown.highM - footM : drawnHeightM(obstacle), 1)
  const wideM = obstacle.toM - obstacle.fromM
  return woodyAt(baseOf(view, scale, middleM), scale, {
    key: `surveyed-${obstacle.id}`,
    form: 'tree',
    heightM,
    spreadM: crown?.wideM ?? (wideM > 0.5 ? wideM : heightM * CROWN_SHARE),
    clearShare: crown ? Math.min(MOST_CLEAR, Math.max(0, (crown.lowM - footM) / heightM)) : CLEAR_STEM,
  })
}

interface Woody {
  readonly key: string
  readonly form: 'tree' | 'shrub'
  readonly heightM: number
  readonly spreadM: number
  /** Share of a tree's height below its crown. */
  readonly clearShare?: number
}

function woodyAt(base: Px, scale: SectionScale, woody: Woody): DrawnWoody {
  const { key, form, heightM, spreadM, clearShare = CLEAR_STEM } = woody
  const heightPx = Math.max(6, heightM * scale.yPxPerM)
  const widthPx = Math.max(6, spreadM * scale.xPxPerM)
  const size = { base, heightPx, widthPx, seed: key, clearShare }
  return {
    key,
    drawing: form === 'tree' ? tree(size) : shrub(size),
    crown: {
      leftPx: base.xPx - widthPx / 2,
      rightPx: base.xPx + widthPx / 2,
      topPx: base.yPx - heightPx,
      bottomPx: base.yPx - (form === 'tree' ? heightPx * clearShare : 0),
    },
  }
}

function drawSoft(view: SectionView, scale: SectionScale, plant: StandingPlant): HerbDrawing {
  const size = {
    base: baseOf(view, scale, plant.atM),
    heightPx: Math.max(3, plant.heightM * scale.yPxPerM),
    widthPx: Math.max(4, plant.spreadM * scale.xPxPerM),
  }
  const form = plant.form === 'tree' || plant.form === 'shrub' ? 'herb' : plant.form
  return soft[form](size, seededRandom(plant.key))
}

function drawRoots(view: SectionView, scale: SectionScale, plant: StandingPlant): string {
  const size = {
    base: baseOf(view, scale, plant.atM),
    deepPx: plant.rootDeepM * scale.yPxPerM,
    bulkPx: plant.rootBulkM * scale.yPxPerM,
    reachPx: Math.max(2, (plant.spreadM / 2) * scale.xPxPerM),
    fall: Math.tan(toRadians(groundAt(view.ground, plant.atM).slopeDeg)) * scale.exaggeration,
  }
  const habit = plant.plant.rootHabit[0] ?? 'fibrous'
  return rootSystem(habit, size, seededRandom(`${plant.key} roots`))
}

function mownTurf(view: SectionView, scale: SectionScale): string {
  return view.zones
    .filter((zone) => zone.cover === 'mown')
    .flatMap((zone) =>
      zone.spans.map((span) => {
        const ticks = Math.floor(((span.toM - span.fromM) * scale.xPxPerM) / TURF_GAP_PX)
        const points = Array.from({ length: ticks }, (_, at) =>
          baseOf(view, scale, span.fromM + ((at + 0.5) / ticks) * (span.toM - span.fromM)),
        )
        return turf(points, TURF_TALL_PX, seededRandom(zone.id))
      }),
    )
    .join('')
}

/**
 * Boxes that labels above the ground keep off: the ground itself with its soft plants, and every crown.
 *
 * @param overPx - what is drawn over the turf of the plot, such as rain [px]
 */
export function standingBoxes(view: SectionView, scale: SectionScale, plants: BankPlants, overPx = 0): Box[] {
  const columnPx = 10
  const columns = groundPoints(view, scale, view.drawn)
    .filter((_, at) => at % 2 === 0)
    .map((point) => {
      const over = plants.tops.filter((top) => Math.abs(top.xPx - point.xPx) < columnPx)
      const onPlot = point.xPx > scale.axis.startPx - columnPx && point.xPx < scale.axis.endPx + columnPx
      const turfPx = point.yPx - (onPlot ? overPx : 0)
      const topPx = Math.min(turfPx, ...over.map((top) => top.yPx)) - 2
      return {
        leftPx: point.xPx - columnPx / 2,
        rightPx: point.xPx + columnPx / 2,
        topPx,
        bottomPx: scale.basePx,
      }
    })
  return [...columns, ...plants.woody.flatMap(crownBoxes), ...plants.woody.map(stemBox)]
}

/** A crown is round: three boxes hold it closer than one. */
function crownBoxes({ crown }: DrawnWoody): Box[] {
  const wide = crown.rightPx - crown.leftPx
  const tall = crown.bottomPx - crown.topPx
  return [
    { ...crown, leftPx: crown.leftPx + wide * 0.22, rightPx: crown.rightPx - wide * 0.22 },
    { ...crown, topPx: crown.topPx + tall * 0.16, bottomPx: crown.bottomPx - tall * 0.1 },
  ]
}

function stemBox({ crown }: DrawnWoody): Box {
  const middle = (crown.leftPx + crown.rightPx) / 2
  const tall = crown.bottomPx - crown.topPx
  const half = Math.max(3, tall * 0.06)
  return {
    leftPx: middle - half,
    rightPx: middle + half,
    topPx: crown.topPx,
    bottomPx: crown.bottomPx + tall,
  }
}
