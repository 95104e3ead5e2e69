import { n, outline, polyline, type Px } from '../../drawing/path'
import type { Axis } from '../../drawing/axis'
import { textWidthPx } from '../../drawing/text-width'
import { rampColour } from '../../ramps'
import type { StripStation, StripView } from './strip-view.types'
import { zoneStretches } from './zone-cells'

/** Slope from which ground is drawn darkest [°]: six even steps of 6°. */
const DARKEST_DEG = 36

/** Distance between hachures, and their width at the high end on level and on 45° ground [px]. */
const HACHURE = { apartPx: 6, levelPx: 0.5, steepPx: 5.2, tipPx: 0.4 }

/** Flatter ground carries no hachures [°]. */
const LEVEL_DEG = 1

/** Slope at a distance, read between stations [°]. */
export function slopeAt(stations: readonly StripStation[], distanceM: number): number {
  const after = stations.findIndex((station) => station.distanceM >= distanceM)
  const right = stations[after] ?? stations.at(-1)
  const left = stations[Math.max(0, after - 1)]
  if (!right || !left) return 0
  const gapM = right.distanceM - left.distanceM
  if (after < 1 || gapM === 0) return right.slopeDeg
  const share = (distanceM - left.distanceM) / gapM
  return left.slopeDeg + share * (right.slopeDeg - left.slopeDeg)
}

/** Strokes down the fall, thick at the high side and thicker the steeper: one path. */
export function hachures(view: StripView, axis: Axis, heightPx: number): string {
  const words = hachureFigures(view, axis).map(({ at, halfPx }) => ({ from: at - halfPx, to: at + halfPx }))
  let d = ''
  for (let xPx = axis.startPx + HACHURE.apartPx / 2; xPx < axis.endPx; xPx += HACHURE.apartPx) {
    const slopeDeg = slopeAt(view.stations, axis.distanceAt(xPx))
    if (slopeDeg < LEVEL_DEG || words.some(({ from, to }) => xPx > from && xPx < to)) continue
    const half = (HACHURE.levelPx + (Math.min(slopeDeg, 45) / 45) * (HACHURE.steepPx - HACHURE.levelPx)) / 2
    d += outline([
      { xPx: xPx - half, yPx: 0 },
      { xPx: xPx + half, yPx: 0 },
      { xPx: xPx + HACHURE.tipPx / 2, yPx: heightPx },
      { xPx: xPx - HACHURE.tipPx / 2, yPx: heightPx },
    ])
  }
  return d
}

/** Type of the figures between hachures, and the gap left on each side of them [px]. */
const BETWEEN_PX = { type: 14, air: 5 } as const

/** Each zone's steep figure in its middle, with half the gap it needs. */
export function hachureFigures(view: StripView, axis: Axis) {
  return zoneStretches(view, axis).flatMap(({ key, zone, middlePx, widthPx, main }) => {
    const text = `${Math.round(zone.slopeDegSteep)}°`
    const halfPx = textWidthPx(text, 'sansBold', BETWEEN_PX.type) / 2 + BETWEEN_PX.air
    return main && halfPx * 2 <= widthPx ? [{ key, text, at: middlePx, halfPx }] : []
  })
}

/** A zone's steep figure with its place. */
interface SlopeFigure {
  readonly key: string
  readonly text: string
  readonly at: Px
}

export interface GradientProfile {
  readonly columns: readonly { readonly key: string; readonly d: string; readonly fill: string }[]
  readonly line: string
  readonly figures: readonly SlopeFigure[]
  /** Place of a slope [px from the strip's top]. */
  readonly y: (slopeDeg: number) => number
}

/** Slope along the section as a filled profile, in even steps of colour. */
export function gradientProfile(view: StripView, axis: Axis, heightPx: number): GradientProfile {
  const steepest = Math.max(...view.stations.map(({ slopeDeg }) => slopeDeg), 10)
  const limit = Math.max(...view.machines.map(({ limitDeg }) => limitDeg), 0)
  const topDeg = Math.max(steepest * 1.18, limit + 3)
  const y = (slopeDeg: number) => heightPx - (slopeDeg / topDeg) * heightPx
  const points = sampled(view, axis).map(({ xPx, slopeDeg }) => ({ xPx, yPx: y(slopeDeg), slopeDeg }))
  return {
    columns: columnsOf(points, heightPx),
    line: polyline(points),
    figures: figuresOf(view, axis, y),
    y,
  }
}

interface Sample extends Px {
  readonly slopeDeg: number
}

function sampled(view: StripView, axis: Axis): { xPx: number; slopeDeg: number }[] {
  const steps = Math.max(60, Math.round((axis.endPx - axis.startPx) / 4))
  return Array.from({ length: steps + 1 }, (_, at) => {
    const distanceM = (at / steps) * view.lengthM
    return { xPx: axis.x(distanceM), slopeDeg: slopeAt(view.stations, distanceM) }
  })
}

/** Neighbouring samples of one colour become one shape. */
function columnsOf(points: readonly Sample[], heightPx: number): GradientProfile['columns'] {
  const columns: { key: string; d: string; fill: string }[] = []
  let run: Sample[] = []
  const colour = ({ slopeDeg }: Sample) => rampColour('gradient', Math.min(1, slopeDeg / DARKEST_DEG))
  for (const point of points) {
    const [first] = run
    run.push(point)
    if (first && (colour(first) !== colour(point) || point === points.at(-1))) {
      columns.push({ key: n(first.xPx), d: closed(run, heightPx), fill: colour(first) })
      run = [point]
    }
  }
  return columns
}

function closed(run: readonly Px[], heightPx: number): string {
  const [first, last] = [run[0], run.at(-1)]
  return first && last ? `${polyline(run)}V${n(heightPx)}H${n(first.xPx)}Z` : ''
}

const FIGURE_PX = 12

function figuresOf(view: StripView, axis: Axis, y: (slopeDeg: number) => number): SlopeFigure[] {
  return zoneStretches(view, axis).flatMap(({ key, zone, leftPx, widthPx, main }) => {
    const text = `${Math.round(zone.slopeDegSteep)}°`
    const halfPx = textWidthPx(text, 'sansBold', FIGURE_PX) / 2 + 3
    if (!main || widthPx < halfPx * 2) return []
    const inside = view.stations.filter(({ distanceM }) => {
      const xPx = axis.x(distanceM)
      return xPx >= leftPx + halfPx && xPx <= leftPx + widthPx - halfPx
    })
    const middle = { distanceM: axis.distanceAt(leftPx + widthPx / 2), slopeDeg: zone.slopeDegSteep }
    const best = inside.reduce<{ distanceM: number; slopeDeg: number }>(
      (most, one) => (one.slopeDeg > most.slopeDeg ? one : most),
      { ...middle, slopeDeg: -1 },
    )
    const at = best.slopeDeg < 0 ? { ...middle, slopeDeg: slopeAt(view.stations, middle.distanceM) } : best
    return [{ key, text, at: { xPx: axis.x(at.distanceM), yPx: y(at.slopeDeg) - 5 } }]
  })
}
