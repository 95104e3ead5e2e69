import type { Breakline } from '#core/survey'
import type { Plan } from '#plan'
import { levelOn } from './level-on'
import { addLevel, levelName, removeLevel, setLevel } from './levels'
import { addLine, lineKinds, lineName, linesOf, removeLine, reshapeLine, setVertex } from './lines'
import { gone } from './refused'
import { addHole, removeHole, setBoundary, setHole } from './rings'
import type { PlacedFigure, Subject } from './subject.types'

const pointsOf = (plan: Plan) => (plan.survey.ground.kind === 'levels' ? plan.survey.ground.points : [])
const onLevels = (plan: Plan): string =>
  plan.survey.ground.kind === 'levels'
    ? ''
    : 'This ground was not measured as spot levels. Turn it into spot levels on the Levels page first.'

const level = (key: string, label: string, value: number | undefined, optional = false): PlacedFigure => ({
  key,
  label,
  unit: 'm',
  value,
  optional,
})

/** Spot levels. A new one takes its level from the ground until it is measured. */
export const levelsSubject: Subject = {
  id: 'levels',
  name: 'Levels',
  missing: onLevels,
  kinds: (plan) => (onLevels(plan) ? [] : [{ id: 'level', text: 'level', lies: 'point' }]),
  all: (plan) =>
    pointsOf(plan).map((point, at) => ({
      id: String(at),
      name: `level ${levelName(point, at)}`,
      ring: [point],
      closed: false,
      least: undefined,
      mayGo: true,
    })),
  put: (plan, _, [place], { surface }) =>
    place ? addLevel(plan, { ...place, levelM: levelOn(surface, place) ?? surface.lowestM }) : gone('level'),
  reshape: (plan, id, [place]) =>
    place
      ? setLevel(plan, Number(id), { eastM: place.eastM, northM: place.northM })
      : gone(`level ${Number(id) + 1}`),
  takeOut: (plan, id) => removeLevel(plan, Number(id)),
  figures: (plan, id) => [level('levelM', 'Level', pointsOf(plan)[Number(id)]?.levelM)],
  setFigure: (plan, { id, value }) =>
    value === undefined ? gone('level') : setLevel(plan, Number(id), { levelM: value }),
}

/** Lines along which the ground bends. */
export const linesSubject: Subject = {
  id: 'lines',
  name: 'Lines',
  missing: onLevels,
  kinds: (plan) => (onLevels(plan) ? [] : lineKinds.map(({ id, text }) => ({ id, text, lies: 'line' }))),
  all: (plan) =>
    linesOf(plan).map((line) => ({
      id: line.id,
      name: lineName(line),
      ring: line.vertices,
      closed: false,
      least: 2,
      mayGo: true,
    })),
  put: (plan, kind, places, { surface }) =>
    addLine(plan, kind as Breakline['kind'], places, (place) => levelOn(surface, place)),
  reshape: reshapeLine,
  takeOut: removeLine,
  figures: (plan, id, corner) =>
    vertexFigures(
      linesOf(plan).find((line) => line.id === id),
      corner,
    ),
  setFigure: (plan, { id, corner, key, value }) => setVertex(plan, id, corner, { [key]: value }),
}

function vertexFigures(line: Breakline | undefined, corner: number): PlacedFigure[] {
  if (line?.kind === 'wall') {
    const vertex = line.vertices[corner]
    return [
      level('leftM', 'Level on the left', vertex?.leftM),
      level('rightM', 'Level on the right', vertex?.rightM),
    ]
  }
  return line ? [level('levelM', 'Level, if measured', line.vertices[corner]?.levelM, true)] : []
}

const BOUNDARY = 'boundary'

/** The outline of the plot, and parts of it that are no ground. */
export const outlineSubject: Subject = {
  id: 'outline',
  name: 'Outline and holes',
  missing: () => '',
  kinds: () => [{ id: 'hole', text: 'hole: a pond or building', lies: 'outline' }],
  all: (plan, { surface }) => [
    {
      id: BOUNDARY,
      name: 'outline of the plot',
      ring: plan.survey.boundary ?? surface.boundary,
      closed: true,
      least: 3,
      mayGo: plan.survey.boundary !== undefined,
    },
    ...(plan.survey.holes ?? []).map((ring, at) => ({
      id: String(at),
      name: `hole ${at + 1}`,
      ring,
      closed: true,
      least: 3,
      mayGo: true,
    })),
  ],
  put: (plan, _, places) => addHole(plan, places),
  reshape: (plan, id, places) =>
    id === BOUNDARY ? setBoundary(plan, places) : setHole(plan, Number(id), places),
  takeOut: (plan, id) => (id === BOUNDARY ? setBoundary(plan, undefined) : removeHole(plan, Number(id))),
  figures: () => [],
  setFigure: () => gone('outline'),
}
