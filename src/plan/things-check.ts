import type { Problem } from '#core/units'
import type { Obstacle } from './plan-survey.schema'
import type { Plan } from './plan.schema'
import { trialThings } from './trial-things'
import { twice } from './used-twice'

/** Heights of things that cannot be, far hills told twice, and trials of things that are not there. */
export function thingsProblems({ survey, trials = [] }: Plan): Problem[] {
  return [
    ...survey.obstacles.flatMap((thing, row) =>
      heightFaults(thing, `plan › survey › obstacles, row ${row + 1}`),
    ),
    ...directionsTwice(survey.skyline ?? []),
    ...twice(trials, 'trials', 'trial'),
    ...trials.flatMap((trial, row) =>
      trialProblems(trial, survey.obstacles, `plan › trials, row ${row + 1}`),
    ),
  ]
}

const metres = (lengthM: number): string => `${Number(lengthM.toFixed(2))} m`

function heightFaults({ name, heightM, ridgeM, crownBaseM }: Obstacle, where: string): Problem[] {
  if (heightM === undefined) return []
  const faults: Problem[] = []
  if (crownBaseM !== undefined && heightM > 0 && crownBaseM >= heightM)
    faults.push({
      where: `${where} › crownBaseM`,
      what: `The lowest branches of ${name} at ${metres(crownBaseM)} are not below its top at ${metres(heightM)}.`,
      mend: 'Give the height of its lowest branches above the ground, less than that of the tree.',
    })
  if (ridgeM !== undefined && ridgeM < heightM)
    faults.push({
      where: `${where} › ridgeM`,
      what: `The ridge of ${name} at ${metres(ridgeM)} is below its eaves at ${metres(heightM)}.`,
      mend: 'Give both above the ground, the ridge at least as high as the eaves: are they swapped?',
    })
  return faults
}

type FarPoints = NonNullable<Plan['survey']['skyline']>

function directionsTwice(skyline: FarPoints): Problem[] {
  const seen = new Set<number>()
  return skyline.flatMap(({ azimuthDeg }, row) => {
    const again = seen.has(azimuthDeg)
    seen.add(azimuthDeg)
    return again
      ? [
          {
            where: `plan › survey › skyline, row ${row + 1}`,
            what: `The direction ${azimuthDeg}° is given twice.`,
            mend: 'Keep one height of the skyline for each direction.',
          },
        ]
      : []
  })
}

type Trial = NonNullable<Plan['trials']>[number]

function trialProblems(trial: Trial, things: readonly Obstacle[], where: string): Problem[] {
  return trial.changes.flatMap((change, row) => {
    const place = `${where} › changes, row ${row + 1}`
    const thing = things.find(({ id }) => id === change.thingId)
    if (thing) return trialThings([thing], [change]).flatMap((after) => heightFaults(after, place))
    const known = things.map(({ id }) => id)
    return [
      {
        where: `${place} › thingId`,
        what: `${trial.name}: there is no thing “${change.thingId}” to change.`,
        mend: `Take the change out${known.length > 0 ? `, or use one of ${known.join(', ')}` : ''}.`,
      },
    ]
  })
}
