import { sunArc, type ZoneSun } from '#core/shade'
import { representativeDays } from '#core/sun'
import { eachMonth, months, type Month, type Twelve } from '#core/units'
import { textWidthPx } from '../../drawing/text-width'
import { rampColour, wordOn } from '../../ramps'

/** Times of sunrise and sunset on open level ground, by the sun [h]; both 12 where it does not rise. */
export interface UpTime {
  readonly riseH: number
  readonly setH: number
}

/** How a chart of months across and hours down lies on the sheet. */
export interface HourSheet {
  readonly leftPx: number
  readonly rightPx: number
  readonly topPx: number
  readonly bottomPx: number
  readonly columnPx: number
  readonly rowPx: number
  readonly firstHour: number
  readonly lastHour: number
  readonly up: Twelve<UpTime>
  readonly x: (month: Month) => number
  readonly y: (hour: number) => number
}

/** An hour of a month with the share of the zone that is in the sun. */
export interface HourCell {
  readonly key: string
  readonly month: Month
  readonly hour: number
  readonly share: number
  readonly leftPx: number
  readonly topPx: number
  /** The first and the last hour of a day reach to sunrise and sunset. */
  readonly tallPx: number
  readonly fill: string
  readonly ink: string
  /** The share in percent where it fits; of hours that are alike throughout, once. */
  readonly words: string
}

/** Room for hours at the left and months on top [px]. */
const ROOM = { left: 36, right: 8, top: 38 } as const
const ROW_PX = { wide: 16, narrow: 9 } as const
const TYPE_PX = 11

/** Narrower columns carry no figures [px]. */
const LEAST_FIGURE_PX = textWidthPx('100', 'sans', TYPE_PX) + 3

/** Narrower columns write 0 for none [px]. */
const LEAST_WORD_PX = textWidthPx('none', 'sans', TYPE_PX) + 4

/** Lays the months and hours on a sheet: only hours with the sun up in some month. */
export function hourSheet(latitudeDeg: number, widthPx: number): HourSheet {
  const up = eachMonth((month) => {
    const { riseH, setH } = sunArc(latitudeDeg, representativeDays[month])
    return { riseH, setH }
  })
  const firstHour = Math.floor(Math.min(...up.map(({ riseH }) => riseH)))
  const lastHour = Math.max(firstHour + 1, Math.ceil(Math.max(...up.map(({ setH }) => setH))))
  const [leftPx, rightPx, topPx] = [ROOM.left, widthPx - ROOM.right, ROOM.top]
  const columnPx = (rightPx - leftPx) / 12
  const rowPx = columnPx < LEAST_FIGURE_PX ? ROW_PX.narrow : ROW_PX.wide
  return {
    ...{ leftPx, rightPx, topPx, columnPx, rowPx, firstHour, lastHour, up },
    bottomPx: topPx + (lastHour - firstHour) * rowPx,
    x: (month) => leftPx + month * columnPx,
    y: (hour) => topPx + (hour - firstHour) * rowPx,
  }
}

/** Every hour with the sun up over open level ground at its middle. */
export function hourCells({ litShares }: Pick<ZoneSun, 'litShares'>, sheet: HourSheet): HourCell[] {
  return months.flatMap((month) => {
    const { riseH, setH } = sheet.up[month]
    const hours = hoursUp(sheet.up[month])
    const shares = hours.map((hour) => litShares[month][hour] ?? 0)
    const words = sheet.columnPx < LEAST_FIGURE_PX ? [] : wordsOf(shares, sheet.columnPx)
    return hours.map((hour, at) => {
      const share = shares[at] ?? 0
      const fill = shareColour(share)
      const topPx = sheet.y(at === 0 ? riseH : hour)
      return {
        ...{ key: `${month}-${hour}`, month, hour, share, fill, ink: wordOn(fill), topPx },
        ...{ leftPx: sheet.x(month), words: words[at] ?? '' },
        tallPx: sheet.y(at === hours.length - 1 ? setH : hour + 1) - topPx,
      }
    })
  })
}

/** Percents of a day's hours; "all" and "none" once for all that follow each other. */
function wordsOf(shares: readonly number[], columnPx: number): string[] {
  const none = columnPx < LEAST_WORD_PX ? '0' : 'none'
  const percents = shares.map((share) => Math.round(share * 100))
  const words = percents.map(String)
  for (const [percent, word] of [
    [100, 'all'],
    [0, none],
  ] as const)
    for (const run of runsOf(percents, percent)) {
      run.forEach((at) => (words[at] = ''))
      words[run[Math.floor((run.length - 1) / 2)] ?? 0] = word
    }
  return words
}

function runsOf(values: readonly number[], wanted: number): number[][] {
  const runs: number[][] = []
  values.forEach((value, at) => {
    if (value !== wanted) return
    if (values[at - 1] === wanted) runs.at(-1)?.push(at)
    else runs.push([at])
  })
  return runs
}

/** Hours of the day whose middle has the sun up. */
export function hoursUp({ riseH, setH }: UpTime): number[] {
  return Array.from({ length: 24 }, (_, hour) => hour).filter(
    (hour) => hour + 0.5 > riseH && hour + 0.5 < setH,
  )
}

/** Colour of a share of the zone in the sun. */
export function shareColour(share: number): string {
  return rampColour('sun', Math.min(1, Math.max(0, share)))
}

/** Sunrise and sunset through the year as two stairs. */
export function upStairs(sheet: HourSheet): string {
  const stair = (hourOf: (up: UpTime) => number) =>
    months
      .map((month) => {
        const y = round(sheet.y(hourOf(sheet.up[month])))
        const left = round(sheet.x(month))
        return `${month === 0 ? `M${left} ${y}` : `V${y}`}H${round(left + sheet.columnPx)}`
      })
      .join('')
  return stair(({ riseH }) => riseH) + stair(({ setH }) => setH)
}

const round = (px: number): number => Math.round(px * 10) / 10
