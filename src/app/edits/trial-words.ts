import type { Obstacle } from '#plan'
import type { TrialWay } from './trials'

/** How one way of changing a thing is said and measured. */
export interface WayWords {
  /** As something to do. */
  readonly does: string
  /** What its figure is of; undefined where there is none. */
  readonly figure:
    | { readonly label: string; readonly unit: 'm' | '%'; readonly least: number; readonly most: number }
    | undefined
}

/** Tallest and widest that the plan's schema takes [m]. */
const MOST_M = 60
const LEAST_WIDTH_M = 0.1

const metres = (label: string, least = 0): WayWords['figure'] => ({ label, unit: 'm', least, most: MOST_M })
const share = (label: string): WayWords['figure'] => ({ label, unit: '%', least: 0, most: 100 })

const words: Readonly<Record<TrialWay, WayWords>> = {
  gone: { does: 'take it away', figure: undefined },
  heightM: { does: 'lower it, or let it grow', figure: metres('It is then high') },
  ridgeM: { does: 'lower or raise its ridge', figure: metres('Its ridge is then high') },
  crownBaseM: { does: 'lift its crown', figure: metres('Its lowest branches are then at') },
  crownWidthM: {
    does: 'narrow its crown, or let it spread',
    figure: metres('Its crown is then wide', LEAST_WIDTH_M),
  },
  leafyLight: { does: 'thin it', figure: share('Light through it in leaf is then') },
  bareLight: { does: 'thin its bare branches', figure: share('Light through it when bare is then') },
}

const gaps: WayWords = { does: 'open it up', figure: share('Light through its gaps is then') }
const eaves: WayWords = { does: 'lower or raise it', figure: metres('Its eaves are then high') }

/** The words for changing a thing in one way. */
export function wayWords({ kind }: Pick<Obstacle, 'kind'>, way: TrialWay): WayWords {
  if (way === 'leafyLight' && kind === 'fence') return gaps
  return way === 'heightM' && (kind === 'house' || kind === 'building') ? eaves : words[way]
}

/** A figure of the plan as it is shown: shares as per cent. */
export const shownFigure = (value: number | undefined, unit: 'm' | '%'): number | undefined =>
  value === undefined || unit === 'm' ? value : Math.round(value * 1000) / 10

/** A figure as it was typed, for the plan: per cent as shares. */
export const heldFigure = (value: number | undefined, unit: 'm' | '%'): number | undefined =>
  value === undefined || unit === 'm' ? value : value / 100
