import { monthNames, northernTwin, type Month } from '#core/units'
import type { LabelWish } from '../../drawing/labels'
import { cubicMetres, hours, metres, squareMetres } from '../../drawing/measures'
import { drawnHeightM } from '../../drawing/obstacles'
import type { Px } from '../../drawing/path'
import { groundAt, type SectionScale } from '../../drawing/scale'
import type { Question, SectionObstacle, SectionView, SectionZone } from '../../section-view.types'
import { coverWords, verdictNote, verdictWords } from './verdict-words'

/** What a sheet is asked, with the month it is read in. */
export interface Asked {
  readonly question: Question
  readonly month: Month | undefined
}

type Words = Pick<LabelWish, 'title' | 'note'> & Partial<Pick<LabelWish, 'tone' | 'voice'>>

/** Labels above the ground that answer a question, with dangers before all else. */
export function labelWishes(view: SectionView, scale: SectionScale, asked: Asked): LabelWish[] {
  const zones = view.zones.flatMap((zone) => {
    const words = zoneWords(view, zone, asked)
    return words ? [above(`zone-${zone.id}`, middleOf(view, scale, zone), words)] : []
  })
  const things = view.obstacles
    .filter((obstacle) => obstacle.kind !== 'services' && obstacle.kind !== 'drain')
    .map((obstacle) => ({
      ...above(`thing-${obstacle.id}`, topOf(view, scale, obstacle), {
        title: obstacle.name,
        note: undefined,
        voice: 'name',
      }),
      rank: 3,
    }))
  return [...dangers(view, scale), ...zones, ...things]
}

/** Labels in the earth: the soil, and what is buried. */
export function soilWishes(view: SectionView, scale: SectionScale, { question }: Asked): LabelWish[] {
  const told = question === 'ground' || question === 'hold' || question === 'water'
  const soils = told ? view.zones.map((zone) => soilWish(view, scale, zone)) : []
  const buried = view.obstacles
    .filter((obstacle) => obstacle.kind === 'services' || obstacle.kind === 'drain')
    .map((obstacle): LabelWish => {
      const at = footOf(view, scale, obstacle)
      return {
        id: `buried-${obstacle.id}`,
        title: obstacle.name,
        note: obstacle.kind === 'services' ? 'have it traced before you dig' : 'depth not surveyed',
        tone: obstacle.kind === 'services' ? 'red' : 'water',
        voice: 'verdict',
        anchor: { xPx: at.xPx, yPx: at.yPx + 24 },
        side: 'below',
        rank: 1,
      }
    })
  return [...buried, ...sameSoilOnce(soils)]
}

function dangers(view: SectionView, scale: SectionScale): LabelWish[] {
  return view.dangers.map((danger) => ({
    ...above(`danger-${danger.id}`, at(view, scale, (danger.fromM + danger.toM) / 2), {
      title: danger.what.replace(/\.$/, ''),
      note: danger.mend,
      tone: 'red',
    }),
    rank: 0,
  }))
}

function zoneWords(view: SectionView, zone: SectionZone, { question, month }: Asked): Words | undefined {
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
  const ran = volumes.ranOffM3 > 0.05 ? `, ${cubicMetres(volumes.ranOffM3)} runs off` : ''
  return {
    title: `${cubicMetres(volumes.usedM3)} a year`,
    note: `drunk by plants or dried${ran}`,
    tone: 'water',
  }
}

function sunWords(view: SectionView, zone: SectionZone): Words {
  const summer = northernTwin(5, view.latitudeDeg)
  const winter = northernTwin(11, view.latitudeDeg)
  return {
    title: `${hours(zone.sunHours[summer])} a day in ${monthNames[summer]}`,
    note: `${hours(zone.sunHours[winter])} in ${monthNames[winter]}, clear sky`,
  }
}

function plantWords(zone: SectionZone): Words | undefined {
  const order = { tree: 0, shrub: 1, meadow: 2, ground: 3 }
  const first = [...zone.planting].sort((a, b) => order[a.layer] - order[b.layer] || b.share - a.share)[0]
  if (!first) return undefined
  const more = zone.planting.length - 1
  return {
    title: first.plant.name,
    note: `${first.count} of ${first.plant.common}${more > 0 ? `, ${more} more kind${more > 1 ? 's' : ''}` : ''}`,
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

function soilWish(view: SectionView, scale: SectionScale, zone: SectionZone): LabelWish {
  const place = middleOf(view, scale, zone)
  const stones = zone.soil.stonesPercent > 0 ? `, ${Math.round(zone.soil.stonesPercent)} % stones` : ''
  return {
    id: `soil-${zone.id}`,
    title: zone.soil.texture,
    note: `${metres(zone.soil.depthM)} deep${stones}`,
    tone: 'ink',
    voice: 'name',
    anchor: { xPx: place.xPx, yPx: place.yPx + zone.soil.depthM * scale.yPxPerM },
    side: 'below',
    rank: 4,
  }
}

/** Neighbours on the same soil share one label. */
function sameSoilOnce(wishes: readonly LabelWish[]): LabelWish[] {
  return wishes.filter((wish, index) => {
    const before = wishes[index - 1]
    return !before || before.title !== wish.title || before.note !== wish.note
  })
}

function above(id: string, anchor: Px, words: Words): LabelWish {
  return { id, tone: 'ink', voice: 'verdict', ...words, anchor, side: 'above', rank: 2 }
}

function at(view: SectionView, scale: SectionScale, distanceM: number): Px {
  return { xPx: scale.axis.x(distanceM), yPx: scale.y(groundAt(view.ground, distanceM).heightM) }
}

function middleOf(view: SectionView, scale: SectionScale, zone: SectionZone): Px {
  const longest = [...zone.spans].sort((a, b) => b.toM - b.fromM - (a.toM - a.fromM))[0]
  return at(view, scale, longest ? (longest.fromM + longest.toM) / 2 : 0)
}

function footOf(view: SectionView, scale: SectionScale, obstacle: SectionObstacle): Px {
  const middleM = (obstacle.fromM + obstacle.toM) / 2
  return at(view, scale, Math.min(view.drawn.toM, Math.max(view.drawn.fromM, middleM)))
}

function topOf(view: SectionView, scale: SectionScale, obstacle: SectionObstacle): Px {
  const foot = footOf(view, scale, obstacle)
  const lift = obstacle.kind === 'tree' ? 0 : drawnHeightM(obstacle) * scale.yPxPerM
  return { xPx: foot.xPx, yPx: foot.yPx - lift }
}
