import { cubicMetres, degrees, hours } from '../../drawing/measures'
import { coverWords, verdictWords } from '../../figures/section/verdict-words'
import { amountWords, layerRows } from './planting-lines'
import { wetnessWordings } from './matrix-cells'
import { meanOf, timeRows, type TimeStep } from './season-rows'
import type { StripView, StripZone } from './strip-view.types'
import type { TableTwin } from './table-twin.types'
import { wetnessKeyWords } from './wetness-classes'

const nameOf = ({ letter, name }: StripZone): string => `${letter} ${name}`

export function gradientTable({ zones, machines }: StripView): TableTwin {
  return {
    caption: 'Gradient of each zone',
    columns: ['Zone', 'Steep part', 'Mean'],
    rows: zones.map((zone) => [nameOf(zone), degrees(zone.slopeDegSteep), degrees(zone.slopeDegMean)]),
    note: machines.map(({ name, limitDeg }) => `${name}: at most ${degrees(limitDeg)}.`).join(' '),
  }
}

export function wetnessTable(view: StripView, step: TimeStep): TableTwin {
  const rows = timeRows(step, view.latitudeDeg)
  return {
    caption: 'How wet the ground lies, and days too wet or too dry',
    columns: ['Zone', ...rows.map(({ name }) => name)],
    rows: view.zones.map((zone) => [
      nameOf(zone),
      ...rows.map((row) => wetnessWordings(zone, row, 'seasons')[0] ?? ''),
    ]),
    note: wetnessKeyWords(),
  }
}

export function sunTable(view: StripView, step: TimeStep): TableTwin {
  const rows = timeRows(step, view.latitudeDeg)
  return {
    caption: 'Hours of direct sun a day under a clear sky, mean of each zone',
    columns: ['Zone', ...rows.map(({ name }) => name)],
    rows: view.zones.map((zone) => [
      nameOf(zone),
      ...rows.map((row) => `${meanOf(zone.sunHours, row).toFixed(1)} h`),
    ]),
  }
}

export function coverTable({ zones }: StripView): TableTwin {
  return {
    caption: 'Cover of each zone',
    columns: ['Zone', 'Suggested', 'Proposed', 'Decided by'],
    rows: zones.map((zone) => [
      nameOf(zone),
      coverWords[zone.suggested],
      coverWords[zone.chosen],
      zone.chosenByPerson ? 'you' : 'suggestion',
    ]),
  }
}

export function plantingTable({ zones }: StripView): TableTwin {
  return {
    caption: 'Plants of each layer in each zone',
    columns: ['Zone', ...layerRows.map(({ name }) => name)],
    rows: zones.map((zone) => [
      nameOf(zone),
      ...layerRows.map(({ layer }) => {
        const lines = zone.planting.filter((line) => line.layer === layer)
        if (lines.length === 0) return 'none'
        return `${amountWords(lines)} (${lines.map(({ latin }) => latin).join(', ')})`
      }),
    ]),
  }
}

export function hoursTable({ zones, hoursAvailable }: StripView): TableTwin {
  return {
    caption: 'Hours of care in an established year',
    columns: ['Zone', 'As proposed', 'Added by the slope', 'As mown grass'],
    rows: zones.map((zone) => [
      nameOf(zone),
      hours(zone.care.hours),
      hours(zone.care.slopeHours),
      zone.care.mownHours === undefined
        ? `not mown: ${zone.care.mownRefusal ?? 'refused'}`
        : hours(zone.care.mownHours),
    ]),
    ...(hoursAvailable !== undefined && { note: `You have ${hours(hoursAvailable)} a year.` }),
  }
}

export function passingTable({ zones }: StripView): TableTwin {
  return {
    caption: 'Water passing in a usual year',
    columns: [
      'Zone',
      'Comes in over the surface',
      'Leaves over the surface',
      'Comes in through the soil',
      'Leaves through the soil',
    ],
    rows: zones.map(({ passing, ...zone }) => [
      `${zone.letter} ${zone.name}`,
      cubicMetres(passing.overInM3),
      cubicMetres(passing.overOutM3),
      cubicMetres(passing.throughInM3),
      cubicMetres(passing.throughOutM3),
    ]),
  }
}

export function soilTable({ zones }: StripView): TableTwin {
  return {
    caption: 'Soil of each zone',
    columns: ['Zone', 'Texture', 'Depth', 'Stones', 'Holds for plants'],
    rows: zones.map((zone) => [
      nameOf(zone),
      zone.soil.texture,
      `${zone.soil.depthM.toFixed(2)} m`,
      `${Math.round(zone.soil.stonesPercent)} %`,
      `${Math.round(zone.soil.availableMm)} mm`,
    ]),
  }
}

export function mowingTable({ zones }: StripView): TableTwin {
  return {
    caption: 'What may be mown',
    columns: ['Zone', 'Verdict', 'Steep part'],
    rows: zones.map((zone) => [nameOf(zone), verdictWords[zone.mowing], degrees(zone.slopeDegSteep)]),
  }
}
