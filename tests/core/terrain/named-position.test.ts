import { describe, expect, it } from 'vitest'
import { namedPositionOf, namedPositions, terrainOf } from '#core/terrain'
import { surfaceOf } from './grids'
import { squarePlot, turnedPlot, turnings, hilly } from './turned'

const size = { columns: 11, rows: 81, cellM: 0.5 }
const names = (classes: Uint8Array) => [...classes].map((place) => namedPositions[place - 1])

describe('named positions', () => {
  it('Ruhe 1975 and Schoeneberger 2012 (from memory): down a hillside come crest, shoulder, backslope, footslope, toe', () => {
    const hill = surfaceOf(size, (_e, n) => 4 * Math.sin((Math.PI * n) / 40.5))
    const down = names(namedPositionOf(hill, terrainOf(hill))).filter((_, cell) => cell % 11 === 5)
    const order = down.filter((name, at) => name !== down[at - 1])
    expect(order).toEqual(['crest', 'shoulder', 'backslope', 'footslope', 'toe'])
  })

  it('exact solution: a plane has no shoulder and no footslope', () => {
    const plane = surfaceOf(size, (_e, n) => 0.2 * n)
    const found = new Set(names(namedPositionOf(plane, terrainOf(plane))))
    expect([...found].sort()).toEqual(['backslope', 'crest', 'toe'])
  })

  it.each(turnings)('property: a plot %s has as many cells of each', (_name, turn) => {
    const counts = (plot: ReturnType<typeof squarePlot>) =>
      names(namedPositionOf(plot, terrainOf(plot))).sort()
    expect(counts(turnedPlot(31, hilly, turn))).toEqual(counts(squarePlot(31, hilly)))
  })
})
