import type { MowingVerdict } from '#core/cover'
import type { TextureClass } from '#core/soil'
import type { HatchName } from '../../drawing/hatches'

/** Name of a hatch within one figure: two figures on a page never share one. */
export function hatchId(uid: string, hatch: HatchName): string {
  return `${uid}-${hatch}`
}

/** Fill with a hatch. */
export function hatchFill(uid: string, hatch: HatchName | MowingVerdict): string {
  return hatch === 'mow' ? 'var(--leaf)' : `url(#${hatchId(uid, hatch)})`
}

/** Flecks for loams, dots for sands, broken dashes for clays. */
export function soilHatch(texture: TextureClass): HatchName {
  if (texture.includes('clay') && !texture.includes('loam')) return 'clay'
  return texture.includes('sand') && !texture.includes('clay') ? 'sand' : 'loam'
}
