import Constrainautor from '@kninnug/constrainautor'
import Delaunator from 'delaunator'
import { anticlockwise } from './anticlockwise'
import { edgeSet } from './edge-set'
import type { LevelPoint, Tin } from './geometry.types'

/** A straight line between two points, by their numbers. */
interface Piece {
  readonly from: number
  readonly to: number
}

/** Triangles that no piece of a line crosses. */
export interface TinAlong {
  readonly tin: Tin
  /** Numbers of the pieces that could not be made an edge [count]; none when they meet only at points. */
  readonly missed: readonly number[]
}

/**
 * Joins points into triangles so that given pieces of lines are edges; all other edges are as Delaunay has them.
 *
 * @param points - points [m], no two at one place
 * @param pieces - pieces between them that meet only at points, see nodeLines
 * @returns the triangles, corners anticlockwise, and the pieces that were missed
 * @see Sloan 1993, Computers & Structures 47: 441-450
 */
export function triangulateAlong(points: readonly LevelPoint[], pieces: readonly Piece[]): TinAlong {
  const origin = points[0]
  if (!origin) return { tin: { points, corners: new Uint32Array(0) }, missed: [] }
  const places = new Float64Array(points.length * 2)
  points.forEach((point, at) => {
    places[2 * at] = point.eastM - origin.eastM
    places[2 * at + 1] = point.northM - origin.northM
  })
  const delaunay = new Delaunator(places)
  const missed = delaunay.triangles.length === 0 ? pieces.map((_, at) => at) : constrain(delaunay, pieces)
  return { tin: { points, corners: anticlockwise(points, delaunay.triangles) }, missed }
}

// The triangles stay sound when a piece is refused: it only lies across them.
function constrain(delaunay: Delaunator<Float64Array>, pieces: readonly Piece[]): number[] {
  const net = new Constrainautor(delaunay)
  net.flips = edgeSet(delaunay.triangles.length)
  return pieces.flatMap(({ from, to }, at) => {
    try {
      net.constrainOne(from, to)
      return []
    } catch (refusal) {
      if (!(refusal instanceof Error)) throw refusal
      return [at]
    }
  })
}
