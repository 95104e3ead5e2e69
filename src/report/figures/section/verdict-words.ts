import type { CoverKind, MowingVerdict } from '#core/cover'
import type { SectionZone } from '../../section-view.types'

/** What each verdict is called on a drawing. */
export const verdictWords: Readonly<Record<MowingVerdict, string>> = {
  mow: 'Mow',
  'mow-on-foot': 'Mow on foot',
  'cut-once': 'Cut once a year',
  leave: 'Leave it',
  never: 'Keep every wheel off',
}

/** What each cover is called on a drawing. */
export const coverWords: Readonly<Record<CoverKind, string>> = {
  mown: 'Mown grass',
  meadow: 'Meadow',
  'ground-cover': 'Ground cover',
  shrubs: 'Shrubs',
  trees: 'Trees',
  terrace: 'Terraces',
  leave: 'Left alone',
}

/** How, in a few words, under a verdict. */
export function verdictNote(zone: SectionZone): string {
  switch (zone.mowing) {
    case 'mow':
      return machineWords(zone.allowedMachines)
    case 'mow-on-foot':
      return 'across the slope, on dry days'
    case 'cut-once':
      return 'when the ground is firm'
    case 'leave':
      return 'nothing here is mown'
    case 'never':
      return `${Math.round(zone.slopeDegSteep)}°: hand work only, and not alone`
  }
}

/** The first machine by name; the others are counted. */
function machineWords([first, ...others]: readonly string[]): string {
  if (!first) return 'by hand'
  const more = others.length === 0 ? '' : `, or ${others.length} more of yours`
  return `${first.charAt(0).toLowerCase()}${first.slice(1)}${more}`
}
