import { textWidthPx } from '../../drawing/text-width'
import type { Axis } from '../../drawing/axis'
import { rampColour, wordOn } from '../../ramps'
import { firstThatFits } from './fit-words'
import { meanOf, sumOf, timeRows, type TimeRow, type TimeStep } from './season-rows'
import type { StripView, StripZone } from './strip-view.types'
import { wetnessColour, wetnessWord } from './wetness-classes'
import { zoneStretches } from './zone-cells'

/** A filled cell of a matrix of time down and distance across, with words that fit it. */
export interface MatrixCell {
  readonly key: string
  readonly leftPx: number
  readonly topPx: number
  readonly widthPx: number
  readonly heightPx: number
  readonly fill: string
  readonly ink: string
  readonly words: string | undefined
  readonly hatch: 'wet' | 'dry' | undefined
}

export const CELL_TYPE_PX = 11
export const rowTallPx: Readonly<Record<TimeStep, number>> = { months: 15, seasons: 18 }

/** Cells are hatched when more than this share of their days is too wet or too dry. */
const HATCH_SHARE = 0.66

/** Days of a mean month [d]. */
const MONTH_D = 365 / 12

/** Wet and dry days of every zone, by month or season. */
export function wetnessCells(view: StripView, axis: Axis, step: TimeStep): MatrixCell[] {
  return timeRows(step, view.latitudeDeg).flatMap((row, at) =>
    zoneStretches(view, axis).map(({ key, zone, leftPx, widthPx }) => {
      const fullness = meanOf(zone.fullness, row)
      const fill = wetnessColour(fullness)
      const [wet, dry] = [sumOf(zone.wetDays, row), sumOf(zone.dryDays, row)]
      return {
        ...{
          key: `${row.key}-${key}`,
          leftPx,
          widthPx,
          topPx: at * rowTallPx[step],
          heightPx: rowTallPx[step],
        },
        fill,
        ink: wordOn(fill),
        words: firstThatFits(
          wetnessWordings(zone, row, step),
          widthPx - 6,
          step === 'months' ? 'sans' : 'sansBold',
          CELL_TYPE_PX,
        ),
        hatch: hatchOf(wet, dry, row.months.length * MONTH_D),
      }
    }),
  )
}

function hatchOf(wet: number, dry: number, days: number): MatrixCell['hatch'] {
  if (wet > days * HATCH_SHARE) return 'wet'
  return dry > days * HATCH_SHARE ? 'dry' : undefined
}

/** What may be written in a cell, the fullest first. */
export function wetnessWordings(zone: StripZone, row: TimeRow, step: TimeStep): string[] {
  const word = wetnessWord(meanOf(zone.fullness, row))
  const days = dayWords(zone, row)
  if (days === '') return [word]
  // "Wet, wet 12 d" says it twice.
  return step === 'months' || days.startsWith(`${word} `) ? [days] : [`${word}, ${days}`, days, word]
}

/** "wet 12 d", "dry 8 d", both, or nothing. */
function dayWords(zone: StripZone, row: TimeRow): string {
  const [wet, dry] = [Math.round(sumOf(zone.wetDays, row)), Math.round(sumOf(zone.dryDays, row))]
  return [wet > 0 ? `wet ${wet} d` : '', dry > 0 ? `dry ${dry} d` : ''].filter(Boolean).join(', ')
}

/** Direct sun from which ground is drawn lightest [h]: seven even steps of 2 h. */
const FULL_SUN_H = 14

export function sunColour(hours: number): string {
  return rampColour('sun', Math.min(1, hours / FULL_SUN_H))
}

/** Bands of sun along the section, station by station, neighbours of one colour joined. */
export function sunBands(view: StripView, axis: Axis, step: TimeStep): MatrixCell[] {
  const edges = stationEdges(view)
  return timeRows(step, view.latitudeDeg).flatMap((row, at) => {
    const cells: MatrixCell[] = []
    view.stations.forEach((station, index) => {
      const fill = sunColour(meanOf(station.sunHours, row))
      const [leftPx, rightPx] = [axis.x(edges[index] ?? 0), axis.x(edges[index + 1] ?? view.lengthM)]
      const last = cells.at(-1)
      if (last?.fill === fill) cells[cells.length - 1] = { ...last, widthPx: rightPx - last.leftPx }
      else
        cells.push({
          ...{ key: `${row.key}-${index}`, leftPx, widthPx: rightPx - leftPx, topPx: at * rowTallPx[step] },
          ...{ heightPx: rowTallPx[step], fill, ink: wordOn(fill), words: undefined, hatch: undefined },
        })
    })
    return cells
  })
}

/** Half way between stations, from the top edge to the foot [m]. */
function stationEdges({ stations, lengthM }: StripView): number[] {
  const between = stations
    .slice(1)
    .map((station, at) => (station.distanceM + (stations[at]?.distanceM ?? 0)) / 2)
  return [0, ...between, lengthM]
}

/** Mean hours of each zone, to be written over the bands. */
export function sunFigures(view: StripView, axis: Axis, step: TimeStep) {
  return timeRows(step, view.latitudeDeg).flatMap((row, at) =>
    zoneStretches(view, axis)
      .filter(({ main }) => main)
      .flatMap(({ key, zone, middlePx, widthPx }) => {
        const words = `${meanOf(zone.sunHours, row).toFixed(1)} h`
        if (textWidthPx(words, 'sansBold', CELL_TYPE_PX) > widthPx - 4) return []
        const under = sunUnder(view, axis.distanceAt(middlePx), row)
        const fill = sunColour(under)
        return [
          {
            key: `${row.key}-${key}`,
            words,
            xPx: middlePx,
            yPx: (at + 0.5) * rowTallPx[step] + 4,
            fill,
            ink: wordOn(fill),
          },
        ]
      }),
  )
}

function sunUnder({ stations }: StripView, distanceM: number, row: TimeRow): number {
  const nearest = stations.reduce<StripView['stations'][number] | undefined>(
    (best, one) =>
      !best || Math.abs(one.distanceM - distanceM) < Math.abs(best.distanceM - distanceM) ? one : best,
    undefined,
  )
  return nearest ? meanOf(nearest.sunHours, row) : 0
}
