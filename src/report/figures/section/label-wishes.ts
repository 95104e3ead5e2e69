import type { LabelWish } from '../../drawing/labels'
import { cubicMetres, metres } from '../../drawing/measures'
import type { Px } from '../../drawing/path'
import { COMPACT_PX, groundAt, type SectionScale } from '../../drawing/scale'
import { builtBox } from '../../drawing/shade'
import { RAIN_OVER_PX } from '../../drawing/thread-paths'
import type { Question, SectionObstacle, SectionView, SectionZone, Stretch } from '../../section-view.types'
import { zoneLabels } from './zone-labels'
import { LEAST_VOLUME_M3, type Asked, type Words } from './zone-words'

/** Longest lighter line of a danger [characters]. */
const LONGEST_NOTE = 58

/** Places along a stretch that a label may point at, as shares of its length: the middle first. */
const PLACES = [0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92] as const

/** Labels above the ground that answer a question, with dangers before all else. */
export function labelWishes(view: SectionView, scale: SectionScale, asked: Asked): LabelWish[] {
  if (scale.widthPx < COMPACT_PX) return dangers(view, scale)
  const rainPx = asked.question === 'water' ? RAIN_OVER_PX : 0
  const zones = zoneLabels(view, scale, asked).map(({ id, words, stretch }) =>
    above(id, raised(alongStretch(view, scale, stretch), rainPx), words),
  )
  const foot = asked.question === 'water' ? waterAtFoot(view, scale) : []
  return [
    ...dangers(view, scale),
    ...foot,
    ...zones,
    ...view.obstacles.filter(isNamed).map(nameOf(view, scale)),
  ]
}

/** What is named above the ground: pipes and buried things are known by their drawing or named below. */
function isNamed({ kind }: SectionObstacle): boolean {
  return kind !== 'services' && kind !== 'drain' && kind !== 'downpipe'
}

function nameOf(view: SectionView, scale: SectionScale): (obstacle: SectionObstacle) => LabelWish {
  return (obstacle) => ({
    ...above(`thing-${obstacle.id}`, [topOf(view, scale, obstacle)], {
      title: obstacle.name,
      note: undefined,
      voice: 'name',
    }),
    rank: 3,
  })
}

/** Labels in the earth: the soil, and what is buried. */
export function soilWishes(view: SectionView, scale: SectionScale, { question }: Asked): LabelWish[] {
  const told = scale.widthPx >= COMPACT_PX
  const soils = told && question !== 'mow' ? earthWords(view, scale, question) : []
  const buried = view.obstacles
    .filter((obstacle) => obstacle.kind === 'services' || obstacle.kind === 'drain')
    .map((obstacle): LabelWish => {
      const foot = footOf(view, scale, obstacle)
      return {
        id: `buried-${obstacle.id}`,
        title: obstacle.name,
        note: obstacle.kind === 'services' ? 'have it traced before you dig' : 'depth not surveyed',
        tone: obstacle.kind === 'services' ? 'red' : 'water',
        voice: 'verdict',
        warns: obstacle.kind === 'services',
        anchors: [{ xPx: foot.xPx, yPx: foot.yPx + 24 }],
        side: 'below',
        rank: 1,
      }
    })
  return [...buried, ...soils]
}

function earthWords(view: SectionView, scale: SectionScale, question: Question): LabelWish[] {
  if (question === 'water') return waterBelow(view, scale)
  const told = question === 'ground' || question === 'hold'
  return told ? sameSoilOnce(view.zones.map((zone) => soilWish(view, scale, zone))) : []
}

/** What drains below the roots of all zones. */
function waterBelow(view: SectionView, scale: SectionScale): LabelWish[] {
  const drained = view.zones.reduce((sum, zone) => sum + (zone.volumes?.drainedM3 ?? 0), 0)
  const widest = [...view.zones].sort((a, b) => b.planAreaM2 - a.planAreaM2)[0]
  if (!widest || drained < LEAST_VOLUME_M3) return []
  return [
    {
      id: 'drained',
      title: `${cubicMetres(drained)} a year`,
      note: 'drains below the roots of all zones',
      tone: 'water',
      voice: 'verdict',
      warns: false,
      anchors: underZone(view, scale, widest),
      side: 'below',
      rank: 2,
    },
  ]
}

/** What leaves through the soil of the lowest zone. */
function waterAtFoot(view: SectionView, scale: SectionScale): LabelWish[] {
  const last = [...view.zones].reverse().find((zone) => zone.volumes && zone.spans.length > 0)
  if (!last?.volumes || last.volumes.sidewaysM3 < LEAST_VOLUME_M3) return []
  return [
    above('foot', raised([at(view, scale, view.lengthM)], RAIN_OVER_PX), {
      title: cubicMetres(last.volumes.sidewaysM3),
      note: 'seeps out at the foot',
      tone: 'water',
    }),
  ]
}

function dangers(view: SectionView, scale: SectionScale): LabelWish[] {
  return view.dangers.map((danger) => ({
    ...above(`danger-${danger.id}`, alongStretch(view, scale, danger), {
      ...inShort(danger.what, danger.mend),
      tone: 'red',
      warns: true,
    }),
    rank: 0,
  }))
}

/** A danger in two short lines; the list of what is still to settle has it in full. */
function inShort(what: string, mend: string): Words {
  const [title = what, ...rest] = what.replace(/\.$/, '').split(/: |\. /)
  const note = rest[0] ?? mend.split('. ')[0] ?? ''
  return { title, note: note.length <= LONGEST_NOTE ? note : undefined }
}

function soilWish(view: SectionView, scale: SectionScale, zone: SectionZone): LabelWish {
  const stones = zone.soil.stonesPercent > 0 ? `, ${Math.round(zone.soil.stonesPercent)} % stones` : ''
  return {
    id: `soil-${zone.id}`,
    title: zone.soil.texture,
    note: `${metres(zone.soil.depthM)} deep${stones}`,
    tone: 'ink',
    voice: 'name',
    warns: false,
    anchors: underZone(view, scale, zone),
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

function above(id: string, anchors: readonly Px[], words: Words): LabelWish {
  return { id, tone: 'ink', voice: 'verdict', warns: false, ...words, anchors, side: 'above', rank: 2 }
}

/** Labels of the water stand on the rain. */
function raised(places: readonly Px[], byPx: number): Px[] {
  return places.map((place) => ({ ...place, yPx: place.yPx - byPx }))
}

function at(view: SectionView, scale: SectionScale, distanceM: number): Px {
  return { xPx: scale.axis.x(distanceM), yPx: scale.y(groundAt(view.ground, distanceM).heightM) }
}

function alongStretch(view: SectionView, scale: SectionScale, { fromM, toM }: Stretch): Px[] {
  return PLACES.map((share) => at(view, scale, fromM + share * (toM - fromM)))
}

function alongZone(view: SectionView, scale: SectionScale, zone: SectionZone): Px[] {
  const longest = [...zone.spans].sort((a, b) => b.toM - b.fromM - (a.toM - a.fromM))[0]
  return longest ? alongStretch(view, scale, longest) : []
}

function underZone(view: SectionView, scale: SectionScale, zone: SectionZone): Px[] {
  const deepPx = zone.soil.depthM * scale.yPxPerM
  return alongZone(view, scale, zone).map((place) => ({ ...place, yPx: place.yPx + deepPx }))
}

function footOf(view: SectionView, scale: SectionScale, obstacle: SectionObstacle): Px {
  const middleM = (obstacle.fromM + obstacle.toM) / 2
  return at(view, scale, Math.min(view.drawn.toM, Math.max(view.drawn.fromM, middleM)))
}

function topOf(view: SectionView, scale: SectionScale, obstacle: SectionObstacle): Px {
  if (obstacle.kind === 'tree') return footOf(view, scale, obstacle)
  const box = builtBox(view, scale, obstacle)
  return { xPx: Math.max(box.leftPx, scale.axis.x(view.drawn.fromM) + 4), yPx: box.topPx }
}
