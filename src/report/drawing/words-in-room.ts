import { overlaps, type Box, type Px } from './path'
import { textWidthPx, type Face } from './text-width'

/** Words that look for a place, each named by the middle of their baseline; the best place first. */
export interface WordWish {
  readonly key: string
  readonly text: string
  readonly face: Face
  readonly sizePx: number
  readonly places: readonly Px[]
}

/** Words with their place. */
export interface PlacedWord extends WordWish {
  readonly at: Px
  readonly box: Box
}

/** Air around words [px]. */
const AIR_PX = 3

/**
 * Finds each the first of its places that is free and on the sheet; what finds none is left out.
 *
 * @param wishes - words in the order in which they choose
 * @param bounds - the sheet
 * @param room - what no word may touch, and what they had better not touch
 */
export function wordsInRoom(
  wishes: readonly WordWish[],
  bounds: Box,
  { taken = [], shun = [] }: { readonly taken?: readonly Box[]; readonly shun?: readonly Box[] } = {},
): readonly PlacedWord[] {
  const stood: Box[] = [...taken]
  return wishes.flatMap((wish) => {
    const free = wish.places
      .map((at) => ({ at, box: wordBox(wish, at) }))
      .filter(({ box }) => within(box, bounds) && !stood.some((other) => overlaps(other, box)))
    const clear = free.find(({ box }) => !shun.some((other) => overlaps(other, box)))
    const place = clear ?? free[0]
    if (!place) return []
    stood.push(place.box)
    return [{ ...wish, ...place }]
  })
}

/** The box that words take, air included, with the middle of their baseline at a place. */
function wordBox({ text, face, sizePx }: Omit<WordWish, 'places'>, at: Px): Box {
  const halfPx = textWidthPx(text, face, sizePx) / 2 + AIR_PX
  return {
    leftPx: at.xPx - halfPx,
    rightPx: at.xPx + halfPx,
    topPx: at.yPx - sizePx * 0.8 - 1,
    bottomPx: at.yPx + sizePx * 0.25 + 1,
  }
}

function within(box: Box, bounds: Box): boolean {
  return (
    box.leftPx >= bounds.leftPx &&
    box.rightPx <= bounds.rightPx &&
    box.topPx >= bounds.topPx &&
    box.bottomPx <= bounds.bottomPx
  )
}
