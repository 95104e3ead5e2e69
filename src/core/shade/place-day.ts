import { monthOfDay, placeLight } from './place-light'
import { sunArc } from './place-sun'
import type { PlaceDay, PlaceSky } from './shade.types'

/** Time between looks for a change of light [h]: 2 min, half a degree of the earth's turn. */
const LOOK_H = 1 / 30
/** Change of light is found to this time [h]: 1 s. */
const EDGE_H = 1 / 3600

/**
 * Sun at one place on a clear day.
 *
 * @param sky - the sky from the place
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @param dayOfYear - day counted from 1 January without a leap day [d], 1 to 366
 * @returns times with direct sun [h by the sun] and what comes through, and hours of sun [h]
 * @throws RangeError when the latitude is off the globe or the day not in the year
 */
export function placeDay(sky: PlaceSky, latitudeDeg: number, dayOfYear: number): PlaceDay {
  const { riseH, setH, at } = sunArc(latitudeDeg, dayOfYear)
  const light = placeLight(sky, monthOfDay(dayOfYear))
  const lightAt = (hour: number) => {
    const { sun, azimuthDeg, altitudeDeg } = at(hour)
    return light(sun, azimuthDeg, altitudeDeg)
  }
  const spells = stretches(lightAt, riseH, setH).filter(({ through }) => through > 0)
  const sunHours = spells.reduce((sum, { fromH, toH, through }) => sum + (toH - fromH) * through, 0)
  return { dayOfYear, spells, sunHours }
}

// Cuts the time from rise to set where the light changes.
function stretches(lightAt: (hour: number) => number, riseH: number, setH: number): PlaceDay['spells'] {
  const looks = Math.ceil((setH - riseH) / LOOK_H)
  const found: { fromH: number; toH: number; through: number }[] = []
  let fromH = riseH
  let through = looks > 0 ? lightAt(riseH) : 0
  let last = riseH
  for (let look = 1; look <= looks; look += 1) {
    const next = riseH + ((setH - riseH) * look) / looks
    const light = lightAt(next)
    while (light !== through && last < next) {
      const edge = edgeOf(lightAt, last, next, through)
      found.push({ fromH, toH: edge.untilH, through })
      through = lightAt(edge.sinceH)
      fromH = edge.untilH
      last = edge.sinceH
    }
    last = next
  }
  return looks > 0 ? [...found, { fromH, toH: setH, through }] : []
}

// The moment between two looks up to which the light stays as it was.
function edgeOf(lightAt: (hour: number) => number, sameH: number, otherH: number, through: number) {
  let [untilH, sinceH] = [sameH, otherH]
  while (sinceH - untilH > EDGE_H) {
    const middle = (untilH + sinceH) / 2
    if (lightAt(middle) === through) untilH = middle
    else sinceH = middle
  }
  return { untilH, sinceH }
}
