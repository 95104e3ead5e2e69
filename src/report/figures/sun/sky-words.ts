import type { Box, Px } from '../../drawing/path'
import { wordsInRoom, type PlacedWord, type WordWish } from '../../drawing/words-in-room'
import { hours } from '../../drawing/measures'
import { sunArc } from '#core/shade'
import { around } from '../../drawing/rings'
import { SUN_PX } from '../../drawing/sun-places'
import type { SkyPath } from './sky-paths'
import { wholeHours } from './sky-paths'
import { skyPx, type SkyScale } from './sky-scale'
import type { SkyShapes } from './sky-shapes'

/** Type of the words on the sky [px]. */
const TYPE_PX = { name: 15, note: 12, least: 11 } as const

/** Words of a path stand this far over its highest place, or under it [px]. */
const PATH_PX = { over: 9, under: 17 }

/** A path is kept off by half this, looked at every so often [px, h]. */
const LINE_PX = 2.5
const LOOK_H = 0.1

/** Words of an hour stand this far over its tick [px]. */
const HOUR_PX = 8

/** Hours of the highest path are told every so many hours where there is room [h]. */
const HOUR_STEP_H = 3

/** Words of the sky: things, paths, hours and ground, none over another. */
export interface SkyWords {
  readonly things: readonly PlacedWord[]
  readonly paths: readonly (PlacedWord & { readonly picked: boolean })[]
  readonly hours: readonly PlacedWord[]
}

/** What is drawn of the sky, and the sun that stands on a path. */
interface DrawnSky {
  readonly paths: readonly SkyPath[]
  readonly shapes: SkyShapes
  readonly scale: SkyScale
  readonly sun: Px | undefined
}

/** Finds the words of the sky their places; what finds none is in the table. */
export function skyWords({ paths, shapes, scale, sun }: DrawnSky, latitudeDeg: number): SkyWords {
  const bounds: Box = {
    leftPx: scale.leftPx,
    rightPx: scale.rightPx,
    topPx: 0,
    bottomPx: scale.basePx - 2,
  }
  const wishes = [
    ...paths.flatMap((path) => pathWish(path, scale, latitudeDeg)),
    ...hourWishes(paths, scale, latitudeDeg),
    ...shapes.things.map((thing): WordWish => ({
      key: `thing ${thing.id}`,
      text: thing.name,
      face: 'serifItalic',
      sizePx: TYPE_PX.name,
      places: thing.places,
    })),
    ...shapes.hills.map((hill): WordWish => ({
      key: `thing ${hill.key}`,
      text: hill.name,
      face: 'serifItalic',
      sizePx: TYPE_PX.name,
      places: hill.places,
    })),
  ]
  const placed = wordsInRoom(wishes, bounds, {
    taken: sun ? [around(sun, SUN_PX + 1, SUN_PX + 1)] : [],
    shun: paths.flatMap((path) => lineBoxes(path, scale, latitudeDeg)),
  })
  const of = (kind: string) => placed.filter(({ key }) => key.startsWith(`${kind} `))
  return {
    things: of('thing'),
    hours: of('hour'),
    paths: of('path').map((word) => ({
      ...word,
      picked: paths.some(({ day }) => day.picked && word.key === `path ${day.key}`),
    })),
  }
}

/** Small boxes along a path, for words to keep off. */
function lineBoxes({ day, riseH, setH }: SkyPath, scale: SkyScale, latitudeDeg: number): Box[] {
  const { at } = sunArc(latitudeDeg, day.dayOfYear)
  const looks = Math.ceil((setH - riseH) / LOOK_H)
  return Array.from({ length: looks }, (_, look) => {
    const { azimuthDeg, altitudeDeg } = at(riseH + (look + 0.5) * LOOK_H)
    return around(skyPx(scale, azimuthDeg, altitudeDeg), LINE_PX, LINE_PX)
  })
}

/** Over the highest place of the path, then along it to either side, over it or under it. */
function pathWish({ day, placeDay, riseH, setH }: SkyPath, scale: SkyScale, latitudeDeg: number): WordWish[] {
  if (setH <= riseH) return []
  const { at } = sunArc(latitudeDeg, day.dayOfYear)
  const asideH = [0, 0.5, -0.5, 1, -1, 1.5, -1.5, 2, -2, 2.5, -2.5, 3, -3].filter(
    (aside) => Math.abs(aside) < setH - 12,
  )
  const placeAt = (hour: number) => {
    const { azimuthDeg, altitudeDeg } = at(hour)
    return skyPx(scale, azimuthDeg, altitudeDeg)
  }
  const over = asideH.map((aside) => down(placeAt(12 + aside), -PATH_PX.over))
  const under = asideH.map((aside) => down(placeAt(12 + aside), PATH_PX.under))
  return [
    {
      key: `path ${day.key}`,
      text: `${day.words}: ${hours(placeDay.sunHours)}`,
      face: day.picked ? 'sansBold' : 'sans',
      sizePx: TYPE_PX.note,
      places: [...over, ...under],
    },
  ]
}

/** Hours over the highest path, noon first, then outwards. */
function hourWishes(paths: readonly SkyPath[], scale: SkyScale, latitudeDeg: number): WordWish[] {
  const highest = paths.reduce<SkyPath | undefined>(
    (best, path) => (best && best.setH >= path.setH ? best : path),
    undefined,
  )
  if (!highest) return []
  const { at } = sunArc(latitudeDeg, highest.day.dayOfYear)
  return wholeHours(highest)
    .filter((hour) => hour % HOUR_STEP_H === 0 && hour !== 12)
    .map((hour): WordWish => {
      const { azimuthDeg, altitudeDeg } = at(hour)
      const place = skyPx(scale, azimuthDeg, altitudeDeg)
      const outwards = hour < 12 ? -1 : 1
      const aside = (px: number) => ({ xPx: place.xPx + outwards * px * sideways(scale), yPx: place.yPx })
      return {
        key: `hour ${hour}`,
        text: String(hour),
        face: 'sansBold',
        sizePx: TYPE_PX.least,
        places: [down(aside(8), -HOUR_PX), down(aside(12), 4), down(place, -HOUR_PX), down(place, 18)],
      }
    })
}

/** In the north the morning lies to the left, in the south to the right. */
function sideways({ middleDeg }: SkyScale): number {
  return middleDeg === 0 ? -1 : 1
}

function down({ xPx, yPx }: Px, px: number): Px {
  return { xPx, yPx: yPx + px }
}
