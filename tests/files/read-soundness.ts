import type { Outcome } from '#core/units'
import type { SurveyRead } from '../../src/files/survey-read.types'

/** What is unsound in the answer of a reader: nothing when it is a plain problem or a whole result. */
export function unsound(outcome: Outcome<SurveyRead>): string[] {
  if (!outcome.ok) {
    const plain = outcome.problems.every(
      ({ where, what, mend }) => where !== '' && what.length > 10 && mend.length > 10,
    )
    return outcome.problems.length > 0 && plain ? [] : ['a refusal without a plain problem']
  }
  const { parts, notes, doubts } = outcome.value
  const ids = new Set(parts.map(({ id }) => id))
  return [
    ...(parts.length === 0 ? ['no part'] : []),
    ...(ids.size < parts.length ? ['an id used twice'] : []),
    ...parts.flatMap(unsoundPart),
    ...(notes.every((note) => typeof note === 'string' && note !== '') ? [] : ['an empty note']),
    ...(doubts.every(({ where, what, mend }) => where !== '' && what !== '' && mend !== '')
      ? []
      : ['an empty doubt']),
  ]
}

function unsoundPart({
  id,
  name,
  points,
  faces,
  breaklines,
  boundary,
}: SurveyRead['parts'][number]): string[] {
  const corners = breaklines.flatMap((line) => (line.kind === 'wall' ? [] : line.vertices))
  const figures = [...points, ...corners, ...(boundary ?? [])].flatMap((place) => [
    place.eastM,
    place.northM,
    'levelM' in place ? (place.levelM ?? 0) : 0,
  ])
  const facesHold = faces.every(
    (face) =>
      new Set(face).size === 3 && face.every((row) => Number.isInteger(row) && points[row] !== undefined),
  )
  const names = points.flatMap(({ mark, code }) => [mark ?? '', code ?? ''])
  return [
    ...(id === '' || name === '' ? ['a part without a name'] : []),
    ...(points.length === 0 && breaklines.length === 0 ? ['a part without anything'] : []),
    ...(figures.every(Number.isFinite) ? [] : ['a place that is no number']),
    ...(facesHold ? [] : ['a face without its points']),
    ...(breaklines.every(({ vertices }) => vertices.length >= 2) ? [] : ['a line of one point']),
    ...(boundary === undefined || boundary.length >= 3 ? [] : ['a boundary of two corners']),
    ...(names.every((text) => text.length <= 60) ? [] : ['a mark or code too long to keep']),
  ]
}
