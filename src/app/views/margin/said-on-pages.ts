import type { SurveyMethod } from '#core/booking'
import type { Findings, Plan } from '#plan'
import type { DeskPage } from '../../stores/sheet'

type Survey = Plan['survey']

const kinds: Readonly<Record<Survey['ground']['kind'], string>> = {
  bank: 'a bank in four numbers',
  profile: 'a profile',
  levels: 'spot levels',
  grid: 'a grid',
}

/** What every page of the field book holds, in a few words. */
export function saidOnPages(
  { survey, ...plan }: Plan,
  findings: Findings,
  methods: readonly SurveyMethod[],
): Readonly<Record<DeskPage, string>> {
  return {
    survey: `${kinds[survey.ground.kind]}${countOf(survey.ground)}; cells of ${findings.surface.frame.cellM} m`,
    lines: linesIn(survey),
    outline: outlineOf(survey),
    sections: `A${(survey.sections ?? []).map(({ name }) => `, ${name}`).join('')}`,
    around: around(survey),
    far: farWords(survey),
    trials: plan.trials?.length ? plan.trials.map(({ name }) => name).join('; ') : 'none',
    accuracy: accuracyOf(survey, methods),
    backdrop: survey.backdrop?.name ?? 'none',
    soil: plan.soil.map(({ name, assumed }) => (assumed ? `${name}, assumed` : name)).join('; '),
    climate:
      plan.climate.from === 'place' ? `of ${plan.climate.place ?? 'a place'}` : 'your own twelve months',
    site: siteOf(plan.site),
    brief: `${plan.brief.machines.length} machines; ${plan.brief.hoursPerYear === undefined ? 'hours not said' : `${plan.brief.hoursPerYear} h a year`}`,
    zones: `${findings.zoning.zones.length}, ${findings.zoning.suggested ? 'suggested' : 'drawn by you'}`,
  }
}

function countOf(ground: Survey['ground']): string {
  if (ground.kind === 'profile') return `, ${ground.stations.length} stations`
  return ground.kind === 'levels' ? `, ${ground.points.length} of them` : ''
}

function linesIn({ ground }: Survey): string {
  const count = ground.kind === 'levels' ? (ground.breaklines ?? []).length : 0
  return count === 0 ? 'none' : String(count)
}

const outlineOf = ({ boundary, holes = [] }: Survey): string =>
  `${boundary ? 'drawn by you' : 'the survey’s own'}${holes.length > 0 ? `; holes: ${holes.length}` : ''}`

function around({ obstacles, beyond = [], viewpoints = [] }: Survey): string {
  const marked = obstacles.length + beyond.length + viewpoints.length
  return marked === 0 ? 'nothing marked' : `${marked} marked`
}

function farWords({ skyline = [] }: Survey): string {
  if (skyline.length === 0) return 'an open horizon'
  return `${skyline.length} directions, up to ${Math.max(...skyline.map(({ angleDeg }) => angleDeg))}°`
}

function accuracyOf({ accuracy }: Survey, methods: readonly SurveyMethod[]): string {
  const method = methods.find(({ id }) => id === accuracy?.methodId)
  return method?.name ?? (accuracy?.levelSdM === undefined ? 'not said' : 'your own figures')
}

const siteOf = ({ latitudeDeg, longitudeDeg, elevationM, legalRegion }: Plan['site']): string =>
  `${latitudeDeg.toFixed(2)}°, ${longitudeDeg.toFixed(2)}°, ${Math.round(elevationM)} m; law: ${legalRegion ?? 'not said'}`
