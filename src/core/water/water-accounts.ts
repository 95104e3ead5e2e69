import { book, type Account, type AccountLine } from '#core/units'
import type { WaterMonth } from './water.types'
import type { Running } from './course-year'

/** Litres over a square metre in a cubic metre [mm m²/m³]. */
const MM_M2_PER_M3 = 1000

type Depth =
  | 'rainMm'
  | 'runOnMm'
  | 'lateralInMm'
  | 'actualEtMm'
  | 'runoffMm'
  | 'lateralOutMm'
  | 'drainageMm'
  | 'storedChangeMm'

/**
 * The year's water of one unit; what comes in, goes out and stays books to 0.
 *
 * @param id - the unit
 * @param months - its twelve months
 * @returns the account [mm a year]
 */
export function unitAccount(id: string, months: readonly WaterMonth[]): Account {
  const entry = (key: Depth, sign: 1 | -1, source: string, words: string): AccountLine => {
    const amount = sign * yearOf(months, key)
    return { id: key, amount, because: `${Math.round(Math.abs(amount))} mm ${words}`, source }
  }
  return book(`Water of ${id}`, 'mm a year', [
    entry('rainMm', 1, 'yours', 'fall as rain.'),
    entry('runOnMm', 1, 'tr-55', 'run on over the surface from the ground above.'),
    entry('lateralInMm', 1, 'sloan-moore-1984', 'come through the soil from the ground above.'),
    entry('actualEtMm', -1, 'fao-56', 'are used by plants or dry off the ground.'),
    entry('runoffMm', -1, 'tr-55', 'run off over the surface.'),
    entry('lateralOutMm', -1, 'sloan-moore-1984', 'move on downhill through the soil.'),
    entry('drainageMm', -1, 'swat-2009', 'drain down below the roots.'),
    entry(
      'storedChangeMm',
      -1,
      'swat-2009',
      'is the change of water in the soil from one January to the next.',
    ),
  ])
}

/**
 * The whole plot's year; what comes in, goes out and stays books to 0.
 *
 * @param course - every unit, ground above the plot included, after a year
 * @returns the account [m³ a year]
 */
export function plotAccount(course: readonly Running[]): Account {
  const own = course.filter((running) => running.place === 'plot')
  const ground = course.filter((running) => running.place === 'edge')
  const undescribed = ground.filter(({ unit }) => !unit.beyond)
  const described = byStretch(ground)
  const all = (running: Running) => running.unit.planAreaM2 / MM_M2_PER_M3
  const leaving = (running: Running) => running.leavesShare * all(running)
  const entry = (id: string, amount: number, source: string, words: string): AccountLine => ({
    id,
    amount,
    because: `${Math.abs(amount).toFixed(1)} m³ ${words}`,
    source,
  })
  const sum = (of: readonly Running[], key: Depth, m3PerMm: (running: Running) => number) =>
    of.reduce((total, running) => total + yearOf(running.months, key) * m3PerMm(running), 0)
  return book('Water of the plot', 'm³ a year', [
    entry('rain', sum(own, 'rainMm', all), 'yours', 'fall on the plot as rain.'),
    entry('run-on', sum(undescribed, 'runoffMm', all), 'tr-55', 'run onto the plot from above its top edge.'),
    ...described.map(({ id, name, from }) =>
      entry(`run-on-${id}`, sum(from, 'runoffMm', all), 'tr-55', `run onto the plot from ${name}.`),
    ),
    entry(
      'lateral-in',
      sum(ground, 'lateralOutMm', all),
      'sloan-moore-1984',
      'come in through the soil at the top edge.',
    ),
    entry('used', -sum(own, 'actualEtMm', all), 'fao-56', 'are used by plants or dry off the ground.'),
    entry('runoff', -sum(own, 'runoffMm', leaving), 'tr-55', 'run off the plot over the surface.'),
    entry(
      'lateral-out',
      -sum(own, 'lateralOutMm', leaving),
      'sloan-moore-1984',
      'leave the plot sideways through the soil.',
    ),
    entry('drainage', -sum(own, 'drainageMm', all), 'swat-2009', 'drain down below the roots.'),
    entry(
      'stored',
      -sum(own, 'storedChangeMm', all),
      'swat-2009',
      'is the change of water in the soil over the year.',
    ),
  ])
}

// Strips at the edge beyond described stretches, stretch by stretch.
function byStretch(ground: readonly Running[]): { id: string; name: string; from: Running[] }[] {
  const found = new Map<string, { id: string; name: string; from: Running[] }>()
  for (const running of ground) {
    const { beyond } = running.unit
    if (!beyond) continue
    const held = found.get(beyond.id) ?? { id: beyond.id, name: beyond.name, from: [] }
    held.from.push(running)
    found.set(beyond.id, held)
  }
  return [...found.values()]
}

function yearOf(months: readonly WaterMonth[], key: Depth): number {
  return months.reduce((total, month) => total + month[key], 0)
}
