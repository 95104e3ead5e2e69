import type { GroundPoint, SectionView, Stretch } from '../section-view.types'

/** Sections shorter than this are drawn whole [m]. */
const WHOLE_UP_TO_M = 60

/** Ground counts as even where its slope keeps this near to that of the stretch's middle [°]; own judgement. */
const EVEN_DEG = 1.5

/** Only ground that takes at least this share of the drawing is broken: the rest bears an exaggeration better; own judgement. */
const LONG_SHARE = 0.35

/** Less than this is not worth a break [m]. */
const LEAST_CUT_M = 15

/** Even ground that stays at each end of a break, so that its slope can be read [m]. */
const END_M = 6

/**
 * Stretches of long even ground that the drawing leaves out between two break-lines, so that the rest is large enough to
 * read: never across the edge of a zone, a thing that stands there, or a danger.
 *
 * @param view - the section
 * @param goalM - length that can be drawn large enough [m]; no more than needed is left out
 * @returns what is left out, from the top down; none on short or uneven ground
 */
export function breaksIn(view: SectionView, goalM: number): Stretch[] {
  if (view.lengthM < WHOLE_UP_TO_M) return []
  const even = view.zones.flatMap(({ spans }) => spans.flatMap((span) => evenIn(view, span)))
  const drawnM = lengthM(view.drawn)
  const longest = even
    .filter((stretch) => lengthM(stretch) >= LONG_SHARE * drawnM)
    .sort((one, other) => lengthM(other) - lengthM(one))
  let excessM = drawnM - goalM
  const found: Stretch[] = []
  for (const stretch of longest) {
    const cutM = Math.min(excessM, lengthM(stretch) - 2 * END_M)
    if (cutM < LEAST_CUT_M) continue
    const middleM = (stretch.fromM + stretch.toM) / 2
    found.push({ fromM: middleM - cutM / 2, toM: middleM + cutM / 2 })
    excessM -= cutM
  }
  return found.sort((one, other) => one.fromM - other.fromM)
}

const lengthM = ({ fromM, toM }: Stretch): number => toM - fromM

/** The longest even run of a stretch, clear of everything that stands or threatens there. */
function evenIn(view: SectionView, span: Stretch): Stretch[] {
  const inside = view.ground.filter(({ distanceM }) => distanceM >= span.fromM && distanceM <= span.toM)
  const inTheWay = [...view.obstacles, ...view.dangers]
  let best: Stretch | undefined
  let from = 0
  for (let at = 0; at < inside.length; at++) {
    while (from < at && !isEven(inside, from, at)) from++
    const [first, last] = [inside[from], inside[at]]
    if (!first || !last) continue
    const run = { fromM: first.distanceM, toM: last.distanceM }
    if (inTheWay.some(({ fromM, toM }) => toM > run.fromM && fromM < run.toM)) from = at
    else if (!best || lengthM(run) > lengthM(best)) best = run
  }
  return best ? [best] : []
}

function isEven(ground: readonly GroundPoint[], from: number, to: number): boolean {
  const middleDeg = ground[(from + to) >> 1]?.slopeDeg ?? 0
  for (let at = from; at <= to; at++)
    if (Math.abs((ground[at]?.slopeDeg ?? 0) - middleDeg) > EVEN_DEG) return false
  return true
}
