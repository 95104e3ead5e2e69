import type { Place } from '#core/climate'
import { newPlan, type Plan } from '#plan'

/** Cells along each side, and their side [m]. */
const CELLS = 100
const CELL_M = 1
/** Strips across the slope. */
const ZONES = 5

/** A plot of 100 × 100 cells: a slope with a steep face, a shelf, a nose and a hollow; five strips drawn, or none. */
export function benchPlan(places: readonly Place[], drawn: boolean): Plan {
  const levelsM = Array.from({ length: CELLS * CELLS }, (_, cell) =>
    levelM((cell % CELLS) / CELLS, Math.floor(cell / CELLS) / CELLS),
  )
  const plan = newPlan({
    name: 'Bench',
    ground: {
      kind: 'grid',
      columns: CELLS,
      rows: CELLS,
      cellM: CELL_M,
      westM: 0,
      southM: 0,
      levelsM,
    },
    latitudeDeg: 51.5,
    longitudeDeg: -2,
    places,
  })
  return drawn ? { ...plan, zones: strips() } : plan
}

/** Level at a place, east and south as shares of the side [m]. */
function levelM(east: number, south: number): number {
  const face = 9 / (1 + Math.exp((south - 0.45) * 24))
  return 6 * (1 - south) + face + 1.2 * Math.sin(east * 7) * (1 - south)
}

function strips(): Plan['zones'] {
  const deepM = (CELLS * CELL_M) / ZONES
  const wideM = CELLS * CELL_M
  return Array.from({ length: ZONES }, (_, strip) => {
    const topM = wideM - strip * deepM
    return {
      id: `strip-${strip + 1}`,
      name: `Strip ${strip + 1}`,
      ring: [
        { eastM: 0, northM: topM },
        { eastM: wideM, northM: topM },
        { eastM: wideM, northM: topM - deepM },
        { eastM: 0, northM: topM - deepM },
      ],
    }
  })
}

/** The same plan with another name for one zone. */
export function renamed(plan: Plan): Plan {
  return {
    ...plan,
    zones: plan.zones.map((zone, at) => (at === 0 ? { ...zone, name: 'Under the hedge' } : zone)),
  }
}

/** The same plan with one zone's cover decided. */
export function chosen(plan: Plan): Plan {
  return { ...plan, choices: [{ zoneId: 'strip-2', cover: 'shrubs' }] }
}
