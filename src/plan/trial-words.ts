import { thingFigures, type ShadeTables } from '#core/shade'
import type { Obstacle } from './plan-survey.schema'
import type { Trial } from './plan.schema'
import { trialThings } from './trial-things'

/** What a trial changes, a sentence to a thing. */
export function trialWords(things: readonly Obstacle[], { changes }: Trial, tables: ShadeTables): string[] {
  return changes.map((change) => {
    const thing = things.find(({ id }) => id === change.thingId)
    if (!thing) throw new RangeError(`trialWords: there is no thing “${change.thingId}”`)
    const [after] = trialThings([thing], [change])
    const done = after ? changed(figuresOf(thing, tables), figuresOf(after, tables), thing) : ['taken away']
    return `${thing.name}: ${done.length > 0 ? done.join(', ') : 'as it is'}`
  })
}

interface Figures {
  readonly heightM: number | undefined
  readonly ridgeM: number | undefined
  readonly crownBaseM: number | undefined
  readonly crownWidthM: number | undefined
  readonly leafyLight: number | undefined
  readonly bareLight: number | undefined
}

function figuresOf(thing: Obstacle, tables: ShadeTables): Figures {
  const { heightM, ridgeM } = thing
  const figures = thingFigures(thing, tables)
  return {
    heightM,
    ridgeM,
    crownBaseM: figures?.crownBaseM,
    crownWidthM: figures?.crownWidthM,
    leafyLight: figures?.leafyLight,
    bareLight: figures?.bareLight,
  }
}

interface Phrase {
  readonly figure: keyof Figures
  readonly said: (value: string, kind: Obstacle['kind']) => string
  readonly shown: (value: number) => string
}

const metres = (value: number): string => `${Number(value.toFixed(2))} m`
const percent = (value: number): string => (value === 0 ? 'none' : `${Number((value * 100).toFixed(1))} %`)

const isBuilding = (kind: Obstacle['kind']): boolean => kind === 'house' || kind === 'building'

const phrases: readonly Phrase[] = [
  {
    figure: 'heightM',
    said: (value, kind) => (isBuilding(kind) ? `eaves ${value} high` : `${value} high`),
    shown: metres,
  },
  { figure: 'ridgeM', said: (value) => `ridge ${value} high`, shown: metres },
  { figure: 'crownBaseM', said: (value) => `lowest branches ${value} up`, shown: metres },
  { figure: 'crownWidthM', said: (value) => `crown ${value} wide`, shown: metres },
  {
    figure: 'leafyLight',
    said: (value, kind) => `lets ${value} through${kind === 'tree' || kind === 'hedge' ? ' in leaf' : ''}`,
    shown: percent,
  },
  { figure: 'bareLight', said: (value) => `lets ${value} through when bare`, shown: percent },
]

function changed(before: Figures, after: Figures, { kind }: Obstacle): string[] {
  return phrases.flatMap(({ figure, said, shown }) => {
    const [was, becomes] = [before[figure], after[figure]]
    if (becomes === undefined || was === becomes) return []
    const value = said(shown(becomes), kind)
    return [was === undefined ? `${value}, not known before` : `${value} instead of ${shown(was)}`]
  })
}
