import { centroid, cutLine, type PlanPoint, type Ring } from '#core/geometry'
import type { Outcome } from '#core/units'
import type { Plan } from '#plan'
import { gone, refused } from './refused'
import { changedAt, freeId, without, withSurvey, type Survey } from './with-survey'

/** Where a section is cut. */
export interface Cut {
  readonly from: PlanPoint
  readonly to: PlanPoint
}

type Section = NonNullable<Survey['sections']>[number]

/** Sections shorter than this show nothing [m]. */
const SHORTEST_M = 0.5

/** Names after A, which is the section drawn large. */
const LETTERS = 'BCDEFGHIJKLMNOPQRSTUVWXYZ'

/** A line across the plot through its middle, square to another: where a further section is first put. */
export function acrossFrom(boundary: Ring, { from, to }: Cut): Cut {
  const middle = centroid(boundary)
  const bearingDeg = (Math.atan2(to.eastM - from.eastM, to.northM - from.northM) * 180) / Math.PI + 90
  const spans = cutLine(boundary, middle, bearingDeg)
  const span = spans.find(({ fromM, toM }) => fromM <= 0 && toM >= 0) ?? spans[0] ?? { fromM: -1, toM: 1 }
  const along = (metres: number) => ({
    eastM: centimetres(middle.eastM + metres * Math.sin((bearingDeg * Math.PI) / 180)),
    northM: centimetres(middle.northM + metres * Math.cos((bearingDeg * Math.PI) / 180)),
  })
  return { from: along(span.fromM), to: along(span.toM) }
}

/** The plan with one more section, named with the next free letter. */
export function addSection(plan: Plan, cut: Cut): Outcome<Plan> {
  const sections = plan.survey.sections ?? []
  const name = [...LETTERS].find((letter) => !sections.some((each) => each.name === letter))
  if (!name) return refused('sections', 'All letters are taken.', 'Take a section out first.')
  const section = { id: freeId(sections, 'section'), name, ...ends(cut) }
  return tooShort(name, cut) ?? withSurvey(plan, { sections: [...sections, section] })
}

/** The plan with a section renamed or moved. */
export function setSection(plan: Plan, id: string, change: Partial<Section>): Outcome<Plan> {
  return onSection(plan, id, (sections, at, before) => {
    const section = { ...before, ...change }
    return tooShort(section.name, section) ?? withSurvey(plan, { sections: changedAt(sections, at, section) })
  })
}

/** The plan without a section. */
export function removeSection(plan: Plan, id: string): Outcome<Plan> {
  return onSection(plan, id, (sections, at) => withSurvey(plan, { sections: without(sections, at) }))
}

/** The plan with the section drawn large moved; down the fall through the middle when undefined. */
export function setLargeSection(plan: Plan, cut: Cut | undefined): Outcome<Plan> {
  if (!cut) return withSurvey(plan, { sectionLine: undefined })
  return tooShort('A', cut) ?? withSurvey(plan, { sectionLine: ends(cut) })
}

/** The plan with a section drawn large. The line drawn large before takes its place in the list, if it was drawn. */
export function drawLarge(plan: Plan, id: string): Outcome<Plan> {
  return onSection(plan, id, (sections, at, section) => {
    const before = plan.survey.sectionLine
    return withSurvey(plan, {
      sectionLine: ends(section),
      sections: before ? changedAt(sections, at, { ...section, ...before }) : without(sections, at),
    })
  })
}

function onSection(
  plan: Plan,
  id: string,
  change: (sections: readonly Section[], at: number, section: Section) => Outcome<Plan>,
): Outcome<Plan> {
  const sections = plan.survey.sections ?? []
  const at = sections.findIndex((each) => each.id === id)
  const section = sections[at]
  return section ? change(sections, at, section) : gone('section')
}

function tooShort(name: string, { from, to }: Cut): Outcome<never> | undefined {
  const lengthM = Math.hypot(to.eastM - from.eastM, to.northM - from.northM)
  return lengthM < SHORTEST_M
    ? refused(
        `section ${name}`,
        `It would be ${lengthM.toFixed(2)} m long.`,
        `Put its ends at least ${SHORTEST_M} m apart.`,
      )
    : undefined
}

const ends = ({ from, to }: Cut) => ({ from: place(from), to: place(to) })
const place = ({ eastM, northM }: PlanPoint) => ({ eastM, northM })
const centimetres = (metres: number): number => Math.round(metres * 100) / 100
