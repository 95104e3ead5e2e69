import type { PlanPoint } from '#core/geometry'
import type { Breakline, LevelsSurvey } from '#core/survey'
import type { Outcome } from '#core/units'
import type { Plan } from '#plan'
import { gone, refused } from './refused'
import { changedAt, freeId, without, withSurvey } from './with-survey'

/** What a line of the ground may be, in the order in which it is offered. */
export const lineKinds: readonly { readonly id: Breakline['kind']; readonly text: string }[] = [
  { id: 'top', text: 'top of a bank' },
  { id: 'toe', text: 'foot of a bank' },
  { id: 'wall', text: 'wall or step' },
  { id: 'ridge', text: 'ridge' },
  { id: 'channel', text: 'channel' },
  { id: 'edge', text: 'other edge' },
]

/** Level of the ground at a place [m]; undefined where it is not known. */
export type LevelAt = (place: PlanPoint) => number | undefined

/** How far beside a wall the ground is read [m]; own judgement: clear of the wall itself. */
const BESIDE_WALL_M = 0.5

type WallVertex = Extract<Breakline, { kind: 'wall' }>['vertices'][number]
type EdgeVertex = Exclude<Breakline, { kind: 'wall' }>['vertices'][number]
/** A point of a line, with the levels that its kind has. */
export type LineVertex = EdgeVertex | WallVertex

/** The lines of a plan; none on ground that has none. */
export const linesOf = (plan: Plan): readonly Breakline[] =>
  plan.survey.ground.kind === 'levels' ? (plan.survey.ground.breaklines ?? []) : []

/** What a line is called. */
export function lineName(line: Breakline): string {
  return line.name || `${lineKinds.find(({ id }) => id === line.kind)?.text ?? line.kind}, ${line.id}`
}

/**
 * The plan with one more line. A wall’s two levels are read from the ground half a metre to each side.
 *
 * @param plan - a plan whose ground is spot levels
 * @param kind - what bends here
 * @param places - its points in order [m]
 * @param levelAt - level of the ground now
 * @returns the plan, or why not
 */
export function addLine(
  plan: Plan,
  kind: Breakline['kind'],
  places: readonly PlanPoint[],
  levelAt: LevelAt,
): Outcome<Plan> {
  return onLevels(plan, (ground) => {
    const lines = ground.breaklines ?? []
    const id = freeId(lines, 'line')
    if (kind !== 'wall') return { ...ground, breaklines: [...lines, { id, kind, vertices: [...places] }] }
    const vertices = places.map((_, at) => wallVertex(places, at, levelAt))
    return { ...ground, breaklines: [...lines, { id, kind, vertices }] }
  })
}

/** The plan with a line’s name or kind changed; a line that becomes a wall reads its levels anew. */
export function setLine(
  plan: Plan,
  id: string,
  change: { readonly name?: string; readonly kind?: Breakline['kind'] },
  levelAt: LevelAt,
): Outcome<Plan> {
  return onLine(plan, id, (line) => {
    const kind = change.kind ?? line.kind
    const name = change.name === undefined ? line.name : change.name.trim() || undefined
    if (kind === line.kind) return { ...line, name }
    if (kind === 'wall')
      return {
        id,
        kind,
        name,
        vertices: line.vertices.map((_, at) => wallVertex(line.vertices, at, levelAt)),
      }
    const vertices = line.vertices.map(({ eastM, northM }) => ({ eastM, northM }))
    return { id, kind, name, vertices: line.kind === 'wall' ? vertices : line.vertices }
  })
}

/**
 * The plan with a line’s points moved, added or taken out. Points that stay keep their levels; a new one takes its
 * level from the ground, or on a wall from the point before it.
 */
export function reshapeLine(plan: Plan, id: string, places: readonly PlanPoint[]): Outcome<Plan> {
  return onLine(plan, id, (line) =>
    line.kind === 'wall'
      ? { ...line, vertices: reshapedWall(line.vertices, places) }
      : { ...line, vertices: places.map((place, at) => kept(line.vertices, places, at) ?? place) },
  )
}

/** The plan with a figure of one point of a line changed. */
export function setVertex(plan: Plan, id: string, at: number, change: Partial<WallVertex & EdgeVertex>) {
  return onLine(plan, id, (line) => {
    const vertex = line.vertices[at]
    if (!vertex) return line
    return {
      ...line,
      vertices: changedAt<LineVertex>(line.vertices, at, { ...vertex, ...change }),
    } as Breakline
  })
}

/** The plan without a line. */
export function removeLine(plan: Plan, id: string): Outcome<Plan> {
  return onLevels(plan, (ground) => {
    const lines = ground.breaklines ?? []
    const at = lines.findIndex((line) => line.id === id)
    return at === -1 ? undefined : { ...ground, breaklines: without(lines, at) }
  })
}

function wallVertex(places: readonly PlanPoint[], at: number, levelAt: LevelAt): WallVertex {
  const here = places[at] ?? { eastM: 0, northM: 0 }
  const [before, after] = [places[at - 1] ?? here, places[at + 1] ?? here]
  const lengthM = Math.hypot(after.eastM - before.eastM, after.northM - before.northM) || 1
  const east = ((after.eastM - before.eastM) / lengthM) * BESIDE_WALL_M
  const north = ((after.northM - before.northM) / lengthM) * BESIDE_WALL_M
  const left = levelAt({ eastM: here.eastM - north, northM: here.northM + east })
  const right = levelAt({ eastM: here.eastM + north, northM: here.northM - east })
  const any = left ?? right ?? levelAt(here) ?? 0
  return { eastM: here.eastM, northM: here.northM, leftM: left ?? any, rightM: right ?? any }
}

/** The vertex that a place was, with its levels: by its place, else by its row while no row was added or taken. */
function kept<V extends PlanPoint>(
  vertices: readonly V[],
  places: readonly PlanPoint[],
  at: number,
): V | undefined {
  const place = places[at]
  if (!place) return undefined
  const same = vertices.find(({ eastM, northM }) => eastM === place.eastM && northM === place.northM)
  const row = vertices.length === places.length ? vertices[at] : undefined
  const vertex = same ?? row
  return vertex && { ...vertex, eastM: place.eastM, northM: place.northM }
}

function reshapedWall(vertices: readonly WallVertex[], places: readonly PlanPoint[]): WallVertex[] {
  const [first] = vertices
  let last = first ?? { eastM: 0, northM: 0, leftM: 0, rightM: 0 }
  return places.map(({ eastM, northM }, at) => {
    last = kept(vertices, places, at) ?? { ...last, eastM, northM }
    return last
  })
}

function onLine(plan: Plan, id: string, change: (line: Breakline) => Breakline): Outcome<Plan> {
  return onLevels(plan, (ground) => {
    const lines = ground.breaklines ?? []
    const at = lines.findIndex((line) => line.id === id)
    const line = lines[at]
    return line && { ...ground, breaklines: changedAt(lines, at, change(line)) }
  })
}

/** Triangles that came with the survey know nothing of a line drawn later, so they are joined anew. */
function onLevels(plan: Plan, change: (ground: LevelsSurvey) => LevelsSurvey | undefined): Outcome<Plan> {
  const { ground } = plan.survey
  if (ground.kind !== 'levels')
    return refused(
      'lines',
      'Lines bend a surface of spot levels, and this ground was not measured so.',
      'Turn it into spot levels on the Levels page first.',
    )
  const changed = change(ground)
  return changed ? withSurvey(plan, { ground: { ...changed, faces: undefined } }) : gone('line')
}
