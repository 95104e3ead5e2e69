import { valueOf, valuesOf, type DxfRecord } from './dxf-records'
import { numberOf } from './written-numbers'

/** A place in a drawing, in its own unit. */
export interface DxfPlace {
  readonly eastM: number
  readonly northM: number
  readonly levelM: number
}

type Three = readonly [number, number, number]

/** Nearer to the z axis than this a direction takes the y axis as its helper, by the DXF reference [ratio]. */
const NEAR_Z = 1 / 64

/** The place whose x has that group code; undefined when x or y is missing or one of the three is no number. */
export function placeOf(record: DxfRecord, code: number): DxfPlace | undefined {
  const eastM = figure(valueOf(record, code))
  const northM = figure(valueOf(record, code + 10))
  const levelM = figure(valueOf(record, code + 20) ?? '0')
  return eastM === undefined || northM === undefined || levelM === undefined
    ? undefined
    : { eastM, northM, levelM }
}

/** Corners of a lightweight polyline, all at its one level; undefined when one cannot be read. */
export function flatCorners(record: DxfRecord): DxfPlace[] | undefined {
  const levelM = figure(valueOf(record, 38) ?? '0')
  const east = valuesOf(record, 10)
  const north = valuesOf(record, 20)
  if (levelM === undefined || east.length !== north.length) return undefined
  const corners = east.flatMap((written, at): DxfPlace[] => {
    const [eastM, northM] = [figure(written), figure(north[at])]
    return eastM === undefined || northM === undefined ? [] : [{ eastM, northM, levelM }]
  })
  return corners.length === east.length ? corners : undefined
}

/**
 * The way from a flat entity's own axes to those of the drawing, looked up once for all its places.
 *
 * @param record - the entity, with its extrusion direction (group code 210)
 * @returns takes a place as written to its place in the drawing; mirrors where the entity is drawn from below
 */
export function toDrawing(record: DxfRecord): (place: DxfPlace) => DxfPlace {
  const z = extrusion(record)
  if (z === undefined || (z[0] === 0 && z[1] === 0 && z[2] > 0)) return (place) => place
  const nearZ = Math.abs(z[0]) < NEAR_Z && Math.abs(z[1]) < NEAR_Z
  const x = unit(cross(nearZ ? [0, 1, 0] : [0, 0, 1], z))
  if (x === undefined) return (place) => place
  const y = cross(z, x)
  return ({ eastM, northM, levelM }) => {
    const along = (axis: 0 | 1 | 2) => eastM * x[axis] + northM * y[axis] + levelM * z[axis] + 0
    return { eastM: along(0), northM: along(1), levelM: along(2) }
  }
}

/** Direction that an entity's own z axis points in; straight up when it is not given. */
function extrusion(record: DxfRecord): Three | undefined {
  const part = (code: number, usual: number) => figure(valueOf(record, code) ?? `${usual}`) ?? usual
  return unit([part(210, 0), part(220, 0), part(230, 1)])
}

const figure = (written: string | undefined) => (written === undefined ? undefined : numberOf(written.trim()))

function cross(a: Three, b: Three): Three {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

function unit(v: Three): Three | undefined {
  const length = Math.hypot(...v)
  return length > 0 ? [v[0] / length, v[1] / length, v[2] / length] : undefined
}
