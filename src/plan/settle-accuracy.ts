import type { Accuracy } from '#core/accuracy'
import { closeCall, workLimit, type CoverTables, type MachineVerdict } from '#core/cover'
import type { ZoneFacts, Zoning } from '#core/zones'
import type { Settlement, ZoneFindings } from './findings.types'
import type { Plan } from './plan.schema'
import { middleOfZone } from './middle-of-zone'

/** What to do about a figure whose error reaches over a limit. */
const MEASURE_AGAIN = 'Measure this part again with a level before anyone works or mows there.'
const DRAW_LINES =
  ' Draw tops and toes of banks as lines: the ground between the levels is then better known.'
const MEASURE_TO_ALLOW = 'It stays refused. A measurement with a level may show that it is less steep.'

/** Zones, what may stand on them, and the limits. */
interface Judged {
  readonly plan: Plan
  readonly zoning: Zoning
  readonly zones: readonly ZoneFindings[]
  readonly tables: CoverTables
}

/** Zones whose slope could lie on the other side of a limit: a danger where it may be steeper than is allowed. */
export function closeCalls({ plan, zoning, zones, tables }: Judged): readonly Settlement[] {
  return zones.flatMap((found): Settlement[] => {
    const zone = zoning.zones.find(({ id }) => id === found.zoneId)
    if (!zone) return []
    const figure = { ...zone, slopeSdDegSteep: found.slopeError.steepDeg }
    const work = (['cut-on-foot', 'advice'] as const).flatMap((id): Call[] => {
      const { value, source } = workLimit(id, tables)
      return callOf(closeCall(figure, value, workWords[id]), zone.slopeDegSteep <= value, source)
    })
    const calls = [...standing(found), ...work]
    const call = calls.find(({ allowed }) => allowed) ?? calls[0]
    return call ? [settlementOf(call, zone, hasNoLines(plan))] : []
  })
}

const workWords = {
  'cut-on-foot': 'for cutting on foot',
  advice: 'above which a bank may slip',
} as const

interface Call {
  readonly what: string
  /** The figure lies within the limit, and may not do so in truth. */
  readonly allowed: boolean
  readonly source: string
}

function callOf(what: string | undefined, allowed: boolean, source: string): Call[] {
  return what === undefined ? [] : [{ what, allowed, source }]
}

// What stands on the zone, and the machines that would mow it.
function standing({ cover }: ZoneFindings): Call[] {
  const option = cover.options.find(({ kind }) => kind === cover.chosen)
  const own = callOf(option?.closeCall, option?.verdict !== 'refused', 'own-judgement')
  const cut = cover.chosen === 'mown' || cover.chosen === 'meadow'
  const mowers: readonly MachineVerdict[] = cut ? cover.machines : []
  return [...mowers.flatMap((one) => callOf(one.closeCall, one.allowed, one.source)), ...own]
}

// Banks measured by rows of points read as rough ground until their tops and toes are drawn.
function hasNoLines({ survey: { ground } }: Plan): boolean {
  return ground.kind === 'levels' && (ground.breaklines ?? []).length === 0
}

function settlementOf({ what, allowed, source }: Call, zone: ZoneFacts, linesMayHelp: boolean): Settlement {
  return {
    id: `close-${zone.id}`,
    kind: allowed ? 'danger' : 'gap',
    what,
    mend: `${allowed ? MEASURE_AGAIN : MEASURE_TO_ALLOW}${linesMayHelp ? DRAW_LINES : ''}`,
    zoneId: zone.id,
    atM: middleOfZone(zone),
    source,
  }
}

/** What is not known of how well the ground was measured. */
export function accuracyGaps(plan: Plan, { from }: Accuracy): readonly Settlement[] {
  const rows: { readonly id: string; readonly what: string; readonly mend: string }[] = []
  if (from.assumed)
    rows.push({
      id: 'accuracy-assumed',
      what: `Nobody said how the ground was measured; levels are taken to be good to ${centimetres(from.levelSdM)}.`,
      mend: 'Say what it was measured with, under “What is this ground?”.',
    })
  if (from.roughnessM === undefined)
    rows.push({
      id: 'roughness-unknown',
      what: `${whyUnknown[plan.survey.ground.kind]} The errors given for slopes count the measuring alone.`,
      mend: 'Walk it with an eye for humps and steps, and measure more points where there are any.',
    })
  return rows.map((row) => ({
    ...row,
    kind: 'gap',
    zoneId: undefined,
    atM: undefined,
    source: 'own-judgement',
  }))
}

const centimetres = (lengthM: number): string => `${Number((lengthM * 100).toPrecision(2))} cm`

const whyUnknown: Readonly<Record<Plan['survey']['ground']['kind'], string>> = {
  bank: 'Four numbers do not tell how even the bank is between foot and top.',
  profile: 'The stations are too few, or set too much by eye, to tell how even the ground is between them.',
  levels: 'The levels are too few to tell how even the ground is between them.',
  grid: 'The grid is too small to tell how even the ground is.',
}
