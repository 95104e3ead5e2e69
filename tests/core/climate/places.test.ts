import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { climateOfPlace, climateSchema, climateYear, placeSchema, type Place } from '#core/climate'
import { daysInMonth, months } from '#core/units'

const path = new URL('../../../data/climate/places.json', import.meta.url)
const places = z.array(placeSchema).parse(JSON.parse(readFileSync(path, 'utf8')))

const placeCalled = (id: string): Place => {
  const found = places.find((place) => place.id === id)
  if (found === undefined) throw new Error(`no place ${id}`)
  return found
}

const yearAt = (place: Place) => climateYear(climateOfPlace(place), place)

const KWH_PER_MJ = 1 / 3.6

describe('typical places', () => {
  it('has one row for each place, in both hemispheres', () => {
    expect(new Set(places.map((place) => place.id)).size).toBe(places.length)
    expect(places.length).toBeGreaterThanOrEqual(24)
    expect(places.filter((place) => place.latitudeDeg < 0).length).toBeGreaterThanOrEqual(8)
  })

  it('common practice, no source: July is warmest or nearly so north of the equator, January south of it', () => {
    for (const { id, latitudeDeg, months: normals } of places) {
      const [january, july] = [normals[0]!.tMaxC, normals[6]!.tMaxC]
      expect(latitudeDeg > 0 ? july > january : january > july, id).toBe(true)
    }
  })

  it.each([
    ['london', 600],
    ['edinburgh', 725],
    ['bergen', 2490],
    ['madrid', 425],
    ['berlin', 580],
    ['new-york', 1260],
    ['seattle', 1000],
    ['denver', 370],
    ['sydney', 1150],
    ['christchurch', 600],
    ['tokyo', 1600],
  ])('from memory of the services’ yearly normals: %s has some %s mm of rain', (id, rainMm) => {
    const total = placeCalled(id).months.reduce<number>((sum, month) => sum + month.rainMm, 0)
    expect(Math.abs(total / rainMm - 1)).toBeLessThan(0.05)
  })

  /** Radiation on level ground [kWh/m² a year], from memory of solar atlases. */
  const atlas = [
    ['london', 1000],
    ['cardiff', 1060],
    ['uccle', 1050],
    ['berlin', 1060],
    ['madrid', 1700],
    ['rome', 1550],
    ['stockholm', 980],
    ['oslo', 930],
    ['bergen', 770],
    ['new-york', 1450],
    ['seattle', 1230],
    ['denver', 1750],
    ['sydney', 1650],
    ['auckland', 1530],
    ['tokyo', 1330],
  ] as const

  it('from memory of solar atlases: the year’s radiation estimated from temperature is within 30 % everywhere and 15 % at most places', () => {
    const misses = atlas.map(([id, kwhPerM2]) => {
      const year = yearAt(placeCalled(id))
      const mj = months.reduce<number>((sum, month) => sum + year[month].solarMjPerM2 * daysInMonth[month], 0)
      return Math.abs((mj * KWH_PER_MJ) / kwhPerM2 - 1)
    })
    expect(Math.max(...misses)).toBeLessThan(0.3)
    expect(misses.filter((miss) => miss < 0.15).length).toBeGreaterThan(atlas.length / 2)
  })

  it.each([
    ['london', 32],
    ['berlin', 72],
    ['minneapolis', 150],
    ['chicago', 120],
  ])('from memory of the services’ counts: %s has some %s nights of air frost', (id, nights) => {
    const total = yearAt(placeCalled(id)).reduce((sum, month) => sum + month.frostNights, 0)
    expect(Math.abs(total / nights - 1)).toBeLessThan(0.15)
  })

  it('gives a climate that a plan may hold', () => {
    for (const place of places) expect(climateSchema.parse(climateOfPlace(place)).place).toBe(place.name)
  })

  it.each([
    ['london', 600, 800],
    ['aberdeen', 450, 620],
    ['berlin', 600, 800],
    ['madrid', 1000, 1400],
    ['chicago', 800, 1150],
  ])(
    'from memory of FAO climate data: reference evapotranspiration of %s is %s to %s mm a year',
    (id, from, to) => {
      const year = yearAt(placeCalled(id))
      const total = months.reduce<number>(
        (sum, month) => sum + year[month].referenceEtMmPerDay * daysInMonth[month],
        0,
      )
      expect(total).toBeGreaterThan(from)
      expect(total).toBeLessThan(to)
    },
  )
})
