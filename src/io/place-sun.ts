import { darkSpell, placeDay, placeSky, type PlaceDay, type PlaceSky } from '#core/shade'
import type { PlanPoint } from '#core/geometry'
import { plotCellAt } from '#core/terrain'
import { clockOf, shadingOf, type Findings, type Plan } from '#plan'
import { classNames, darkBody, dateText } from './sun-body'
import { steeringDays, type NamedDay } from './steering-days'

/** The sun from one place as exports tell it. */
export type PlaceSunBody = NonNullable<ReturnType<typeof placeSun>>

/** A date asked for. */
export interface AskedDate {
  readonly dayOfYear: number
  /** Calendar year whose clock rules count; the program's own when left out. */
  readonly year?: number | undefined
}

/** Directions between lines of a skyline table [°]. */
const TABLE_STEP_DEG = 15

/**
 * Sun and sky from one place: its hours on the days that gardeners steer by, its winter, and its skyline.
 *
 * @param plan - the plan
 * @param findings - what follows from it
 * @param at - the place in plan [m]
 * @param date - a further day, where one is asked for
 * @returns the place's sun; undefined when it is off the plot
 */
export function placeSun(plan: Plan, findings: Findings, at: PlanPoint, date?: AskedDate) {
  const { latitudeDeg } = plan.site
  const sky = placeSky(shadingOf(plan, findings), findings.terrain, at)
  if (!sky) return undefined
  const asked: NamedDay[] = date ? [{ name: 'asked', dayOfYear: date.dayOfYear }] : []
  return {
    at,
    levelM: sky.levelM,
    slopeDeg: sky.slopeDeg,
    facesDeg: sky.aspectDeg < 0 ? null : sky.aspectDeg,
    ...zoneAt(findings, at),
    days: [...steeringDays(latitudeDeg), ...asked].map(({ name, dayOfYear }) =>
      dayBody(name, placeDay(sky, latitudeDeg, dayOfYear), { plan, year: date?.year }),
    ),
    dark: darkBody(darkSpell(sky, latitudeDeg)),
    skyline: skylineTable(sky),
  }
}

const noZone = { zoneId: null, letter: null, className: null }

function zoneAt({ surface, zoning, zoneSun }: Findings, at: PlanPoint) {
  const index = zoning.zoneOfCell[plotCellAt(surface, at) ?? -1] ?? -1
  const [zone, sun] = [zoning.zones[index], zoneSun[index]]
  if (!zone || !sun) return noZone
  return {
    zoneId: zone.id,
    letter: zone.letter,
    className: classNames().get(sun.lightClass) ?? sun.lightClass,
  }
}

interface Calendar {
  readonly plan: Plan
  readonly year: number | undefined
}

function dayBody(
  name: string,
  { dayOfYear, spells, sunHours }: PlaceDay,
  { plan: { site }, year }: Calendar,
) {
  const clock = (hour: number) => clockOf(hour, dayOfYear, site, year) ?? null
  return {
    name,
    dayOfYear,
    date: dateText(dayOfYear),
    sunHours,
    spells: spells.map(({ fromH, toH, through }) => ({
      fromH,
      toH,
      through,
      fromClock: clock(fromH),
      toClock: clock(toH),
    })),
  }
}

function skylineTable({ groundDeg, farDeg, things }: PlaceSky) {
  const directions = Array.from({ length: 360 / TABLE_STEP_DEG }, (_, step) => step * TABLE_STEP_DEG)
  return directions.map((azimuthDeg) => ({
    azimuthDeg,
    groundDeg: groundDeg[azimuthDeg]!,
    farDeg: farDeg[azimuthDeg]!,
    things: things.flatMap(({ id, name, lowDeg, highDeg }) => {
      const [fromDeg, toDeg] = [lowDeg[azimuthDeg]!, highDeg[azimuthDeg]!]
      return toDeg > 0 ? [{ thingId: id, name, fromDeg: Math.max(0, fromDeg), toDeg }] : []
    }),
  }))
}
