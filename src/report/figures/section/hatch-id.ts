import type { MowingVerdict } from '#core/cover'
import type { TextureClass } from '#core/soil'

export type Hatch = MowingVerdict | 'sand' | 'loam' | 'clay' | 'base' | 'stone' | 'keep-off'

/** Name of a hatch within one figure: two figures on a page never share one. */
export function hatchId(uid: string, hatch: Hatch): string {
  return `${uid}-${hatch}`
}

/** Fill with a hatch. */
export function hatchFill(uid: string, hatch: Hatch): string {
  return hatch === 'mow' ? 'var(--leaf)' : `url(#${hatchId(uid, hatch)})`
}

/** Flecks for loams, dots for sands, broken dashes for clays. */
export function soilHatch(texture: TextureClass): Hatch {
  if (texture.includes('clay') && !texture.includes('loam')) return 'clay'
  return texture.includes('sand') && !texture.includes('clay') ? 'sand' : 'loam'
}
