import { squareMetres } from '../drawing/measures'
import type { PlanShade } from '../plan-shade.types'

/** Areas of several pictures of the same classes, with the colour of each class: key and table in one. */
export interface ShadeKey {
  readonly rows: readonly {
    readonly words: string
    readonly colour: string
    readonly areas: readonly string[]
  }[]
}

/** Less ground than this is told as none [m²]. */
const LEAST_M2 = 0.05

/** The key of small plans that stand side by side. */
export function shadeKey(shades: readonly PlanShade[]): ShadeKey {
  const [first] = shades
  return {
    rows: (first?.classes ?? [])
      .map(({ words, colour }, at) => ({
        ...{ words, colour },
        found: shades.map(({ classes }) => classes[at]?.planAreaM2 ?? 0),
      }))
      .filter(({ found }) => found.some((areaM2) => areaM2 >= LEAST_M2))
      .map(({ words, colour, found }) => ({
        ...{ words, colour },
        areas: found.map((areaM2) => (areaM2 >= LEAST_M2 ? squareMetres(areaM2) : 'none')),
      })),
  }
}
