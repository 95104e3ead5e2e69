import { short } from './path'

/** What is known of a thing, for drawing it as it stands. */
export interface ThingMeasures {
  readonly shape: 'building' | 'line' | 'crown'
  readonly heightM: number
  readonly ridgeM: number | undefined
  /** Across the ridge of a building, of a crown, or how thick a line is [m]. */
  readonly widthM: number
  readonly crownBaseM: number
}

/** A measure written at its level. */
interface Mark {
  readonly yPx: number
  readonly text: string
}

/** A thing as it stands, true to scale, with a rod of 2 m beside it. */
export interface ThingElevation {
  readonly widthPx: number
  readonly heightPx: number
  readonly body: string
  readonly trunk: string
  readonly groundPx: number
  /** Bands of the rod, from the ground up, each half a metre. */
  readonly rod: readonly {
    readonly xPx: number
    readonly yPx: number
    readonly heightPx: number
    readonly dark: boolean
  }[]
  readonly marks: readonly Mark[]
  readonly across: { readonly fromPx: number; readonly toPx: number; readonly text: string } | undefined
}

const MOST_WIDTH_PX = 150
const MOST_HEIGHT_PX = 150
const ROOM_PX = { left: 26, right: 86, above: 12, below: 22 }
/** Labels stand at least so far apart [px]. */
const LINE_PX = 14
const BAND_M = 0.5
const BANDS = 4
const ROD_M = BAND_M * BANDS
const TRUNK_SHARE = 0.06

/** Draws a thing true to scale from what is known of it. */
export function thingElevation(thing: ThingMeasures): ThingElevation {
  const tallM = Math.max(thing.heightM, thing.ridgeM ?? 0, ROD_M)
  const pxPerM = Math.min(MOST_WIDTH_PX / Math.max(thing.widthM, 1), MOST_HEIGHT_PX / tallM)
  const groundPx = ROOM_PX.above + tallM * pxPerM
  const wide = thing.widthM * pxPerM
  const left = ROOM_PX.left
  const y = (metres: number) => groundPx - metres * pxPerM
  const middle = left + wide / 2
  return {
    widthPx: Math.ceil(left + wide + ROOM_PX.right),
    heightPx: Math.ceil(groundPx + ROOM_PX.below),
    groundPx,
    body: bodyOf(thing, { left, right: left + wide, middle, y }),
    trunk: thing.shape === 'crown' ? trunkOf(thing, middle, y) : '',
    rod: Array.from({ length: BANDS }, (_, at) => ({
      xPx: ROOM_PX.left - 18,
      yPx: y((at + 1) * BAND_M),
      heightPx: BAND_M * pxPerM,
      dark: at % 2 === 0,
    })),
    marks: apart(marksOf(thing).map(({ metres, text }) => ({ yPx: y(metres), text }))),
    across:
      thing.shape === 'line' ? undefined : { fromPx: left, toPx: left + wide, text: `${thing.widthM} m` },
  }
}

interface Laid {
  readonly left: number
  readonly right: number
  readonly middle: number
  readonly y: (metres: number) => number
}

function bodyOf(
  { shape, heightM, ridgeM, crownBaseM }: ThingMeasures,
  { left, right, middle, y }: Laid,
): string {
  if (shape === 'crown') {
    const [rx, ry] = [(right - left) / 2, (y(crownBaseM) - y(heightM)) / 2]
    const at = y((heightM + crownBaseM) / 2)
    return `M${short(left)} ${short(at)}a${short(rx)} ${short(ry)} 0 1 1 ${short(2 * rx)} 0a${short(rx)} ${short(ry)} 0 1 1 ${short(-2 * rx)} 0Z`
  }
  const eaves = `M${short(left)} ${short(y(0))}V${short(y(heightM))}`
  const roof = ridgeM !== undefined && ridgeM > heightM ? `L${short(middle)} ${short(y(ridgeM))}` : ''
  return `${eaves}${roof}L${short(right)} ${short(y(heightM))}V${short(y(0))}Z`
}

function trunkOf({ heightM, crownBaseM, widthM }: ThingMeasures, middle: number, y: Laid['y']): string {
  const half = Math.max(1.5, ((y(0) - y(Math.min(widthM, heightM))) * TRUNK_SHARE) / 2)
  return `M${short(middle - half)} ${short(y(0))}V${short(y(crownBaseM))}H${short(middle + half)}V${short(y(0))}Z`
}

function marksOf({ shape, heightM, ridgeM, crownBaseM }: ThingMeasures) {
  const ridge =
    ridgeM !== undefined && ridgeM > heightM ? [{ metres: ridgeM, text: `ridge ${ridgeM} m` }] : []
  const top = { metres: heightM, text: shape === 'building' ? `eaves ${heightM} m` : `${heightM} m` }
  return shape === 'crown' ? [top, { metres: crownBaseM, text: `branches ${crownBaseM} m` }] : [...ridge, top]
}

/** Moves labels down until none covers another. */
function apart(marks: readonly Mark[]): Mark[] {
  return marks.reduce<Mark[]>((sofar, mark) => {
    const above = sofar.at(-1)
    return [...sofar, above ? { ...mark, yPx: Math.max(mark.yPx, above.yPx + LINE_PX) } : mark]
  }, [])
}
