import { Body, Equator, Horizon, MakeTime, Observer, SearchHourAngle } from 'astronomy-engine'
import { describe, expect, it } from 'vitest'
import { darkSpell, placeSky, type DarkSpell, type FarPoint, type Standing } from '#core/shade'
import { levelScene, MIDDLE, thing, tiltedScene, wall } from './scenes'

/** Our declination repeats every year; the calendar's leap days move the real one by half a day to and fro [d]. */
const DAYS = 2

/** True height of the noon sun at 0° of longitude on every day of 2027, bending of light left out [°]. */
function noonAltitudesDeg(latitudeDeg: number): number[] {
  const observer = new Observer(latitudeDeg, 0, 0)
  return Array.from({ length: 365 }, (_, day) => {
    const start = MakeTime(new Date(Date.UTC(2027, 0, 1 + day, 6)))
    const { time } = SearchHourAngle(Body.Sun, observer, 0, start)
    const { ra, dec } = Equator(Body.Sun, time, observer, true, true)
    return Horizon(time, observer, ra, dec).altitude
  })
}

/** Longest run of days on which the noon sun stays below a height, over the turn of the year. */
function runBelow(latitudeDeg: number, heightDeg: number) {
  const below = noonAltitudesDeg(latitudeDeg).map((altitude) => altitude < heightDeg)
  const starts = below.flatMap((is, day) => (is && !below[(day + 364) % 365] ? [day] : []))
  const lengths = starts.map((start) => {
    let days = 0
    while (below[(start + days) % 365]) days += 1
    return days
  })
  const days = Math.max(...lengths)
  const start = starts[lengths.indexOf(days)]!
  return { lastDay: ((start + 364) % 365) + 1, firstDay: ((start + days) % 365) + 1, days }
}

function spellOf(
  latitudeDeg: number,
  standing: readonly Standing[],
  far: readonly FarPoint[] = [],
): DarkSpell {
  const { shading, cells } = levelScene(standing, far)
  return darkSpell(placeSky(shading, cells, MIDDLE)!, latitudeDeg)
}

function expectNear(found: DarkSpell, truth: ReturnType<typeof runBelow>): void {
  if (found.kind !== 'spell') throw new Error(`no spell but ${found.kind}`)
  expect(Math.abs(found.lastDay - truth.lastDay)).toBeLessThanOrEqual(DAYS)
  expect(Math.abs(found.firstDay - truth.firstDay)).toBeLessThanOrEqual(DAYS)
  expect(Math.abs(found.days - truth.days)).toBeLessThanOrEqual(2 * DAYS)
}

describe('darkSpell', () => {
  // Over a straight wall to the south the winter sun is highest at noon, when it stands above its foot.
  it.each([
    [52, 5, 10],
    [52, 3, 10],
    [45, 5, 10],
    [60, 2, 10],
  ])(
    'astronomy-engine noon heights, exact geometry: %s° north, a long wall %s m high and %s m to the south',
    (latitudeDeg, highM, awayM) => {
      const truth = runBelow(latitudeDeg, (Math.atan(highM / awayM) * 180) / Math.PI)
      expect(truth.days).toBeGreaterThan(20)
      expectNear(spellOf(latitudeDeg, [thing('wall', [wall('south', awayM, highM)])]), truth)
    },
  )

  it('astronomy-engine noon heights, exact geometry: 40° south, a long wall 6 m high and 10 m to the north', () => {
    const truth = runBelow(-40, (Math.atan(6 / 10) * 180) / Math.PI)
    expect(truth.lastDay).toBeLessThan(truth.firstDay)
    expectNear(spellOf(-40, [thing('wall', [wall('north', 10, 6)])]), truth)
  })

  it.each([70, 75, -68.5])(
    'astronomy-engine noon heights: polar night at %s°, in the open',
    (latitudeDeg) => {
      expectNear(spellOf(latitudeDeg, []), runBelow(latitudeDeg, 0))
    },
  )

  it('astronomy-engine noon heights: at the pole half the year is night', () => {
    expectNear(spellOf(90, []), runBelow(89.99, 0))
  })

  it('exact geometry: a steep bank to the north has no sun while the noon sun stands lower than the bank', () => {
    const { shading, cells } = tiltedScene({ slopeDeg: 30, aspectDeg: 0 })
    expectNear(darkSpell(placeSky(shading, cells, MIDDLE)!, 52), runBelow(52, 30))
  })

  it('exact geometry: none in the open, always where hills stand higher than the sun ever does', () => {
    expect(spellOf(52, [])).toEqual({ kind: 'none' })
    expect(spellOf(0, [])).toEqual({ kind: 'none' })
    const around = (angleDeg: number) => [{ azimuthDeg: 0, angleDeg }]
    expect(spellOf(52, [], around(62))).toEqual({ kind: 'always' })
    expect(spellOf(52, [], around(60)).kind).toBe('spell')
  })

  it('own judgement: through leaves a day has sun where a tenth gets through', () => {
    const hedge = (through: number) => spellOf(52, [thing('hedge', [wall('south', 10, 5)], through)]).kind
    expect(hedge(0.1)).toBe('none')
    expect(hedge(0.09)).toBe('spell')
  })
})
