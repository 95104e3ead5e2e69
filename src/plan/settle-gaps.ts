import type { CoverTables } from '#core/cover'
import { soilProblems } from '#core/soil'
import type { Settlement } from './findings.types'
import type { Plan } from './plan.schema'

/**
 * What is still open in a plan, each with how to mend it.
 *
 * @param plan - the plan
 * @param tables - the machines, to know which of them have a maker's plate
 * @returns one entry for each thing not said yet
 */
export function gapsOf(plan: Plan, tables: CoverTables): readonly Settlement[] {
  return [
    ...asked(gapRows, plan),
    ...unreadPlates(plan, tables),
    ...soilDoubts(plan),
    ...asked(lastRows, plan),
  ]
}

function asked(rows: readonly Gap[], plan: Plan): Settlement[] {
  return rows
    .filter(({ open }) => open(plan))
    .map(({ id, what, mend }) => ({
      id,
      kind: 'gap',
      what: typeof what === 'string' ? what : what(plan),
      mend,
      zoneId: undefined,
      atM: undefined,
      source: 'own-judgement',
    }))
}

/** Machines whose slope limit stands on a plate that nobody has read yet; hand tools have none. */
function unreadPlates({ brief }: Plan, { machines }: CoverTables): Settlement[] {
  const unread = brief.machines.flatMap(({ id, limitDeg }) => {
    const machine = machines.find((row) => row.id === id)
    return machine && machine.guide !== 'hand' && limitDeg === undefined ? [machine.name] : []
  })
  if (unread.length === 0) return []
  return [
    {
      id: 'machines',
      kind: 'gap',
      what: `${unread.join(', ')}: the maker’s own slope limit is not known; a cautious one is used.`,
      mend: 'Read it off the maker’s plate or handbook.',
      zoneId: undefined,
      atM: undefined,
      source: 'own-judgement',
    },
  ]
}

/** Soil samples that can be used but hardly trusted. */
function soilDoubts({ soil }: Plan): Settlement[] {
  return soil.flatMap((sample) =>
    soilProblems(sample, sample.name).map(({ what, mend }, index) => ({
      id: `soil-${sample.id}-${index}`,
      kind: 'gap' as const,
      what: `${sample.name}: ${what}`,
      mend,
      zoneId: undefined,
      atM: undefined,
      source: 'own-judgement',
    })),
  )
}

interface Gap {
  readonly id: string
  readonly open: (plan: Plan) => boolean
  readonly what: string | ((plan: Plan) => string)
  readonly mend: string
}

/** What the person has not said yet, and what we took instead. */
const gapRows: readonly Gap[] = [
  {
    id: 'soil-assumed',
    open: (plan) => plan.soil.some(({ assumed }) => assumed === true),
    what: 'No soil sample: an ordinary loam is assumed.',
    mend: 'Squeeze a moist handful and answer three questions under “What is this ground?”.',
  },
  {
    id: 'climate-place',
    open: (plan) => plan.climate.from === 'place',
    what: ({ climate }) => `The climate is that of ${climate.place ?? 'a listed place'}, not yours.`,
    mend: 'Type in twelve months of normals from your weather service.',
  },
  {
    id: 'legal-region',
    open: (plan) => plan.site.legalRegion === undefined,
    what: 'No country is set: plants are not checked against the law.',
    mend: 'Say whose law counts. Invasive plants may then be barred.',
  },
  {
    id: 'ph',
    open: (plan) => plan.soil.every(({ ph }) => ph === undefined),
    what: 'The soil’s acidity is not known.',
    mend: 'A cheap test strip will do; lime haters and lime lovers are then told apart.',
  },
  {
    id: 'water-uncounted',
    open: (plan) =>
      plan.survey.obstacles.some(({ kind }) => kind === 'downpipe' || kind === 'drain' || kind === 'spring'),
    what: 'Downpipes, drains and springs are drawn, but their water is not in the balance yet.',
    mend: 'Look at the ground around them after rain, and overrule the wetness score there with your reason.',
  },
  {
    id: 'roof-water',
    open: (plan) =>
      plan.survey.obstacles.some(({ kind }) => kind === 'house') &&
      !plan.survey.obstacles.some(({ kind }) => kind === 'downpipe'),
    what: 'Where does the roof water go?',
    mend: 'Mark the downpipes. Water let out on a bank washes it away.',
  },
]

/** What would better the findings least. */
const lastRows: readonly Gap[] = [
  {
    id: 'climate-sun',
    open: ({ climate }) =>
      climate.from === 'typed' &&
      climate.months.every(
        ({ solarMjPerM2, sunshineHours }) => solarMjPerM2 === undefined && sunshineHours === undefined,
      ),
    what: 'How sunny the months are is told by their temperatures alone: up to a quarter too sunny on cloudy coasts.',
    mend: 'Type in mean radiation or hours of sunshine from your weather service.',
  },
]
