import type { Breakline, LevelsSurvey } from '#core/survey'
import type { Outcome } from '#core/units'
import { plotFrameOf, type PlotFrame } from './plot-frame'
import { refusal } from './refusal'
import { rangeOf } from './spread'
import type { SurveyGround, SurveyPart, SurveyRead, SurveyWindow, SurveyWish } from './survey-read.types'

/**
 * Spot levels, lines and triangles of the chosen parts, in metres and in the plot's own frame.
 *
 * @param parts - groups of points, or one surface
 * @param read - the file
 * @param wish - what the person confirmed
 * @returns the ground, or why it cannot be kept
 */
export function levelsGround(
  parts: readonly SurveyPart[],
  read: SurveyRead,
  wish: SurveyWish,
): Outcome<SurveyGround> {
  const merged = mergedParts(parts, wish)
  if (merged.points.length < 3)
    return refusal(
      'points',
      `Only ${merged.points.length} points with a level.`,
      'At least 3 are needed. Choose another part, or add its points.',
    )
  const frame = plotFrameOf(boxOf(merged.points), read, wish)
  if (!frame.ok) return frame
  const { shift, site, notes } = frame.value
  const boundary = merged.boundary?.map(({ eastM, northM }) => frame.value.toPlot(eastM, northM))
  return {
    ok: true,
    value: {
      ground: levelsIn(frame.value, merged),
      boundary,
      shift,
      site,
      notes: [...notes, ...merged.notes],
    },
  }
}

interface Merged extends Pick<SurveyPart, 'points' | 'faces' | 'breaklines' | 'boundary'> {
  readonly notes: readonly string[]
}

function mergedParts(parts: readonly SurveyPart[], wish: SurveyWish): Merged {
  const all = parts.flatMap(({ points }) => points)
  const stays = all.map(({ levelM }) => wish.zeroLevels !== 'leave-out' || levelM !== 0)
  const points = all.filter((_, at) => stays[at])
  const left = all.length - points.length
  return {
    points,
    faces: parts.length === 1 ? facesOf(parts[0]?.faces ?? [], stays) : [],
    breaklines: uniqueLines(parts.flatMap(({ breaklines }) => breaklines)),
    boundary: parts.find(({ boundary }) => boundary !== undefined)?.boundary,
    notes: left > 0 ? [`Points with a level of exactly 0 were left out: ${left}.`] : [],
  }
}

/** Triangles among the points that stay, by their new rows. */
function facesOf(faces: SurveyPart['faces'], stays: readonly boolean[]): SurveyPart['faces'] {
  let next = 0
  const rows = stays.map((stay) => (stay ? next++ : -1))
  return faces.flatMap(([one, two, three]): SurveyPart['faces'] => {
    const [a = -1, b = -1, c = -1] = [rows[one], rows[two], rows[three]]
    return a < 0 || b < 0 || c < 0 ? [] : [[a, b, c]]
  })
}

/** Lines of several parts may share an id; each part's are its own. */
function uniqueLines(lines: SurveyPart['breaklines']): SurveyPart['breaklines'] {
  const seen = new Set<string>()
  return lines.map((line) => {
    let id = line.id
    for (let more = 2; seen.has(id); more++) id = `${line.id}-${more}`
    seen.add(id)
    return { ...line, id }
  })
}

function boxOf(points: SurveyPart['points']): SurveyWindow {
  const east = rangeOf(points.map(({ eastM }) => eastM))
  const north = rangeOf(points.map(({ northM }) => northM))
  return { west: east.lowest, east: east.highest, south: north.lowest, north: north.highest }
}

function levelsIn(frame: PlotFrame, merged: Merged): LevelsSurvey {
  const { toPlot, levelLengthM } = frame
  const points = merged.points.map(({ eastM, northM, levelM, ...names }) => ({
    ...names,
    ...toPlot(eastM, northM),
    levelM: levelM * levelLengthM,
  }))
  return {
    kind: 'levels',
    points,
    ...(merged.breaklines.length > 0
      ? { breaklines: merged.breaklines.map((line) => lineIn(frame, line)) }
      : {}),
    ...(merged.faces.length > 0 ? { faces: merged.faces } : {}),
  }
}

function lineIn({ toPlot, levelLengthM }: PlotFrame, line: Breakline): Breakline {
  if (line.kind === 'wall')
    return {
      ...line,
      vertices: line.vertices.map(({ eastM, northM, leftM, rightM }) => ({
        ...toPlot(eastM, northM),
        leftM: leftM * levelLengthM,
        rightM: rightM * levelLengthM,
      })),
    }
  return {
    ...line,
    vertices: line.vertices.map(({ eastM, northM, levelM }) => ({
      ...toPlot(eastM, northM),
      ...(levelM === undefined ? {} : { levelM: levelM * levelLengthM }),
    })),
  }
}
