import type { TakerRow } from './taker-rows'

/** A line of the account as a bar. */
export interface TakerBar {
  readonly row: TakerRow
  readonly topPx: number
  readonly barTopPx: number
  readonly leftPx: number
  readonly widthPx: number
  /** From the end of this bar down to the next. */
  readonly dropPx: number
  /** Columns of figures end here [px]. */
  readonly takesPx: number
  readonly leftEndPx: number
}

/** How the account lies on the sheet [px]. */
const ROW = { wide: 24, narrow: 36, bar: 11 } as const
const NAME_PX = 190
const FIGURES_PX = { takes: 56, left: 112 } as const
/** The sum stands this much lower, under its double rule [px]. */
const SUM_PX = 5
/** Narrower sheets set the name over its bar. */
const NARROW_PX = 520

/** Bars of the account at one scale of hours, each taker hanging from what was left before it. */
export function takerBars(rows: readonly TakerRow[], widthPx: number) {
  const narrow = widthPx < NARROW_PX
  const [fromPx, toPx] = [narrow ? 2 : NAME_PX, widthPx - FIGURES_PX.left - 14]
  const most = Math.max(0.1, ...rows.map(({ left }) => left))
  const x = (time: number) => fromPx + (time / most) * (toPx - fromPx)
  const rowPx = narrow ? ROW.narrow : ROW.wide
  const bars = rows.map((row, at): TakerBar => {
    const whole = row.what === 'open' || row.what === 'sun'
    const ends = whole ? [0, row.left] : [row.left, row.left + row.hours]
    const [low, high] = [Math.min(...ends), Math.max(...ends)]
    const topPx = at * rowPx + (row.what === 'sun' ? SUM_PX : 0)
    return {
      ...{ row, topPx, barTopPx: topPx + (narrow ? 19 : 6), leftPx: x(low), widthPx: x(high) - x(low) },
      dropPx: x(row.left),
      takesPx: widthPx - FIGURES_PX.takes,
      leftEndPx: widthPx - 2,
    }
  })
  return { bars, narrow, rowPx, tallPx: rows.length * rowPx + SUM_PX, barPx: ROW.bar }
}
