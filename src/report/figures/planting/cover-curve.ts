import type { TableTwin } from '../../figures/strips/table-twin.types'
import { monotoneCurve } from './monotone-curve'

/** Cover of one zone through the years. */
export interface CurveZone {
  readonly letter: string
  readonly name: string
  /** Share of the ground covered, 0 to 1, years 0 to 10. */
  readonly coverByYear: readonly number[]
}

export interface CoverCurveSheet {
  readonly x: (year: number) => number
  readonly y: (share: number) => number
  readonly curves: readonly {
    readonly letter: string
    readonly d: string
    readonly label: { readonly xPx: number; readonly yPx: number; readonly leader: string }
  }[]
  /** Soil left bare above the lowest curve. */
  readonly bare: string
  readonly leftPx: number
  readonly rightPx: number
  readonly bottomPx: number
}

const ROOM_PX = { left: 44, right: 16, top: 12, bottom: 26 } as const
const YEARS = 10

/** Year at which curves are told apart, and how far their letters stand apart [px]. */
const LABEL_YEAR = 1
const LABEL_APART_PX = 15

/** Lays the curves; each passes through its yearly figures. */
export function coverCurves(
  zones: readonly CurveZone[],
  size: { readonly widthPx: number; readonly heightPx: number },
): CoverCurveSheet {
  const [leftPx, rightPx] = [ROOM_PX.left, size.widthPx - ROOM_PX.right]
  const bottomPx = size.heightPx - ROOM_PX.bottom
  const x = (year: number) => leftPx + (year / YEARS) * (rightPx - leftPx)
  const y = (share: number) => bottomPx - share * (bottomPx - ROOM_PX.top)
  const path = (cover: readonly number[]) =>
    monotoneCurve(cover.map((share, year) => ({ xPx: x(year), yPx: y(share) })))
  const lowest = Array.from({ length: YEARS + 1 }, (_, year) =>
    Math.min(1, ...zones.map(({ coverByYear }) => coverByYear[year] ?? 1)),
  )
  const bare = zones.length > 0 ? `${path(lowest)}L${x(YEARS)} ${y(1)}H${x(0)}Z` : ''
  const labels = labelsFor(zones, x, y)
  return {
    ...{ x, y, bare, leftPx, rightPx, bottomPx },
    curves: zones.map((zone, at) => ({
      letter: zone.letter,
      d: path(zone.coverByYear),
      label: labels[at] ?? { xPx: x(0), yPx: y(0), leader: '' },
    })),
  }
}

/** Letters right of the first year's figures, pushed apart downwards from the highest. */
function labelsFor(zones: readonly CurveZone[], x: (year: number) => number, y: (share: number) => number) {
  const wanted = zones
    .map(({ coverByYear }, at) => ({ at, yPx: y(coverByYear[LABEL_YEAR] ?? 0) }))
    .sort((one, other) => one.yPx - other.yPx)
  let freePx = -Infinity
  const placed = wanted.map(({ at, yPx }, order) => {
    const labelPx = Math.max(yPx, freePx)
    freePx = labelPx + LABEL_APART_PX
    const xPx = x(LABEL_YEAR) + 26 + (order % 2) * 18
    return { at, xPx, yPx: labelPx, leader: `M${x(LABEL_YEAR)} ${yPx}L${xPx - 8} ${labelPx}` }
  })
  return placed.sort((one, other) => one.at - other.at)
}

/** The curves in figures, and what is left bare. */
export function coverTable(zones: readonly CurveZone[]): TableTwin {
  const years = Array.from({ length: YEARS + 1 }, (_, year) => year)
  return {
    caption: 'Share of the ground covered, by year after planting',
    columns: ['Zone', ...years.map((year) => `Year ${year}`)],
    rows: zones.map((zone) => [
      `${zone.letter} ${zone.name}`,
      ...years.map((year) => `${Math.round((zone.coverByYear[year] ?? 0) * 100)} %`),
    ]),
    note: 'What is not covered lies bare: keep it under mulch or matting.',
  }
}
