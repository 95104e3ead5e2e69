import type { Surface } from '#core/survey'
import { cutSections, type Section, type Terrain } from '#core/terrain'
import type { Settlement } from './findings.types'
import type { Plan } from './plan.schema'

/** A section besides the one that is drawn large. */
export interface FurtherSection {
  readonly id: string
  readonly name: string
  readonly section: Section
}

/** The further sections that cross the plot; for the others see `missedSections`. */
export function furtherSections({ survey }: Plan, surface: Surface, terrain: Terrain): FurtherSection[] {
  const lines = survey.sections ?? []
  return cutSections(surface, terrain, lines).flatMap((section, at) => {
    const line = lines[at]
    return section && line ? [{ id: line.id, name: line.name, section }] : []
  })
}

/** Section lines that miss the plot, as when the outline was drawn closer later. */
export function missedSections({ survey }: Plan, drawn: readonly FurtherSection[]): Settlement[] {
  return (survey.sections ?? [])
    .filter(({ id }) => !drawn.some((section) => section.id === id))
    .map(({ id, name }) => ({
      id: `section-${id}`,
      kind: 'gap',
      what: `Section ${name} does not cross the plot, so it is not drawn.`,
      mend: 'Move its ends onto the plot, or take it out.',
      zoneId: undefined,
      atM: undefined,
      source: 'yours',
    }))
}
