import type { SectionZone } from '../section-view.types'

/** What becomes of one counted thread of water. */
export type Fate = 'used' | 'drained' | 'sideways' | 'ran off'

/** One thread: it falls at one place, and ends at another. */
export interface Thread {
  readonly fate: Fate
  /** Where the rain falls [m]. */
  readonly fromM: number
  /** Where it ends: in the roots, below them, or on its way down [m]. */
  readonly toM: number
  /** Place in its bundle, 0 lowest. */
  readonly rank: number
}

/** Water of the section in threads that can be counted. */
export interface Threads {
  /** What each thread stands for [m³ a year]. */
  readonly volumeM3: number
  readonly threads: readonly Thread[]
}

/** Threads that a person still counts: at most, at least, and how far apart their rain falls [px]. */
const THREADS = { most: 64, least: 12, apartPx: 9 }

/** Volumes a thread may stand for, times a power of ten. */
const ROUND = [1, 2, 5] as const

/**
 * The section's rain as counted threads, and where each one goes.
 *
 * @param zones - zones of the section
 * @param acrossPx - length of the section on the sheet [px]
 */
export function waterThreads(zones: readonly SectionZone[], acrossPx: number): Threads | undefined {
  const counted = zones.filter((zone) => zone.volumes && zone.spans.length > 0)
  const rainM3 = counted.reduce((sum, zone) => sum + (zone.volumes?.rainM3 ?? 0), 0)
  if (!(rainM3 > 0)) return undefined
  const volumeM3 = roundVolume(
    rainM3 / Math.min(THREADS.most, Math.max(THREADS.least, acrossPx / THREADS.apartPx)),
  )
  return { volumeM3, threads: follow(counted, volumeM3) }
}

/** The next round volume that is not below the given one [m³]. */
export function roundVolume(leastM3: number): number {
  const power = 10 ** Math.floor(Math.log10(leastM3))
  return (ROUND.find((step) => step * power >= leastM3 * 0.999) ?? 10) * power
}

interface Travelling {
  readonly fate: 'sideways' | 'ran off'
  readonly fromM: number
  readonly rank: number
}

/** Walks down the slope: threads join, go on, and end, so that each zone passes on what its balance says. */
function follow(zones: readonly SectionZone[], volumeM3: number): Thread[] {
  const ended: Thread[] = []
  let travelling: Travelling[] = []
  const carry = { used: 0, drained: 0, sideways: 0, 'ran off': 0, rain: 0 }
  const whole = (key: keyof typeof carry, volume: number) => {
    const exact = volume / volumeM3 + carry[key]
    const count = Math.max(0, Math.round(exact))
    carry[key] = exact - count
    return count
  }
  for (const zone of zones) {
    const volumes = zone.volumes
    const stretch = extentOf(zone)
    if (!volumes) continue
    const fresh = spread(stretch, whole('rain', volumes.rainM3))
    for (const fate of ['sideways', 'ran off'] as const) {
      const leaving = whole(fate, fate === 'sideways' ? volumes.sidewaysM3 : volumes.ranOffM3)
      travelling = passOn({ travelling, fate, leaving, fresh, stretch, ended })
    }
    settle(fresh, whole('drained', volumes.drainedM3), ended)
  }
  const footM = Math.max(...zones.map((zone) => extentOf(zone).toM))
  return [...ended, ...travelling.map((thread) => ({ ...thread, toM: footM }))]
}

interface Passing {
  readonly travelling: readonly Travelling[]
  readonly fate: 'sideways' | 'ran off'
  readonly leaving: number
  readonly fresh: number[]
  readonly stretch: { readonly fromM: number; readonly toM: number }
  readonly ended: Thread[]
}

function passOn({ travelling, fate, leaving, fresh, stretch, ended }: Passing): Travelling[] {
  const others = travelling.filter((thread) => thread.fate !== fate)
  const own = travelling.filter((thread) => thread.fate === fate)
  const staying = own.slice(leaving)
  staying.forEach((thread, at) => {
    const share = (at + 1) / (staying.length + 1)
    ended.push({ ...thread, toM: stretch.fromM + share * (stretch.toM - stretch.fromM) })
  })
  const passing = own.slice(0, leaving)
  const joining = Math.min(Math.max(0, leaving - own.length), fresh.length)
  const every = fresh.length / Math.max(joining, 1)
  const picks = Array.from({ length: joining }, (_, at) => Math.floor((at + 0.5) * every))
  const joined = picks.map((pick, at) => ({
    fate,
    fromM: fresh[pick] ?? stretch.fromM,
    rank: passing.length + at,
  }))
  for (const pick of [...picks].reverse()) fresh.splice(pick, 1)
  return [...others, ...passing, ...joined]
}

/** What neither runs nor seeps away is used by plants, or drains below their roots. */
function settle(fresh: readonly number[], drained: number, ended: Thread[]): void {
  const every = fresh.length / Math.max(Math.min(drained, fresh.length), 1)
  const down = new Set(
    Array.from({ length: Math.min(drained, fresh.length) }, (_, at) => Math.floor((at + 0.5) * every)),
  )
  fresh.forEach((fromM, at) => {
    ended.push({ fate: down.has(at) ? 'drained' : 'used', fromM, toM: fromM, rank: at })
  })
}

function extentOf(zone: SectionZone) {
  return {
    fromM: Math.min(...zone.spans.map((span) => span.fromM)),
    toM: Math.max(...zone.spans.map((span) => span.toM)),
  }
}

function spread({ fromM, toM }: { fromM: number; toM: number }, count: number): number[] {
  return Array.from({ length: count }, (_, at) => fromM + ((at + 0.5) / count) * (toM - fromM))
}
