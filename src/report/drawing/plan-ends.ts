import type { PlanView } from '../section-view.types'
import { overlaps, type Box, type Px } from './path'
import type { PlanScale } from './plan-scale'
import { around, gapPx } from './rings'

/** The letters at the two ends of the section. */
export interface SectionEnd {
  readonly text: 'A' | 'A′'
  readonly at: Px
}

/** Size of the section's letters [px], and the places tried around its ends: beyond, above, below, within. */
const END_PX = { wide: 15, tall: 14 }
const END_TRIES = [
  [15, 0],
  [9, -13],
  [9, 13],
  [-10, -11],
  [-10, 11],
] as const

/** Places of the two letters where they touch no house. */
export function sectionEnds(view: PlanView, scale: PlanScale, things: readonly Box[]): SectionEnd[] {
  const [top, foot] = [scale.along(0), scale.along(view.section.lengthM)]
  const long = Math.max(gapPx(top, foot), 1)
  const along = { xPx: (foot.xPx - top.xPx) / long, yPx: (foot.yPx - top.yPx) / long }
  return [
    { text: 'A', at: endPlace(top, { xPx: -along.xPx, yPx: -along.yPx }, things) },
    { text: 'A′', at: endPlace(foot, along, things) },
  ]
}

/** Beyond the end of the line where that is free, else beside it, else within the plot. */
function endPlace(end: Px, outwards: Px, things: readonly Box[]): Px {
  const places = END_TRIES.map(([out, aside]) => ({
    xPx: end.xPx + outwards.xPx * out - outwards.yPx * aside,
    yPx: end.yPx + outwards.yPx * out + outwards.xPx * aside,
  }))
  const free = places.find((at) => {
    const own = around(at, END_PX.wide / 2, END_PX.tall / 2)
    return !things.some((box) => overlaps(box, own))
  })
  return free ?? places[places.length - 1] ?? end
}

/** The box of a section's letter. */
export function endBox({ at }: SectionEnd): Box {
  return around(at, END_PX.wide / 2, END_PX.tall / 2)
}
