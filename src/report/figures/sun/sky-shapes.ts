import type { PlaceSky } from '#core/shade'
import { toDegrees, toRadians, type Month } from '#core/units'
import { outline, type Px } from '../../drawing/path'
import { skyPx, type SkyScale } from './sky-scale'

/** A thing as it stands before the sky. */
interface SkyThing {
  readonly id: string
  readonly name: string
  /** Lets no light through; or leaves, full or bare in the month drawn. */
  readonly look: 'solid' | 'leafy' | 'bare'
  readonly d: string
  /** Light that comes through in the month drawn, 0 to 1. */
  readonly through: number
  /** Where its words may stand, in it first, then over it. */
  readonly places: readonly Px[]
  /** Its highest place [°]. */
  readonly top: { readonly azimuthDeg: number; readonly heightDeg: number }
}

/** What stands all around a place, as shapes on the sheet. */
export interface SkyShapes {
  readonly far: string
  readonly ground: string
  /** Sky that the place's own slope turns its back on. */
  readonly ownSlope: string
  readonly things: readonly SkyThing[]
  /** Far hills and own slope, where they show, with places for their words. */
  readonly hills: readonly { readonly key: string; readonly name: string; readonly places: readonly Px[] }[]
}

/** Between full leaf and bare branches, what comes through is bare from this share of the difference on [1]. */
const BARE_SHARE = 0.5

/** Leaves that let this much more through when bare are drawn bare [1]. */
const LEAST_CHANGE = 0.1

/** Words keep this far below the top of a shape, and this far over it [px]. */
const WORDS_PX = { below: 15, over: 5 }

/** Shapes of ground, hills and things around a place in one month. */
export function skyShapes(sky: PlaceSky, month: Month, scale: SkyScale): SkyShapes {
  const order = directionsOf(scale)
  const { groundDeg, farDeg } = sky
  const rim = (heightDeg: (azimuthDeg: number) => number) =>
    band(
      order.map((azimuthDeg) => ({ azimuthDeg, low: 0, high: heightDeg(azimuthDeg) })),
      scale,
    )
  return {
    far: rim((azimuthDeg) => farDeg[azimuthDeg] ?? 0),
    ground: rim((azimuthDeg) => groundDeg[azimuthDeg] ?? 0),
    ownSlope: rim((azimuthDeg) => ownSlopeDeg(sky, azimuthDeg)),
    hills: [
      {
        ...{ key: 'far-hills', name: 'far hills' },
        places: backPlaces(order, (azimuthDeg) => farDeg[azimuthDeg] ?? 0, { sky, scale }),
      },
      {
        ...{ key: 'own-slope', name: 'its own slope' },
        places: backPlaces(order, (azimuthDeg) => ownSlopeDeg(sky, azimuthDeg), { sky, scale }),
      },
    ],
    things: sky.things
      .flatMap((thing) => {
        const shape = thingShape(thing, order, scale)
        return shape ? [{ ...shape, ...lookOf(thing.through, month), id: thing.id, name: thing.name }] : []
      })
      .sort((one, other) => Number(other.look === 'solid') - Number(one.look === 'solid')),
  }
}

/** Height to which the place's own slope hides the sky in a direction [°]; 0 where it faces that way. */
export function ownSlopeDeg({ slopeDeg, aspectDeg }: PlaceSky, azimuthDeg: number): number {
  if (aspectDeg < 0) return 0
  const upwards = -Math.tan(toRadians(slopeDeg)) * Math.cos(toRadians(azimuthDeg - aspectDeg))
  return Math.max(0, toDegrees(Math.atan(upwards)))
}

/** The whole degrees of the sheet from its left to its right. */
function directionsOf({ middleDeg, halfDeg }: SkyScale): number[] {
  const count = halfDeg === 180 ? 360 : halfDeg * 2 + 1
  return Array.from({ length: count }, (_, at) => (((middleDeg - halfDeg + at) % 360) + 360) % 360)
}

interface Column {
  readonly azimuthDeg: number
  readonly low: number
  readonly high: number
}

/** Shapes that the sheet cuts off run on past its edge, where a clip hides their outline [px]. */
const PAST_PX = 6

/** One closed shape over neighbouring columns, from their lows to their highs. */
function band(columns: readonly Column[], scale: SkyScale): string {
  if (!columns.some(({ low, high }) => high > low)) return ''
  const { x, y, leftPx, rightPx } = scale
  const halfPx = (x(scale.middleDeg + 1) - x(scale.middleDeg)) / 2
  const xOf = ({ azimuthDeg }: Column, at: number) => {
    const xPx = x(azimuthDeg)
    if (at === 0) return xPx - (xPx <= leftPx + halfPx ? PAST_PX : halfPx)
    return at === columns.length - 1 ? xPx + (xPx >= rightPx - halfPx * 2.5 ? PAST_PX : halfPx) : xPx
  }
  const cut = (heightDeg: number) => Math.max(scale.topPx - PAST_PX, y(Math.max(0, heightDeg)))
  const tops = columns.map((column, at) => ({ xPx: xOf(column, at), yPx: cut(column.high) }))
  const feet = columns.map((column, at) => ({ xPx: xOf(column, at), yPx: cut(column.low) }))
  return outline([...tops, ...feet.reverse()])
}

function thingShape(thing: PlaceSky['things'][number], order: readonly number[], scale: SkyScale) {
  const columns = order.map((azimuthDeg) => ({
    azimuthDeg,
    low: Math.max(0, thing.lowDeg[azimuthDeg] ?? NaN),
    high: thing.highDeg[azimuthDeg] ?? NaN,
  }))
  const groups = groupsOf(columns)
  const top = groups
    .flat()
    .reduce<Column | undefined>((best, one) => (best && best.high >= one.high ? best : one), undefined)
  if (!top) return undefined
  return {
    d: groups.map((group) => band(group, scale)).join(''),
    places: wordPlaces(groups, scale),
    top: { azimuthDeg: top.azimuthDeg, heightDeg: top.high },
  }
}

/** Columns side by side that the thing covers, above the horizontal. */
function groupsOf(columns: readonly Column[]): Column[][] {
  const groups: Column[][] = []
  let open = false
  for (const column of columns) {
    const stands = column.high > column.low
    if (stands && open) groups.at(-1)?.push(column)
    else if (stands) groups.push([column])
    open = stands
  }
  return groups
}

function lookOf(through: readonly number[], month: Month): Pick<SkyThing, 'look' | 'through'> {
  const own = through[month] ?? 0
  const [least, most] = [Math.min(...through), Math.max(...through)]
  if (most === 0) return { look: 'solid', through: own }
  const bare = most - least > LEAST_CHANGE && own - least >= (most - least) * BARE_SHARE
  return { look: bare ? 'bare' : 'leafy', through: own }
}

/** What lies behind the ground shows from so many pixels over it on. */
const LEAST_SHOWN_PX = 17

/** Places in what stands behind the ground and all things, where enough of it shows, the most first. */
function backPlaces(
  order: readonly number[],
  heightDeg: (azimuthDeg: number) => number,
  { sky, scale }: { readonly sky: PlaceSky; readonly scale: SkyScale },
): Px[] {
  const shown = order.flatMap((azimuthDeg) => {
    const before = [
      sky.groundDeg[azimuthDeg] ?? 0,
      ...sky.things.map(({ highDeg }) => highDeg[azimuthDeg] ?? NaN).filter((high) => !Number.isNaN(high)),
    ]
    const topPx = scale.y(Math.min(scale.topDeg, heightDeg(azimuthDeg)))
    const shownPx = scale.y(Math.max(0, ...before)) - topPx
    return shownPx >= LEAST_SHOWN_PX
      ? [{ xPx: scale.x(azimuthDeg), yPx: topPx + shownPx / 2 + 4, shownPx }]
      : []
  })
  return shown.sort((one, other) => other.shownPx - one.shownPx)
}

/** In the tallest part of the widest group first, then over its top. */
function wordPlaces(groups: readonly (readonly Column[])[], scale: SkyScale): Px[] {
  const widest = groups.reduce<readonly Column[]>(
    (best, group) => (group.length > best.length ? group : best),
    [],
  )
  const inTurn = [...widest].sort((one, other) => other.high - one.high)
  const tops = [inTurn[0], widest[Math.floor(widest.length / 2)], inTurn[Math.floor(inTurn.length / 2)]]
  return tops.flatMap((column) => {
    if (!column) return []
    const top = skyPx(scale, column.azimuthDeg, Math.min(scale.topDeg, column.high))
    const tall = scale.y(column.low) - top.yPx
    const within = tall > WORDS_PX.below + 3 ? [{ ...top, yPx: top.yPx + WORDS_PX.below }] : []
    const middle = tall > 2 * WORDS_PX.below ? [{ ...top, yPx: top.yPx + tall / 2 + 4 }] : []
    return [...middle, ...within, { ...top, yPx: top.yPx - WORDS_PX.over }]
  })
}
