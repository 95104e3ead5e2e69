import { toDegrees } from '#core/units'
import type { Px } from './path'

/** A bank in four numbers, as far as its drawing goes. */
export interface BankFigures {
  readonly lengthM: number
  readonly riseM: number
  readonly widthM: number
}

/** A dimension line with its words. */
interface Dimension {
  readonly from: Px
  readonly to: Px
  /** Ends of the two witness lines, from the thing measured to just past the dimension line. */
  readonly witness: readonly (readonly [Px, Px])[]
  readonly angleDeg: number
  readonly middle: Px
  readonly text: string
}

/** Every part of the bank seen from the side and above, in drawing pixels. */
export interface ObliqueBank {
  readonly topFlat: readonly Px[]
  readonly face: readonly Px[]
  readonly footFlat: readonly Px[]
  readonly body: readonly Px[]
  readonly edge: readonly Px[]
  readonly end: readonly Px[]
  readonly strokes: readonly (readonly [Px, Px])[]
  readonly house: { readonly wall: readonly Px[]; readonly windows: readonly (readonly Px[])[] }
  readonly rod: { readonly foot: Px; readonly tallPx: number }
  readonly angle: { readonly at: Px; readonly radiusPx: number; readonly slopeDeg: number; readonly text: Px }
  readonly dimensions: readonly Dimension[]
  readonly heightPx: number
}

/** How depth is drawn: across and up for each metre, as parts of a metre of the front. */
const DEPTH = { across: 0.38, up: 0.24 }

/** Level ground drawn beside the bank, as a part of its length. */
const FLAT_SHARE = 0.2

/** Room for dimensions and the earth [px]. */
const ROOM = { leftPx: 92, rightPx: 54, topPx: 30, bottomPx: 66, earthPx: 34 }

/** Height of the house's wall and of a rod, and of the windows [m]. */
const HOUSE_M = 2.4
const ROD_M = 2

interface Frame {
  /** Across, up, and into the drawing [m]. */
  readonly at: (acrossM: number, upM: number, deepM: number) => Px
  readonly pxPerM: number
  readonly heightPx: number
}

/** Lays a bank out in a drawing of a given width; the height follows. */
export function obliqueBank(bank: BankFigures, widthPx: number, mostHeightPx: number): ObliqueBank {
  const runM = Math.sqrt(Math.max(bank.lengthM ** 2 - bank.riseM ** 2, 0.0001))
  const flatM = bank.lengthM * FLAT_SHARE
  const frame = frameFor({ ...bank, runM, flatM }, widthPx, mostHeightPx)
  const { at } = frame
  const deep = bank.widthM
  const corners = [
    [0, bank.riseM],
    [flatM, bank.riseM],
    [flatM + runM, 0],
    [2 * flatM + runM, 0],
  ] as const
  const front = corners.map(([across, up]) => at(across, up, 0))
  const back = corners.map(([across, up]) => at(across, up, deep))
  const quad = (from: 0 | 1 | 2): readonly Px[] =>
    [front[from], front[from + 1], back[from + 1], back[from]].flatMap((place) => place ?? [])
  const down = (place: Px): Px => ({ ...place, yPx: at(0, 0, 0).yPx + ROOM.earthPx })
  const [first, last, lastBack] = [
    at(0, bank.riseM, 0),
    at(2 * flatM + runM, 0, 0),
    at(2 * flatM + runM, 0, deep),
  ]
  return {
    topFlat: quad(0),
    face: quad(1),
    footFlat: quad(2),
    body: [...front, down(last), down(first)],
    edge: front,
    end: [last, lastBack, { ...lastBack, yPx: lastBack.yPx + ROOM.earthPx }, down(last)],
    strokes: hachures(bank, { runM, flatM }, frame),
    house: house(bank, flatM, frame),
    rod: {
      foot: at(flatM + runM * 0.5, bank.riseM * 0.5, deep * 0.45),
      tallPx: ROD_M * frame.pxPerM,
    },
    angle: angleOf(bank, flatM + runM, frame),
    dimensions: dimensions(bank, { runM, flatM }, frame),
    heightPx: frame.heightPx,
  }
}

interface Spread extends BankFigures {
  readonly runM: number
  readonly flatM: number
}

function frameFor(bank: Spread, widthPx: number, mostHeightPx: number): Frame {
  const acrossM = bank.runM + 2 * bank.flatM + DEPTH.across * bank.widthM
  const upM = Math.max(bank.riseM + DEPTH.up * bank.widthM + HOUSE_M * 0.6, 0.5)
  const roomPx = {
    across: widthPx - ROOM.leftPx - ROOM.rightPx,
    up: mostHeightPx - ROOM.topPx - ROOM.bottomPx,
  }
  const pxPerM = Math.max(0.01, Math.min(roomPx.across / acrossM, roomPx.up / upM))
  const heightPx = Math.ceil(upM * pxPerM + ROOM.topPx + ROOM.bottomPx)
  const zeroPx = heightPx - ROOM.bottomPx
  return {
    at: (across, up, deep) => ({
      xPx: ROOM.leftPx + (across + DEPTH.across * deep) * pxPerM,
      yPx: zeroPx - (up + DEPTH.up * deep) * pxPerM,
    }),
    pxPerM,
    heightPx,
  }
}

/** Rows of strokes down the face, uneven by a fixed pattern. */
function hachures(
  bank: BankFigures,
  { runM, flatM }: Pick<Spread, 'runM' | 'flatM'>,
  { at, pxPerM }: Frame,
): (readonly [Px, Px])[] {
  const rows = 4
  const columns = Math.max(6, Math.min(60, Math.round((bank.widthM * pxPerM) / 9)))
  const on = (share: number, deepM: number) => at(flatM + runM * share, bank.riseM * (1 - share), deepM)
  return Array.from({ length: rows * columns }, (_, index) => {
    const row = Math.floor(index / columns)
    const wobble = ((index * 7) % 11) / 11
    const deepM = (bank.widthM * ((index % columns) + 0.3 + 0.4 * wobble)) / columns
    const start = (row + 0.1 + 0.12 * wobble) / rows
    return [on(start, deepM), on(start + 0.75 / rows, deepM)] as const
  })
}

function house(bank: BankFigures, flatM: number, { at }: Frame): ObliqueBank['house'] {
  const acrossM = flatM * 0.1
  const wall = (from: number, to: number, low: number, high: number): Px[] => [
    at(acrossM, bank.riseM + low, bank.widthM * from),
    at(acrossM, bank.riseM + low, bank.widthM * to),
    at(acrossM, bank.riseM + high, bank.widthM * to),
    at(acrossM, bank.riseM + high, bank.widthM * from),
  ]
  return {
    wall: wall(0.35, 0.92, 0, HOUSE_M),
    windows: [0.42, 0.6, 0.78].map((from) => wall(from, from + 0.09, HOUSE_M * 0.28, HOUSE_M * 0.72)),
  }
}

function angleOf(
  { lengthM, riseM }: BankFigures,
  footM: number,
  { at, pxPerM }: Frame,
): ObliqueBank['angle'] {
  const slopeDeg = toDegrees(Math.asin(Math.min(1, riseM / lengthM)))
  const radiusPx = Math.min(96, lengthM * pxPerM * 0.4)
  const foot = at(footM, 0, 0)
  return { at: foot, radiusPx, slopeDeg, text: { xPx: foot.xPx - radiusPx - 10, yPx: foot.yPx - 9 } }
}

function dimensions(
  bank: BankFigures,
  { runM, flatM }: Pick<Spread, 'runM' | 'flatM'>,
  { at }: Frame,
): Dimension[] {
  const endM = 2 * flatM + runM
  const deepPx = { xPx: 8, yPx: ROOM.earthPx + 12 }
  return [
    dimension(
      at(flatM, bank.riseM, 0),
      at(flatM + runM, 0, 0),
      { xPx: 9, yPx: -18 },
      `${figure(bank.lengthM)} m`,
    ),
    dimension(at(0, 0, 0), at(0, bank.riseM, 0), { xPx: -32, yPx: 0 }, `${figure(bank.riseM)} m`),
    dimension(at(endM, 0, 0), at(endM, 0, bank.widthM), deepPx, `${figure(bank.widthM)} m`),
  ]
}

function dimension(one: Px, other: Px, off: Px, text: string): Dimension {
  const moved = (place: Px, times: number): Px => ({
    xPx: place.xPx + off.xPx * times,
    yPx: place.yPx + off.yPx * times,
  })
  const [from, to] = [moved(one, 1), moved(other, 1)]
  const turnedDeg = toDegrees(Math.atan2(to.yPx - from.yPx, to.xPx - from.xPx))
  return {
    from,
    to,
    witness: [
      [moved(one, 0.2), moved(one, 1.25)],
      [moved(other, 0.2), moved(other, 1.25)],
    ],
    angleDeg: Math.abs(turnedDeg) > 90 ? turnedDeg + 180 : turnedDeg,
    middle: { xPx: (from.xPx + to.xPx) / 2, yPx: (from.yPx + to.yPx) / 2 },
    text,
  }
}

/** A measure as a person writes it: two decimals at most. */
const figure = (metres: number): string => String(Math.round(metres * 100) / 100)
