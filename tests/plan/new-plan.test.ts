import { expect, it } from 'vitest'
import { distanceKm, nearestPlace, newPlan, openPlan, savePlan } from '#plan'
import { bank, planOn, tables } from './plans'

it('a new plan is sound: it saves and opens', () => {
  const plan = planOn(bank)
  expect(openPlan(savePlan(plan))).toEqual({ ok: true, value: plan })
})

it('exact: a degree of latitude on a sphere of 6371.0088 km (IUGG mean radius) is 111.195 km', () => {
  expect(distanceKm({ latitudeDeg: 10, longitudeDeg: 5 }, 11, 5)).toBeCloseTo(111.195, 3)
  expect(distanceKm({ latitudeDeg: 0, longitudeDeg: 179.5 }, 0, -179.5)).toBeCloseTo(111.195, 3)
})

it('takes the climate of the nearest listed place', () => {
  const [place] = tables.places
  if (!place) throw new Error('no places')
  expect(nearestPlace(tables.places, place.latitudeDeg + 0.01, place.longitudeDeg)).toBe(place)
  expect(() => nearestPlace([], 0, 0)).toThrow(RangeError)
})

it.each([
  [51, -3, 'british-isles'],
  [48, 9, 'europe'],
  [41, -80, 'north-america'],
  [-38, 145, 'australia-nz'],
])('at %d, %d plants are looked for in %s', (latitudeDeg, longitudeDeg, region) => {
  const plan = newPlan({ name: 'x', ground: bank, latitudeDeg, longitudeDeg, places: tables.places })
  expect(plan.site.plantRegion).toBe(region)
})
