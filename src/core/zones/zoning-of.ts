import { eachMonth } from '#core/units'
import { cellsOfDrawn } from './drawn-cells'
import { bandLimits, LEAST_FALL_M, type BandLimit } from './limits'
import { nameZones } from './name-zones'
import { suggestParts } from './suggest-parts'
import { traceZones } from './trace-zones'
import { factsOfZones, type NamedZone } from './zone-facts'
import { zoneMeans } from './zone-means'
import type { Zone } from './zone.schema'
import type { ZoneFacts, Zoning } from './zone.types'
import type { ZoningInput } from './zoning-input.types'

/** A zone with its cells, before it has a letter. */
interface RawZone {
  /** The drawn zone; undefined for one that is suggested or for the rest of the plot. */
  readonly drawn: Zone | undefined
  readonly index: number
}

/**
 * Divides the plot into zones and measures them. Without drawn zones, or with locked ones only, the rest of the plot
 * is divided by position, gradient and sun. Otherwise each cell goes to the first drawn zone that holds its centre,
 * to the nearest within two cells, or to a zone named "Rest". A drawn zone without a cell is left out:
 * `zoneProblems` tells the person so.
 *
 * @param input - ground, terrain and sun, one value per cell
 * @param drawn - zones drawn by the person; may be empty
 * @returns zones from the top down, lettered from A, and the zone of each cell
 * @throws RangeError when a column of values does not fit the frame, or the plot has no cell
 */
export function zoningOf(input: ZoningInput, drawn: readonly Zone[]): Zoning {
  checkSizes(input)
  const { surface, terrain } = input
  const bands = bandLimits(surface.fallM, terrain.section.lengthM)
  const suggest = drawn.every((zone) => zone.locked === true)
  const first = cellsOfDrawn(surface.share, surface.frame, drawn)
  const cells = suggest ? withSuggested(input, first, drawn.length, bands) : first
  const ordered = fromTheTop(input, cells, drawn)
  const zones = factsOfZones(input, ordered.zoneOfCell, outlined(input, ordered), bands)
  return {
    zones: withNames(zones, ordered, surface.fallM < LEAST_FALL_M),
    zoneOfCell: ordered.zoneOfCell,
    suggested: suggest && ordered.zones.some((zone) => !zone.drawn),
  }
}

// Cells of no drawn zone, divided; numbered on from the drawn zones.
function withSuggested(
  input: ZoningInput,
  first: Int16Array,
  from: number,
  bands: readonly BandLimit[],
): Int16Array {
  const share = input.surface.share.map((part, cell) => (first[cell] === from ? part : 0))
  const { partOfCell } = suggestParts(input, bands, share)
  return first.map((zone, cell) => (zone === from ? from + (partOfCell[cell] ?? 0) : zone))
}

interface OrderedZones {
  readonly zones: readonly RawZone[]
  readonly zoneOfCell: Int16Array
}

// Zones that have cells, the highest first.
function fromTheTop(input: ZoningInput, cells: Int16Array, drawn: readonly Zone[]): OrderedZones {
  const found = [...new Set(cells)].filter((zone) => zone >= 0)
  const close = cells.map((zone) => found.indexOf(zone))
  const levelM = zoneMeans(close, found.length, input.surface.share, input.surface.levelM)
  const order = found
    .map((_, at) => at)
    .sort((one, other) => (levelM[other] ?? 0) - (levelM[one] ?? 0) || one - other)
  return {
    zones: order.map((at, index) => ({ drawn: drawn[found[at] ?? -1], index })),
    zoneOfCell: close.map((zone) => order.indexOf(zone)),
  }
}

// Letters, ids and outlines; names of zones that nobody drew are found once they are measured.
function outlined({ surface }: ZoningInput, { zones, zoneOfCell }: OrderedZones): NamedZone[] {
  const rings = traceZones(zoneOfCell, zones.length, surface.frame, surface.boundary)
  const taken = new Set(zones.flatMap(({ drawn }) => (drawn ? [drawn.id] : [])))
  return zones.map(({ drawn, index }) => {
    const letter = letterOf(index)
    return drawn
      ? { id: drawn.id, name: drawn.name, ring: drawn.ring, letter }
      : { id: freeId(letter, taken), name: '', ring: rings[index] ?? [], letter }
  })
}

// Names for zones that the person did not draw; "Rest" where only a remainder is left.
function withNames(
  facts: readonly ZoneFacts[],
  { zones }: OrderedZones,
  level: boolean,
): readonly ZoneFacts[] {
  const drawnNames = new Set(zones.flatMap(({ drawn }) => (drawn ? [drawn.name] : [])))
  const rest = zones.some(({ drawn }) => drawn && drawn.locked !== true)
  const plain = nameZones(facts, level)
  return facts.map((zone, index) =>
    zones[index]?.drawn
      ? zone
      : { ...zone, name: freeName(rest ? 'Rest' : (plain[index] ?? zone.letter), drawnNames) },
  )
}

// Letters of the alphabet, doubled after Z.
function letterOf(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26))
  return letter.repeat(1 + Math.floor(index / 26))
}

function freeId(letter: string, taken: ReadonlySet<string>): string {
  const id = `zone-${letter.toLowerCase()}`
  return taken.has(id) ? `${id}-suggested` : id
}

function freeName(name: string, taken: ReadonlySet<string>): string {
  let free = name
  for (let count = 2; taken.has(free); count++) free = `${name} ${count}`
  return free
}

function checkSizes({ surface, terrain, sunHours, sunRatio }: ZoningInput): void {
  const cells = surface.frame.columns * surface.frame.rows
  const sizes = [
    surface.share.length,
    terrain.slopeDeg.length,
    terrain.position.length,
    ...eachMonth((month) => sunHours[month].length),
    ...eachMonth((month) => sunRatio[month].length),
  ]
  for (const size of sizes)
    if (size !== cells) throw new RangeError(`zoningOf: every column must hold ${cells} cells, got ${size}`)
  if (!surface.share.some((share) => share > 0)) throw new RangeError('zoningOf: the plot has no cell, got 0')
}
