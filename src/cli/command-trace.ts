import type { PlanPoint } from '#core/geometry'
import { catchmentOf, dropPath, levelOfPlaceM, plotCellAt, steepestLine } from '#core/terrain'
import { windName } from '#core/units'
import { withUnit } from '#report'
import type { Findings } from '#plan'
import type { Arguments } from './arguments'
import { complainOf, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import { offThePlot, placeOf } from './place-option'
import { assessFile } from './read-plan'
import { plain } from './text-layout'

/** What there is to say of the ground at one place: its level and fall, where its water goes and comes from. */
export function trace(given: Arguments, console: Console): number {
  const [file] = given.words
  const at = placeOf(given.text('at'))
  if (file === undefined || !at)
    throw new UsageError('trace needs a plan and --at EAST,NORTH in plot metres.')
  const assessed = assessFile(file)
  if (!assessed.ok) return complainOf(assessed.problems, console)
  const traced = tracedAt(assessed.value.findings, at)
  if (!traced) return complainOf([offThePlot(at)], console)
  console.print(given.flag('json') ? JSON.stringify(traced, null, 1) : traceText(traced).join('\n'))
  return exitCodes.done
}

type Traced = NonNullable<ReturnType<typeof tracedAt>>

function tracedAt({ surface, terrain, accuracy }: Findings, at: PlanPoint) {
  const cell = plotCellAt(surface, at)
  const drop = dropPath(surface, terrain, at)
  const catchment = catchmentOf(surface, terrain, at)
  const line = steepestLine(surface, terrain, at)
  if (cell === undefined || !drop || !catchment || !line) return undefined
  const facesDeg = terrain.aspectDeg[cell]!
  const drainedM2 = terrain.upslopeAreaM2[cell]!
  return {
    at,
    levelM: rounded(levelOfPlaceM(surface, terrain, at), 3),
    levelErrorM: rounded(accuracy.levelSdM[cell]!, 3),
    slopeDeg: rounded(terrain.slopeDeg[cell]!, 2),
    slopeErrorDeg: rounded(accuracy.slopeSdDeg[cell]!, 2),
    facesDeg: facesDeg < 0 ? null : rounded(facesDeg, 1),
    drop: {
      lengthM: rounded(drop.lengthM, 2),
      ends: drop.ends,
      points: drop.points.map(({ eastM, northM, levelM }) => ({
        eastM: rounded(eastM, 3),
        northM: rounded(northM, 3),
        levelM: rounded(levelM, 3),
      })),
    },
    steepestLine: {
      lengthM: rounded(line.lengthM, 2),
      fallM: rounded(line.fallM, 3),
      aboveM: rounded(line.placeM, 2),
    },
    drainingM2: rounded(catchment.areaM2, 2),
    drainingBeyondM2: rounded(Math.max(0, drainedM2 - catchment.areaM2), 2),
  }
}

// Adding 0 turns -0 into 0.
const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals)) + 0

const endWords: Readonly<Record<Traced['drop']['ends'], string>> = {
  boundary: 'leaves the plot over its boundary',
  hole: 'runs into a part of the plot that is no ground',
  stands: 'stands, as nothing around is lower',
}

function traceText(traced: Traced): readonly string[] {
  const { drop, steepestLine: line, facesDeg } = traced
  const end = drop.points.at(-1)
  const beyond =
    traced.drainingBeyondM2 > 0
      ? ` and ${withUnit(traced.drainingBeyondM2, 'm²', 1)} beyond the boundary`
      : ''
  return [
    `Level     ${withUnit(traced.levelM, 'm', 3)}, standard error ${withUnit(traced.levelErrorM, 'm', 3)}`,
    `Gradient  ${withUnit(traced.slopeDeg, '°', 1)}, standard error ${withUnit(traced.slopeErrorDeg, '°', 1)}`,
    `Faces     ${facesDeg === null ? 'nowhere, it is level' : `${windName(facesDeg)}, ${withUnit(facesDeg, '°', 0)}`}`,
    `A drop    runs ${withUnit(drop.lengthM, 'm', 1)} and ${endWords[drop.ends]}${
      end ? `, at east ${end.eastM.toFixed(1)} m, north ${end.northM.toFixed(1)} m` : ''
    }`,
    `The line  of steepest fall through here is ${withUnit(line.lengthM, 'm', 1)} long and falls ${withUnit(line.fallM, 'm', 2)}`,
    `Draining  ${withUnit(traced.drainingM2, 'm²', 1)} of the plot${beyond} drain through here`,
  ].map(plain)
}
