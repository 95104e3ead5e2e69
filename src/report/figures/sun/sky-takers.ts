import { sunArc, type PlaceDay, type PlaceSky } from '#core/shade'
import { ownSlopeDeg } from './sky-shapes'

/** Who stands before the sun on one day, and for how long. */
export interface SkyTaker {
  readonly name: string
  readonly hours: number
}

/** Time between looks at what stands before the sun [h]: 2 min. */
const LOOK_H = 1 / 30

/**
 * What hides the sun from a place on a day: own slope, ground and far hills before things; of things in one line each is
 * named by all its time.
 */
export function skyTakers(sky: PlaceSky, latitudeDeg: number, day: PlaceDay): readonly SkyTaker[] {
  const { riseH, setH, at } = sunArc(latitudeDeg, day.dayOfYear)
  const clear = (hour: number) =>
    day.spells.some(({ fromH, toH, through }) => through === 1 && hour >= fromH && hour <= toH)
  const times = new Map<string, number>()
  const looks = Math.ceil((setH - riseH) / LOOK_H)
  const stepH = (setH - riseH) / Math.max(1, looks)
  for (let look = 0; look < looks; look += 1) {
    const hour = riseH + (look + 0.5) * stepH
    if (clear(hour)) continue
    for (const name of before(sky, at(hour))) times.set(name, (times.get(name) ?? 0) + stepH)
  }
  return [...times].map(([name, hours]) => ({ name, hours })).sort((one, other) => other.hours - one.hours)
}

function before(
  sky: PlaceSky,
  { azimuthDeg, altitudeDeg }: { readonly azimuthDeg: number; readonly altitudeDeg: number },
): string[] {
  const nearest = Math.round(azimuthDeg) % 360
  if (altitudeDeg <= ownSlopeDeg(sky, azimuthDeg)) return ['its own slope']
  if (altitudeDeg < (sky.groundDeg[nearest] ?? 0)) return ['ground of the plot']
  if (altitudeDeg <= (sky.farDeg[nearest] ?? 0)) return ['far hills']
  return sky.things
    .filter(
      ({ lowDeg, highDeg }) =>
        altitudeDeg >= (lowDeg[nearest] ?? NaN) && altitudeDeg <= (highDeg[nearest] ?? NaN),
    )
    .map(({ name }) => name)
}
