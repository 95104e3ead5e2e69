import type { Outcome } from '#core/units'
import type { Obstacle, Plan } from '#plan'
import { setThing } from './things'

/** A usual size, offered in words and figures where nobody has measured; own judgement. */
export interface UsualSize {
  readonly text: string
  readonly heightM: number
  readonly ridgeM?: number
}

const houses: readonly UsualSize[] = [
  { text: 'one storey', heightM: 2.6, ridgeM: 5 },
  { text: 'two storeys', heightM: 5.2, ridgeM: 8 },
  { text: 'three storeys', heightM: 7.8, ridgeM: 10.5 },
]

const sizes: Readonly<Partial<Record<Obstacle['kind'], readonly UsualSize[]>>> = {
  house: houses,
  building: [{ text: 'garden shed', heightM: 2, ridgeM: 2.5 }, ...houses],
  wall: [{ text: 'garden wall', heightM: 1.8 }],
  fence: [
    { text: 'low fence', heightM: 1 },
    { text: 'closed fence', heightM: 1.8 },
  ],
  hedge: [
    { text: 'clipped hedge', heightM: 1.8 },
    { text: 'tall hedge', heightM: 3 },
  ],
  tree: [
    { text: 'small garden tree', heightM: 5 },
    { text: 'middling tree', heightM: 10 },
    { text: 'large tree', heightM: 18 },
  ],
}

/** Kept with the thing until it is measured. */
export const USUAL_NOTE = 'Its height is a usual one, not measured.'

/** Sizes to choose from; none for what has no height. */
export const usualSizes = ({ kind }: Pick<Obstacle, 'kind'>): readonly UsualSize[] => sizes[kind] ?? []

/** The plan with a usual size taken, and a note that it was not measured. */
export function takeUsualSize(plan: Plan, id: string, { heightM, ridgeM }: UsualSize): Outcome<Plan> {
  const note = plan.survey.obstacles.find((each) => each.id === id)?.note
  return setThing(plan, id, { heightM, ridgeM, note: note ?? USUAL_NOTE })
}

/** The plan with a height as it was measured. */
export function setHeight(plan: Plan, id: string, heightM: number | undefined): Outcome<Plan> {
  const note = plan.survey.obstacles.find((each) => each.id === id)?.note
  return setThing(plan, id, { heightM, note: note === USUAL_NOTE ? undefined : note })
}
