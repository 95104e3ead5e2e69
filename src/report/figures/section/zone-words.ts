import { monthNames, northernTwin, type Month } from '#core/units'
import type { LabelWish } from '../../drawing/labels'
import { cubicMetres, hours, squareMetres } from '../../drawing/measures'
import type { Question, SectionView, SectionZone } from '../../section-view.types'
import { coverWords, verdictNote, verdictWords } from './verdict-words'

/** What a sheet is asked, with the month it is read in. */
export interface Asked {
  readonly question: Question
  readonly month: Month | undefined
}

/** What a label says, and how. */
export type Words = Pick<LabelWish, 'title' | 'note'> & Partial<Pick<LabelWish, 'tone' | 'voice' | 'warns'>>

/** Smaller volumes are not worth a word [m³ a year]. */
export const LEAST_VOLUME_M3 = 0.05

/** What a zone's label answers to the question; undefined when it has nothing to say. */
export function zoneWords(
  view: SectionView,
  zone: SectionZone,
  { question, month }: Asked,
): Words | undefined {
  switch (question) {
    case 'mow':
      return {
        title: `${verdictWords[zone.mowing]} ${squareMetres(zone.slopeAreaM2)}`,
        note: verdictNote(zone),
        tone: zone.mowing === 'never' ? 'red' : 'ink',
      }
    case 'water':
      return waterWords(zone)
    case 'sun':
      return sunWords(view, zone)
    case 'hold':
      return plantWords(zone)
    case 'month':
    case 'handover':
      return monthWords(zone, month)
    case 'ground':
      return undefined
  }
}

function waterWords(zone: SectionZone): Words | undefined {
  const volumes = zone.volumes
  if (!volumes) return undefined
  const ran = volumes.ranOffM3 >= LEAST_VOLUME_M3 ? `, ${cubicMetres(volumes.ranOffM3)} runs off` : ''
  return {
    title: `Plants use ${cubicMetres(volumes.usedM3)}`,
    note: `of ${cubicMetres(volumes.rainM3)} of rain a year${ran}`,
    tone: 'water',
  }
}

function sunWords(view: SectionView, zone: SectionZone): Words {
  const summer = northernTwin(5, view.latitudeDeg)
  const winter = northernTwin(11, view.latitudeDeg)
  return {
    title: `${hours(zone.sunHours[summer])} in ${monthNames[summer]}`,
    note: `${hours(zone.sunHours[winter])} in ${monthNames[winter]}`,
  }
}

function plantWords(zone: SectionZone): Words | undefined {
  const order = { tree: 0, shrub: 1, meadow: 2, ground: 3 }
  const first = [...zone.planting].sort(
    (a, b) => order[a.layer] - order[b.layer] || b.plant.heightM - a.plant.heightM,
  )[0]
  if (!first) return undefined
  const more = zone.planting.length - 1
  return {
    title: first.plant.name,
    note: `${first.count > 0 ? `${first.count} of ${first.plant.common}` : `${first.plant.common}, sown`}${more > 0 ? `, ${more} more kind${more > 1 ? 's' : ''}` : ''}`,
    voice: 'name',
  }
}

function monthWords(zone: SectionZone, month: Month | undefined): Words {
  const off = month !== undefined && zone.keepOff.includes(month)
  return {
    title: coverWords[zone.cover],
    note: off ? 'keep off this month' : undefined,
    tone: off ? 'red' : 'ink',
  }
}
