import type { Accuracy } from '#core/accuracy'
import type { SurveyTables } from '#core/booking'
import type { CareYear } from '#core/care'
import type { MonthClimate } from '#core/climate'
import type { Caution, CoverKind, CoverTables } from '#core/cover'
import { workLimit } from '#core/cover'
import type { ShadeTables } from '#core/shade'
import type { Surface } from '#core/survey'
import type { Around, Terrain } from '#core/terrain'
import type { Twelve } from '#core/units'
import type { Zoning } from '#core/zones'
import type { Settlement, ZoneFindings } from './findings.types'
import type { Plan } from './plan.schema'
import { accuracyGaps, closeCalls } from './settle-accuracy'
import { middleOfZone } from './middle-of-zone'
import { settleAround } from './settle-around'
import { missedSections, type FurtherSection } from './further-sections'
import { changedSinceBooked } from './settle-books'
import { gapsOf } from './settle-gaps'
import { lightGaps } from './settle-light'

/** What the list of things to settle is drawn from. */
export interface ToJudge {
  readonly plan: Plan
  readonly surface: Surface
  readonly terrain: Terrain
  readonly climate: Twelve<MonthClimate>
  readonly accuracy: Accuracy
  readonly around: Around
  readonly sections: readonly FurtherSection[]
  readonly zoning: Zoning
  readonly zones: readonly ZoneFindings[]
  readonly care: CareYear
  readonly tables: CoverTables
  readonly survey: SurveyTables
  readonly shade: ShadeTables
}

/** Dangers first, then clashes, then gaps, each with its place and how to mend it. */
export function toSettle(judged: ToJudge): readonly Settlement[] {
  const around = settleAround(judged.plan, judged.terrain.section, judged.around)
  return [
    ...steepGround(judged),
    ...steepPatches(judged),
    ...closeCalls(judged).filter(({ kind }) => kind === 'danger'),
    ...around.filter(({ kind }) => kind === 'danger'),
    ...refusedChoices(judged),
    ...around.filter(({ kind }) => kind === 'clash'),
    ...lostDecisions(judged),
    ...tooManyHours(judged),
    ...emptyMixes(judged),
    ...closeCalls(judged).filter(({ kind }) => kind === 'gap'),
    ...around.filter(({ kind }) => kind === 'gap'),
    ...lightGaps(judged, judged.shade),
    ...accuracyGaps(judged.plan, judged.accuracy),
    ...missedSections(judged.plan, judged.sections),
    ...changedSinceBooked(judged.plan, judged.survey),
    ...gapsOf(judged.plan, judged.tables),
  ]
}

/** Every caution that stands somewhere on the plot, once. */
export function cautionsOf(zones: readonly ZoneFindings[]): readonly Caution[] {
  const standing = zones.flatMap(
    ({ cover }) => cover.options.find(({ kind }) => kind === cover.chosen)?.cautions ?? [],
  )
  return [...new Map(standing.map((caution) => [caution.id, caution])).values()]
}

const degrees = (angleDeg: number): string => `${Math.round(angleDeg)}°`

function steepGround({ zoning, tables }: ToJudge): Settlement[] {
  const advice = workLimit('advice', tables)
  const onFoot = workLimit('cut-on-foot', tables)
  return zoning.zones.flatMap((zone): Settlement[] => {
    if (zone.slopeDegSteep <= onFoot.value) return []
    const unstable = zone.slopeDegSteep > advice.value
    return [
      {
        id: `steep-${zone.id}`,
        kind: 'danger',
        what: `${zone.letter} is ${degrees(zone.slopeDegSteep)}: ${unstable ? 'it may slip, with or without plants' : 'too steep to cut on foot'}.`,
        mend: unstable ? advice.because : onFoot.because,
        zoneId: zone.id,
        atM: middleOfZone(zone),
        source: unstable ? advice.source : onFoot.source,
      },
    ]
  })
}

/** Steep stretches that a zone's nine tenths hide, where the section crosses them. */
function steepPatches({ terrain, zoning, tables }: ToJudge): Settlement[] {
  const onFoot = workLimit('cut-on-foot', tables)
  const steepest = terrain.section.stations.reduce((most, one) => (one.slopeDeg > most.slopeDeg ? one : most))
  const index = zoning.zoneOfCell[steepest.cell] ?? -1
  const zone = zoning.zones[index]
  if (!zone || steepest.slopeDeg <= onFoot.value || zone.slopeDegSteep > onFoot.value) return []
  return [
    {
      id: 'steep-patch',
      kind: 'danger',
      what: `${zone.letter} has a patch of ${degrees(steepest.slopeDeg)}, ${steepest.distanceM.toFixed(1)} m from the top.`,
      mend: onFoot.because,
      zoneId: zone.id,
      atM: steepest.distanceM,
      source: onFoot.source,
    },
  ]
}

/** How covers are called in a sentence. */
const coverNames: Readonly<Record<CoverKind, string>> = {
  mown: 'mown grass',
  meadow: 'meadow',
  'ground-cover': 'ground cover',
  shrubs: 'shrubs',
  trees: 'trees',
  terrace: 'a terrace',
  leave: 'left alone',
}

function refusedChoices({ zoning, zones }: ToJudge): Settlement[] {
  return zones.flatMap(({ zoneId, cover }): Settlement[] => {
    const option = cover.options.find(({ kind }) => kind === cover.chosen)
    const zone = zoning.zones.find(({ id }) => id === zoneId)
    if (!zone || !cover.chosenByPerson || option?.verdict !== 'refused') return []
    const refusal = option.fitness.lines.at(-1)
    return [
      {
        id: `refused-${zoneId}`,
        kind: 'danger',
        what: `You set ${zone.letter} to ${coverNames[cover.chosen]}. ${refusal?.because ?? ''}`,
        mend: `Choose ${coverNames[cover.suggested]} instead, or have a licensed person agree to it on site.`,
        zoneId,
        atM: middleOfZone(zone),
        source: refusal?.source ?? 'own-judgement',
      },
    ]
  })
}

/** Decisions about zones that are not there, as when suggested zones changed under them. */
function lostDecisions({ plan, zoning }: ToJudge): Settlement[] {
  const decided = [...plan.choices, ...plan.overrides].map(({ zoneId }) => zoneId)
  const lost = [...new Set(decided)].filter((zoneId) => !zoning.zones.some(({ id }) => id === zoneId))
  return lost.map((zoneId) => ({
    id: `lost-${zoneId}`,
    kind: 'clash',
    what: `The plan decides something for zone “${zoneId}”, which is not there.`,
    mend: 'Decide it anew for the zones as they are; the old decision stays in the plan file until then.',
    zoneId: undefined,
    atM: undefined,
    source: 'yours',
  }))
}

function tooManyHours({ plan, care }: ToJudge): Settlement[] {
  const { hoursPerYear } = plan.brief
  if (hoursPerYear === undefined || care.hoursTotal <= hoursPerYear) return []
  return [
    {
      id: 'hours',
      kind: 'clash',
      what: `Care asks for ${Math.round(care.hoursTotal)} h a year; you have ${Math.round(hoursPerYear)} h.`,
      mend: 'Turn mown ground into meadow, or plant less that wants weeding. “What may I mow?” compares them.',
      zoneId: undefined,
      atM: undefined,
      source: 'yours',
    },
  ]
}

function emptyMixes({ zoning, zones }: ToJudge): Settlement[] {
  return zones.flatMap(({ zoneId, cover, planting }): Settlement[] => {
    const zone = zoning.zones.find(({ id }) => id === zoneId)
    const unplanted = cover.chosen === 'mown' || cover.chosen === 'leave'
    if (!zone || unplanted || planting.mix.length > 0) return []
    return [
      {
        id: `no-mix-${zoneId}`,
        kind: 'clash',
        what: `No plant of the list suits ${zone.letter} as ${coverNames[cover.chosen]}.`,
        mend: planting.none ?? 'Read why each was refused, and ease what you asked for.',
        zoneId,
        atM: middleOfZone(zone),
        source: 'own-judgement',
      },
    ]
  })
}
