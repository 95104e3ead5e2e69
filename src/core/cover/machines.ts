import { closeCall } from './close-call'
import type { CoverBrief, CoverFacts, MachineVerdict } from './cover.types'
import type { CoverTables, Machine } from './cover.schema'

/** A machine of the plan with the row it stands for. */
export interface JudgedMachine {
  readonly machine: Machine
  readonly verdict: MachineVerdict
}

/**
 * Judges each machine of the plan on one zone: it must cope with the steep figure, not with the mean. The maker's plate
 * counts where the person gave it; otherwise the table's cautious figure. With no machine named, those worked on foot
 * are judged, since every household can come by one. No plate raises the limit of a hand tool: it is the person who slips.
 *
 * @param zone - the zone's facts
 * @param machines - what mows here, from the brief
 * @param tables - machines and limits
 * @returns one verdict a machine, in the brief's order
 * @throws RangeError when a machine is not in the table or a plate figure is outside 0 to 45°
 */
export function judgeMachines(
  zone: CoverFacts,
  machines: CoverBrief['machines'],
  tables: CoverTables,
): JudgedMachine[] {
  const named = machines.length > 0 ? machines : onFootKinds(tables)
  return named.map(({ id, limitDeg }) => {
    const machine = machineOf(id, tables)
    return { machine, verdict: verdictOn(zone, machine, limitDeg) }
  })
}

/**
 * The table row of a machine.
 *
 * @param id - key of data/care/machines.json
 * @param tables - machines and limits
 * @returns the row
 * @throws RangeError when there is no such row
 */
export function machineOf(id: string, tables: CoverTables): Machine {
  const machine = tables.machines.find((row) => row.id === id)
  if (!machine)
    throw new RangeError(
      `machineOf: machine must be one of ${tables.machines.map((row) => row.id).join(', ')}, got ${id}`,
    )
  return machine
}

function onFootKinds(tables: CoverTables): CoverBrief['machines'] {
  return tables.machines
    .filter(({ guide }) => guide === 'walked' || guide === 'hand')
    .map(({ id }) => ({ id }))
}

function verdictOn(zone: CoverFacts, machine: Machine, plateDeg: number | undefined): MachineVerdict {
  const limitDeg = limitOf(machine, plateDeg)
  if (!(limitDeg >= 0 && limitDeg <= MAX_PLATE_DEG))
    throw new RangeError(`judgeMachines: limitDeg must be 0 to ${MAX_PLATE_DEG}, got ${limitDeg}`)
  const allowed = zone.slopeDegSteep <= limitDeg
  return {
    machineId: machine.id,
    name: machine.name,
    limitDeg,
    allowed,
    because: `${comparison(zone, machine, limitDeg)} ${whose(machine, plateDeg)}`,
    source: plateDeg === undefined ? machine.source : 'yours',
    closeCall: closeCall(zone, limitDeg, `of the ${machine.name.toLowerCase()}`),
  }
}

// A hand tool's limit is the person's footing, which no plate can raise.
function limitOf(machine: Machine, plateDeg: number | undefined): number {
  if (plateDeg === undefined) return machine.limitDeg
  return machine.guide === 'hand' ? Math.min(plateDeg, machine.limitDeg) : plateDeg
}

/** Steepest figure a plate may state [°], as in the plan's schema. */
const MAX_PLATE_DEG = 45

const degrees = (valueDeg: number): string => `${valueDeg.toFixed(1).replace(/\.0$/, '')}°`

function comparison(zone: CoverFacts, machine: Machine, limitDeg: number): string {
  const where = `zone ${zone.letter} is ${finer(zone.slopeDegSteep, limitDeg)} in its steep part`
  return zone.slopeDegSteep <= limitDeg
    ? `${machine.name}: limit ${degrees(limitDeg)}, ${where}.`
    : `${machine.name}: limit ${degrees(limitDeg)}, but ${where}.`
}

// Shows as many digits as keep the two figures apart.
function finer(valueDeg: number, limitDeg: number): string {
  return degrees(valueDeg) === degrees(limitDeg) && valueDeg !== limitDeg
    ? `${valueDeg.toFixed(3)}°`
    : degrees(valueDeg)
}

function whose(machine: Machine, plateDeg: number | undefined): string {
  if (plateDeg === undefined) return machine.limitBecause
  if (plateDeg > machine.limitDeg && machine.guide === 'hand') return machine.limitBecause
  return plateDeg > machine.limitDeg
    ? `The limit is from your plate; ${degrees(machine.limitDeg)} is the usual caution, so read the manual again.`
    : 'The limit is from your plate.'
}
