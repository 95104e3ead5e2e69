import { toRadians } from '#core/units'
import type { Book, ChainBook } from './booking.schema'
import type { SurveyMethod } from './methods.schema'

/** The part of a method that says how good it is. */
export type MethodErrors = Pick<SurveyMethod, 'levelSdM' | 'levelSdPerM' | 'angleSdDeg' | 'lengthSdM'>

/**
 * Standard error of the last point's level above the first, propagated leg by leg. What goes wrong anew on every leg
 * adds up in squares; what the whole book shares, such as the index error of a clinometer, adds up as it is. A level book
 * has the error of one set-up times the root of the set-ups, as its sights are taken to be of equal length.
 *
 * @param book - any field book
 * @param method - standard errors of the method it was measured with
 * @returns standard error [m], above 0
 * @throws RangeError when the legs are angles and the method reads none
 * @see JCGM 100:2008, equations 10 and 13: the law of propagation of uncertainty
 */
export function bookSdM(book: Book, method: MethodErrors): number {
  return pointSdsM(book, method).at(-1) ?? 0
}

/**
 * Standard error of every point's level above the first point, for drawing and printing beside the levels.
 *
 * @param book - any field book
 * @param method - standard errors of the method it was measured with
 * @returns standard errors of the points of the book [m]: for a level book one a line, for all others the start and one
 *   a leg; 0 at the start
 * @throws RangeError when the legs are angles and the method reads none
 * @see JCGM 100:2008, equations 10 and 13: the law of propagation of uncertainty
 */
export function pointSdsM(book: Book, method: MethodErrors): readonly number[] {
  if (book.kind === 'level-book') return levelSdsM(book.rows, method)
  return sdsAlong(partsOf(book, method))
}

function levelSdsM(rows: readonly { readonly backM?: number | undefined }[], method: MethodErrors): number[] {
  let setUps = 0
  return rows.map(({ backM }) => {
    const sdM = method.levelSdM * Math.sqrt(setUps)
    if (backM !== undefined) setUps += 1
    return sdM
  })
}

/** Errors of one leg: variance of its own, and the part it shares with all others. */
interface LegErrors {
  readonly ownM2: number
  readonly sharedM: number
}

function sdsAlong(legs: readonly LegErrors[]): number[] {
  let [ownM2, sharedM] = [0, 0]
  const sds = legs.map((leg) => {
    ownM2 += leg.ownM2
    sharedM += leg.sharedM
    return Math.sqrt(ownM2 + sharedM ** 2)
  })
  return [0, ...sds]
}

function partsOf(book: Exclude<Book, { kind: 'level-book' }>, method: MethodErrors): readonly LegErrors[] {
  if (book.kind === 'chain') return book.legs.map((leg) => tapedLeg(leg, method))
  const runsM = book.kind === 'steps' ? book.steps.map(() => book.spanM) : book.drops.map(({ runM }) => runM)
  return runsM.map((runM) => ({ ownM2: method.levelSdM ** 2, sharedM: method.levelSdPerM * runM }))
}

// Of rise = length × sine: its slope against the length is the sine, against the angle length × cosine.
function tapedLeg({ lengthM, angleDeg }: ChainBook['legs'][number], method: MethodErrors): LegErrors {
  const { angleSdDeg, lengthSdM, levelSdPerM } = method
  if (angleSdDeg === null) throw new RangeError('bookSdM: angleSdDeg must be above 0 for a chain, got null')
  const angle = toRadians(angleDeg)
  const byAngleM = lengthM * Math.cos(angle) * toRadians(angleSdDeg)
  const byLengthM = Math.sin(angle) * lengthSdM
  return { ownM2: byAngleM ** 2 + byLengthM ** 2, sharedM: levelSdPerM * lengthM * Math.cos(angle) }
}
