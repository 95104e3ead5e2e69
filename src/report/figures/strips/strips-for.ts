import type { Question } from '../../section-view.types'
import type { TimeStep } from './season-rows'
import {
  coverTable,
  gradientTable,
  hoursTable,
  mowingTable,
  passingTable,
  plantingTable,
  soilTable,
  sunTable,
  wetnessTable,
} from './strip-tables'
import type { StripView } from './strip-view.types'
import type { TableTwin } from './table-twin.types'

export type StripId =
  'gradient' | 'mowing' | 'wetness' | 'sun' | 'soil' | 'passing' | 'cover' | 'planting' | 'hours'

/** A strip as a question shows it. */
export interface ShownStrip {
  readonly id: StripId
  readonly props: { readonly reading?: 'hachures' | 'limits'; readonly step?: TimeStep }
}

const plain = (id: StripId): ShownStrip => ({ id, props: {} })
const limits: ShownStrip = { id: 'gradient', props: { reading: 'limits' } }
const byMonth = (id: 'wetness' | 'sun'): ShownStrip => ({ id, props: { step: 'months' } })

/** Which strips answer which question, the most telling first. */
const strips: Readonly<Record<Question, readonly ShownStrip[]>> = {
  ground: ['gradient', 'soil', 'wetness', 'sun', 'cover', 'hours'].map((id) => plain(id as StripId)),
  water: [byMonth('wetness'), plain('passing'), plain('soil'), plain('gradient')],
  sun: [byMonth('sun'), plain('wetness'), plain('cover')],
  mow: [limits, plain('mowing'), plain('wetness'), plain('cover'), plain('hours')],
  hold: [plain('planting'), plain('cover'), plain('gradient'), plain('soil'), plain('wetness')],
  month: [plain('wetness'), plain('hours'), plain('mowing')],
  handover: ['gradient', 'mowing', 'wetness', 'sun', 'cover', 'planting', 'hours'].map((id) =>
    plain(id as StripId),
  ),
}

export function stripsFor(question: Question): readonly ShownStrip[] {
  return strips[question]
}

const tables: Readonly<Record<StripId, (view: StripView, step: TimeStep) => TableTwin>> = {
  gradient: gradientTable,
  mowing: mowingTable,
  wetness: wetnessTable,
  sun: sunTable,
  soil: soilTable,
  passing: passingTable,
  cover: coverTable,
  planting: plantingTable,
  hours: hoursTable,
}

/** The table twin of a strip as it is shown. */
export function stripTable(view: StripView, { id, props }: ShownStrip): TableTwin {
  return tables[id](view, props.step ?? 'seasons')
}
