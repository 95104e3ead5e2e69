import type { SectionView } from '../section-view.types'
import { polyline, type Px } from './path'
import type { SectionScale } from './scale'

/** Narrower than this the band would only thicken the ground line [px from the ground]. */
const LEAST_PX = 2.5

/** How well the level is known along the section: lines one standard error above and below the ground. */
export interface AccuracyBand {
  /** Largest standard error on the section [m]. */
  readonly mostM: number
  /** Smallest [m]. */
  readonly leastM: number
  /** Two lines; none where the error is too small to be drawn at this scale. */
  readonly lines: readonly string[]
}

/**
 * The band within which the ground lies, as far as the survey tells.
 *
 * @param view - the section
 * @param scale - how it lies on the sheet
 */
export function accuracyBand({ ground }: SectionView, scale: SectionScale): AccuracyBand {
  const errors = ground.map(({ levelSdM }) => levelSdM)
  const mostM = Math.max(...errors)
  const line = (side: 1 | -1): Px[] =>
    ground.map(({ distanceM, heightM, levelSdM }) => ({
      xPx: scale.axis.x(distanceM),
      yPx: scale.y(heightM + side * levelSdM),
    }))
  const drawn = mostM * scale.yPxPerM >= LEAST_PX
  return {
    mostM,
    leastM: Math.min(...errors),
    lines: drawn ? [polyline(line(1)), polyline(line(-1))] : [],
  }
}
