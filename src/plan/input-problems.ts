import { legalRegions } from '#core/plants'
import { soilProblems } from '#core/soil'
import type { Problem } from '#core/units'
import type { Plan } from './plan.schema'
import type { Tables } from './tables.types'

/** What only the tables can tell of a plan: names they do not know, and soil that makes no sense. */
export function inputProblems(plan: Plan, tables: Tables): readonly Problem[] {
  return [
    ...unknownMachines(plan, tables),
    ...unknownMethod(plan, tables),
    ...unknownRegion(plan),
    ...emptyJars(plan),
  ]
}

function unknownMachines({ brief }: Plan, tables: Tables): Problem[] {
  const known = tables.care.cover.machines.map(({ id }) => id)
  return brief.machines.flatMap(({ id }, index) =>
    known.includes(id)
      ? []
      : [
          {
            where: `plan › brief › machines, row ${index + 1}`,
            what: `There is no machine “${id}” in the table.`,
            mend: `Use one of ${known.join(', ')}.`,
          },
        ],
  )
}

function unknownMethod({ survey }: Plan, tables: Tables): Problem[] {
  const methodId = survey.accuracy?.methodId
  const known = tables.survey.methods.map(({ id }) => id)
  if (methodId === undefined || known.includes(methodId)) return []
  return [
    {
      where: 'plan › survey › accuracy › methodId',
      what: `There is no way of measuring “${methodId}” in the table.`,
      mend: `Leave it out, or use one of ${known.join(', ')}.`,
    },
  ]
}

function unknownRegion({ site }: Plan): Problem[] {
  return site.legalRegion === undefined || legalRegions.includes(site.legalRegion)
    ? []
    : [
        {
          where: 'plan › site › legalRegion',
          what: `The plant laws of “${site.legalRegion}” are not in the table.`,
          mend: `Leave it out, or use one of ${legalRegions.join(', ')}.`,
        },
      ]
}

/** A jar without layers gives no texture at all; lesser doubts about soil stand in the list of things to settle. */
function emptyJars({ soil }: Plan): Problem[] {
  return soil.flatMap((sample, index) => {
    const { texture } = sample
    const empty = texture.by === 'jar' && texture.sandMm + texture.siltMm + texture.clayMm === 0
    return empty ? soilProblems(sample, `plan › soil, row ${index + 1}`) : []
  })
}
