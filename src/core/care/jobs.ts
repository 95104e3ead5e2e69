import { machineOf, workLimit, type CoverKind, type Machine } from '#core/cover'
import type { CareBrief, CareFacts, Job } from './care.types'
import type { CareTables, CareWindows, Operation } from './care.schema'
import type { Seasons } from './seasons'
import { roundTripPenalty } from './slope-effort'
import { turnsOf, type Turn } from './timing'

/** A zone with all that its jobs depend on. */
export interface CareCase {
  readonly zone: CareFacts
  readonly brief: CareBrief
  readonly tables: CareTables
  readonly seasons: Seasons
}

/**
 * All jobs of a zone under one cover, first-year jobs included.
 *
 * @param cover - the cover looked after
 * @param given - zone, climate, tables and seasons
 * @param only - which operations count; all when left out
 * @returns jobs in calendar order
 * @throws RangeError when no machine is allowed to do a job of this cover
 */
export function jobsOf(
  cover: CoverKind,
  given: CareCase,
  only: (row: Operation) => boolean = () => true,
): Job[] {
  const { zone, tables, seasons, brief } = given
  return tables.operations
    .filter((row) => row.covers.includes(cover) && only(row) && applies(row, zone))
    .flatMap((row) => turnsOf(row, seasons, brief).map((turn) => jobOf(row, turn, given)))
    .sort((one, other) => one.month - other.month || one.fromDay - other.fromDay)
}

function applies(row: Operation, zone: CareFacts): boolean {
  if (row.untilSteepDeg !== undefined && zone.slopeDegSteep > row.untilSteepDeg) return false
  if (row.basis === 'plants') return plantsOf(row, zone) > 0
  return row.timing.kind !== 'dry-weeks' || plantsOf(row, zone) > 0
}

function jobOf(row: Operation, turn: Turn, given: CareCase): Job {
  const { zone } = given
  const machine = machineFor(row, given)
  const flatH = Math.max(row.minimumH, amountOf(row, turn, zone) / outputOf(row, machine)) * turn.times
  const effort = effortOf(row, machine, given.tables.windows)
  const slopeHours = flatH * effort.share * (roundTripPenalty(zone.slopeDegMean) - 1)
  return {
    id: `${zone.zoneId}/${row.id}/${turn.key}`,
    zoneId: zone.zoneId,
    operation: row.id,
    mark: row.mark,
    what: row.what,
    how: machine ? `${row.how} ${withMachine(machine, given)}` : row.how,
    month: turn.month,
    fromDay: turn.fromDay,
    toDay: turn.toDay,
    times: turn.times,
    hours: flatH + slopeHours,
    slopeHours,
    firstYearOnly: row.firstYearOnly,
    because: turn.note ? `${row.because} ${turn.note}` : row.because,
    source: row.source,
  }
}

/** Ground around each plant that is watered [m²]; our own figure, said in the job. */
const WATERED_M2_A_PLANT = 1

function amountOf(row: Operation, turn: Turn, zone: CareFacts): number {
  const counted =
    { area: zone.slopeAreaM2, edge: zone.edgeM, plants: plantsOf(row, zone) }[row.basis] * row.share
  if (row.timing.kind !== 'dry-weeks') return counted
  const wateredM2 = row.basis === 'plants' ? counted * WATERED_M2_A_PLANT : counted
  return Math.min(wateredM2, zone.slopeAreaM2) * turn.litresPerM2
}

type Layer = keyof CareFacts['plants']

const everyLayer: readonly Layer[] = ['ground', 'shrub', 'tree']

function plantsOf(row: Operation, { plants }: CareFacts): number {
  const counted: readonly Layer[] = row.layers ?? everyLayer
  return counted.reduce((sum, layer) => sum + plants[layer], 0)
}

function outputOf(row: Operation, machine: Machine | undefined): number {
  const perHour =
    row.work === 'clear' ? (machine?.clearsM2PerH ?? row.perHour) : (row.perHour ?? machine?.outputM2PerH)
  if (perHour === undefined) throw new RangeError(`careYear: ${row.id} must have an output, got none`)
  return perHour
}

/** The table's machine for cutting on foot when the plan names none that may. */
const ON_FOOT = 'trimmer'

function machineFor(row: Operation, given: CareCase): Machine | undefined {
  if (row.work === 'clear') return fastestOf(ownMachines(given), ({ clearsM2PerH }) => clearsM2PerH ?? 0)
  if (row.work !== 'mow' && row.work !== 'cut') return undefined
  const sward = row.work === 'mow' ? 'short' : 'tall'
  const fastest = fastestOf(ownMachines(given), (machine) =>
    machine.sward.includes(sward) ? machine.outputM2PerH : 0,
  )
  if (fastest) return fastest
  if (row.work === 'mow' || given.zone.slopeDegSteep > workLimit('cut-on-foot', given.tables.cover).value)
    throw new RangeError(
      `careYear: ${row.id} must have a machine allowed at ${given.zone.slopeDegSteep}°, got none`,
    )
  return machineOf(ON_FOOT, given.tables.cover)
}

// A machine that cannot do the work has no pace at it.
function fastestOf(machines: readonly Machine[], pace: (machine: Machine) => number): Machine | undefined {
  const able = machines.filter((machine) => pace(machine) > 0)
  return able.sort((one, other) => pace(other) - pace(one))[0]
}

const ownMachines = ({ zone, tables }: CareCase): Machine[] =>
  zone.cover.machines
    .filter(({ allowed }) => allowed)
    .map(({ machineId }) => machineOf(machineId, tables.cover))

/** How each direction of travel is said. */
const ways: Readonly<Record<Machine['travel'], string>> = {
  across: 'across the slope',
  'up-and-down': 'straight up and down, turning on level ground only',
  any: 'inside its set area',
}

function withMachine(machine: Machine, given: CareCase): string {
  const own = given.zone.cover.machines.some(({ machineId }) => machineId === machine.id)
  return `${machine.name}, ${ways[machine.travel]}${own ? '' : '; none is among your machines, so borrow one'}.`
}

type EffortId = CareWindows['effort'][number]['id']

function effortOf(
  row: Operation,
  machine: Machine | undefined,
  windows: CareWindows,
): CareWindows['effort'][number] {
  const id = machine ? guideEffort[machine.guide] : (workEffort[row.work] ?? 'hand')
  const found = windows.effort.find((effort) => effort.id === id)
  if (!found) throw new RangeError(`careYear: data/care/windows.json must hold effort ${id}, got none`)
  return found
}

/** How work without a machine feels the slope; anything else is hand work. */
const workEffort: Partial<Record<Operation['work'], EffortId>> = { walk: 'walked', level: 'level' }

/** A person swinging a hand tool over a whole bank walks it. */
const guideEffort: Readonly<Record<Machine['guide'], EffortId>> = {
  ridden: 'ridden',
  walked: 'walked',
  robot: 'robot',
  remote: 'remote',
  hand: 'walked',
}
