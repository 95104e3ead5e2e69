import { bankPlants, standingBoxes, type BankPlants } from '../../drawing/bank-plants'
import { groundPoints, soilDepthM } from '../../drawing/ground-shape'
import { placeLabels, type PlacedLabel } from '../../drawing/labels'
import { builtBoxes } from '../../drawing/shade'
import { placeSuns, type DrawnSun } from '../../drawing/sun-places'
import { noonLights } from '../../drawing/sun-rays'
import { RAIN_OVER_PX } from '../../drawing/thread-paths'
import { wedgeBoxes, wedges } from '../../drawing/wedges'
import type { Box } from '../../drawing/path'
import type { SectionScale } from '../../drawing/scale'
import type { SectionView } from '../../section-view.types'
import { labelWishes, soilWishes } from './label-wishes'
import type { Asked } from './zone-words'

/** Type of the labels [px]. */
const LABEL_TYPE = { titlePx: 14, notePx: 12 }

/** The line of the scale at the foot of the earth [px]. */
const CAPTION_PX = 20

/** All that is computed once for a sheet, before anything is drawn. */
export interface SectionSheet {
  readonly plants: BankPlants
  readonly labels: readonly PlacedLabel[]
  readonly soilLabels: readonly PlacedLabel[]
  /** Noon light, where the sun is asked for. */
  readonly suns: readonly DrawnSun[]
}

/** A sheet's question, its year of growth, and what labels must keep clear of. */
export interface SheetWish extends Asked {
  /** Years since planting [a]. */
  readonly years: number
  readonly keepClear: readonly Box[]
}

/** Grows the plants and finds every label its place. */
export function sectionSheet(view: SectionView, scale: SectionScale, wish: SheetWish): SectionSheet {
  const plants = bankPlants(view, scale, wish.years)
  const above = [
    ...standingBoxes(view, scale, plants, wish.question === 'water' ? RAIN_OVER_PX : 0),
    ...builtBoxes(view, scale),
    ...wedgeBoxes(wish.question === 'ground' || wish.question === 'mow' ? wedges(view, scale) : []),
  ]
  const labels = placeLabels(labelWishes(view, scale, wish), {
    ...LABEL_TYPE,
    bounds: sky(scale),
    taken: [...above, ...wish.keepClear],
    shun: plants.woody.map((each) => each.crown),
  })
  const lights = wish.question === 'sun' ? noonLights(view, scale) : []
  return {
    plants,
    labels,
    suns: placeSuns(lights, {
      bounds: overGround(view, scale),
      keepClear: wish.keepClear,
      taken: above,
      labels,
    }),
    soilLabels: placeLabels(soilWishes(view, scale, wish), {
      ...LABEL_TYPE,
      bounds: earth(view, scale),
      taken: openAir(view, scale),
      shun: [],
    }),
  }
}

function sky(scale: SectionScale): Box {
  return { leftPx: 2, rightPx: scale.widthPx - 2, topPx: 2, bottomPx: scale.basePx }
}

/** The sky over the ground that is drawn. */
function overGround(view: SectionView, scale: SectionScale): Box {
  return {
    ...sky(scale),
    leftPx: scale.axis.x(view.drawn.fromM),
    rightPx: Math.min(scale.widthPx - 2, scale.axis.x(view.drawn.toM)),
  }
}

function earth(view: SectionView, scale: SectionScale): Box {
  return {
    leftPx: scale.axis.x(view.drawn.fromM) + 2,
    rightPx: scale.axis.x(view.drawn.toM) - 2,
    topPx: 0,
    bottomPx: scale.basePx - CAPTION_PX,
  }
}

/** Everything above the base of the soil, in columns: labels in the earth stay under it. */
function openAir(view: SectionView, scale: SectionScale): Box[] {
  return groundPoints(view, scale, view.drawn, (atM) => soilDepthM(view, atM) * scale.yPxPerM)
    .filter((_, at) => at % 2 === 0)
    .map((point) => ({
      leftPx: point.xPx - 5,
      rightPx: point.xPx + 5,
      topPx: 0,
      bottomPx: point.yPx + 3,
    }))
}
