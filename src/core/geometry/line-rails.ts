import type { PlanPoint } from './geometry.types'

/** The two sides of a line, a corner to each of its own corners. */
export interface Rails {
  readonly left: readonly PlanPoint[]
  readonly right: readonly PlanPoint[]
}

/** At a sharp bend the rail goes out no farther than this many times its distance [m/m]. */
const MOST_MITRE = 4

/**
 * Two lines alongside a line, one to each side, joined at its bends.
 *
 * @param line - corners in order [m], at least two, no two in a row at one place, and not doubling back
 * @param halfM - how far to each side [m], above 0
 * @param closed - whether the last corner is joined to the first
 * @returns left and right as seen walking from the first corner on
 * @throws RangeError when the line has fewer than 2 corners or the distance is not above 0
 */
export function lineRails(line: readonly PlanPoint[], halfM: number, closed: boolean): Rails {
  if (line.length < 2) throw new RangeError(`lineRails: line must have 2 corners or more, got ${line.length}`)
  if (!(halfM > 0)) throw new RangeError(`lineRails: halfM must be above 0, got ${halfM}`)
  const corners = line.length
  const offsets = line.map((_, at) => {
    const before =
      at > 0 || closed ? headingBetween(line[(at + corners - 1) % corners]!, line[at]!) : undefined
    const after =
      at < corners - 1 || closed ? headingBetween(line[at]!, line[(at + 1) % corners]!) : undefined
    return leftward(before ?? after!, after ?? before!)
  })
  const shifted = (side: 1 | -1) =>
    line.map(({ eastM, northM }, at) => ({
      eastM: eastM + side * halfM * offsets[at]!.east,
      northM: northM + side * halfM * offsets[at]!.north,
    }))
  return { left: shifted(1), right: shifted(-1) }
}

interface Heading {
  readonly east: number
  readonly north: number
}

function headingBetween(from: PlanPoint, to: PlanPoint): Heading {
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM]
  const lengthM = Math.hypot(east, north)
  return { east: east / lengthM, north: north / lengthM }
}

// Where the lines one unit to the left of both pieces meet.
function leftward(before: Heading, after: Heading): Heading {
  const [east, north] = [-(before.north + after.north), before.east + after.east]
  const square = east * east + north * north
  const reach = Math.min(2 / square, MOST_MITRE / Math.sqrt(square))
  return { east: east * reach, north: north * reach }
}
