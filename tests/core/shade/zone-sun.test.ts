import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cellCentre } from '#core/geometry'
import {
  darkSpell,
  directLight,
  placeSky,
  sunOnGround,
  zoneSun,
  type Shading,
  type SunTaker,
  type TiltedCells,
} from '#core/shade'
import { eachMonth, months, toDegrees, toRadians, type Twelve } from '#core/units'
import { daySun } from '../../../src/core/sun/day-sun'
import { representativeDays } from '../../../src/core/sun/representative-days'
import { sunAtHourAngle } from '../../../src/core/sun/sun-vector'
import { classes, levelScene, MIDDLE, thing, tiltedScene, wall } from './scenes'

const site = (latitudeDeg: number) => ({ latitudeDeg, elevationM: 100, linke: 3, albedo: 0.2 })
const usual = eachMonth(() => ({ levelWhPerM2: 3000, diffuseShare: 0.5 }))

/** Sun of zones: one zone over the whole plot when left out. */
function zonesOf(
  { shading, cells }: { shading: Shading; cells: TiltedCells },
  latitudeDeg: number,
  zoneOfCell = new Int16Array(shading.ground.levelM.length),
) {
  const sky = { site: site(latitudeDeg), usual }
  const sun = sunOnGround(shading, cells, sky)
  const count = Math.max(...zoneOfCell) + 1
  return zoneSun(shading, cells, sky, { zoneOfCell, count, sun, classes })
}

const hoursOf = (takers: readonly SunTaker[], what: SunTaker['what'], thingId?: string) =>
  takers.find((taker) => taker.what === what && taker.thingId === thingId)!.hours

const JUNE = 5
const DECEMBER = 11
/** Steps of a day are half an hour at most [h]. */
const STEP_H = 0.5

describe('the account of zoneSun', () => {
  /** Rounding of 32-bit sums over a day's steps [h]. */
  const ROUNDING_H = 1e-4

  it('property: hours on open level ground less what all takers take are the zone’s hours, in any scene', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    const place = fc.record({ eastM: number(-5, 26), northM: number(-5, 26) })
    const screen = fc.record({ from: place, to: place, topFromM: number(0, 9), topToM: number(0, 9) })
    const crown = fc
      .record({ at: place, radiusM: number(0.5, 4), baseM: number(0, 4), highM: number(0.5, 6) })
      .map(({ highM, ...rest }) => ({ ...rest, topM: rest.baseM + highM }))
    const standing = fc.record({
      screens: fc.array(screen, { maxLength: 3 }),
      crowns: fc.array(crown, { maxLength: 2 }),
      through: fc.oneof(fc.constantFrom(0, 1), number(0, 1)),
    })
    const scene = fc.record({
      latitudeDeg: number(-75, 75),
      slopeDeg: number(0, 50),
      aspectDeg: number(0, 360),
      bumps: number(0, 1),
      far: fc.array(fc.record({ azimuthDeg: number(0, 359), angleDeg: number(0, 40) }), { maxLength: 3 }),
      standing: fc.array(standing, { maxLength: 4 }),
    })
    fc.assert(
      fc.property(scene, ({ latitudeDeg, slopeDeg, aspectDeg, bumps, far, standing: things }) => {
        const all = things.map(({ through, ...parts }, at) => ({
          ...thing(String(at), [], through),
          ...parts,
        }))
        const plot = tiltedScene({ slopeDeg, aspectDeg }, all, far)
        plot.shading.ground.levelM.forEach(
          (_, cell, levels) => (levels[cell]! += bumps * Math.sin(cell * 1.7)),
        )
        const zoneOfCell = Int16Array.from({ length: 441 }, (_, cell) =>
          cell % 21 < 7 ? 0 : cell < 210 ? 1 : 2,
        )
        for (const { openHours, takers, sunHours, litShares } of zonesOf(plot, latitudeDeg, zoneOfCell))
          for (const month of months) {
            const taken = takers.map(({ hours }) => hours[month])
            expect(Math.min(...taken)).toBeGreaterThanOrEqual(0)
            const left = openHours[month] - taken.reduce((sum, one) => sum + one, 0)
            expect(Math.abs(left - sunHours[month])).toBeLessThan(ROUNDING_H)
            expect(Math.min(...litShares[month])).toBeGreaterThanOrEqual(0)
            expect(Math.max(...litShares[month])).toBeLessThanOrEqual(1)
          }
      }),
      { numRuns: 25 },
    )
  }, 60_000)

  it.each([
    [52, 60, 3],
    [52, 60, 4],
    [45, 70, 5],
  ] as const)(
    'Lee 1962 equivalent slope: %s° north, %s° to the north, month %s: its own slope takes the hours about noon',
    (latitudeDeg, slopeDeg, month) => {
      const [{ takers, openHours, sunHours }] = zonesOf(
        tiltedScene({ slopeDeg, aspectDeg: 0 }),
        latitudeDeg,
      ) as [ReturnType<typeof zonesOf>[number]]
      const { declinationRad } = daySun(representativeDays[month])
      const equivalent = toRadians(180 - latitudeDeg - slopeDeg)
      const behindH = (2 * toDegrees(Math.acos(Math.tan(declinationRad) * Math.tan(equivalent)))) / 15
      expect(Math.abs(hoursOf(takers, 'own-slope')[month] - behindH)).toBeLessThan(STEP_H)
      expect(hoursOf(takers, 'ground')[month]).toBeLessThan(0.1)
      expect(sunHours[month]).toBeLessThan(openHours[month])
    },
  )

  it('exact geometry: a slope towards the pole behind which the winter sun stays loses all to itself, none to its ground', () => {
    const [zone] = zonesOf(tiltedScene({ slopeDeg: 30, aspectDeg: 0 }), 52)
    expect(zone!.sunHours[DECEMBER]).toBe(0)
    expect(hoursOf(zone!.takers, 'own-slope')[DECEMBER]).toBeCloseTo(zone!.openHours[DECEMBER], 6)
    expect(hoursOf(zone!.takers, 'ground')[DECEMBER]).toBe(0)
  })

  it('exact geometry: a wall too high for the winter sun takes all of December, a hedge what it does not let through', () => {
    const [behindWall] = zonesOf(levelScene([thing('wall', [wall('south', 20, 40)])]), 52)
    expect(behindWall!.sunHours[DECEMBER]).toBe(0)
    expect(hoursOf(behindWall!.takers, 'thing', 'wall')[DECEMBER]).toBeCloseTo(
      behindWall!.openHours[DECEMBER],
      6,
    )
    const [behindHedge] = zonesOf(levelScene([thing('hedge', [wall('south', 20, 40)], 0.3)]), 52)
    const open = behindHedge!.openHours[DECEMBER]
    expect(hoursOf(behindHedge!.takers, 'thing', 'hedge')[DECEMBER]).toBeCloseTo(0.7 * open, 6)
    expect(behindHedge!.sunHours[DECEMBER]).toBeCloseTo(0.3 * open, 4)
    expect(behindHedge!.dappledHours[DECEMBER]).toBeCloseTo(open, 4)
  })

  it('exact geometry: two hedges one behind the other take together what each alone would leave to the other', () => {
    const hedges = [thing('near', [wall('south', 20, 40)], 0.5), thing('far', [wall('south', 25, 50)], 0.2)]
    const [{ takers, openHours, sunHours }] = zonesOf(levelScene(hedges), 52) as [
      ReturnType<typeof zonesOf>[number],
    ]
    expect(hoursOf(takers, 'several')[DECEMBER]).toBeCloseTo(0.9 * openHours[DECEMBER], 4)
    expect(hoursOf(takers, 'thing', 'near')[DECEMBER]).toBe(0)
    expect(hoursOf(takers, 'thing', 'far')[DECEMBER]).toBe(0)
    expect(sunHours[DECEMBER]).toBeCloseTo(0.1 * openHours[DECEMBER], 4)
  })

  it('exact geometry (15° an hour at the equator’s equinox): far hills 30° high take two hours of the morning', () => {
    const [zone] = zonesOf(
      levelScene(
        [],
        [
          { azimuthDeg: 0, angleDeg: 0 },
          { azimuthDeg: 45, angleDeg: 30 },
          { azimuthDeg: 135, angleDeg: 30 },
          { azimuthDeg: 180, angleDeg: 0 },
        ],
      ),
      0,
    )
    expect(Math.abs(hoursOf(zone!.takers, 'far')[2] - 2)).toBeLessThan(STEP_H)
    expect(Math.abs(zone!.sunHours[2] - 10)).toBeLessThan(STEP_H)
    expect(Math.abs(zone!.morningHours[2] - 4)).toBeLessThan(STEP_H)
  })

  it('exact geometry: a bank of the plot takes the hours that its height hides, from the level ground below it', () => {
    const plot = levelScene()
    plot.shading.ground.levelM.forEach((_, cell, levels) => (levels[cell] = cell >= 420 ? 30 : 0))
    // Away from the ends of the bank, past which the sun comes at half past eleven.
    const inside = (column: number) => column > 4 && column < 16
    const zoneOfCell = Int16Array.from({ length: 441 }, (_, cell) =>
      cell < 399 && inside(cell % 21) ? 0 : -1,
    )
    const [zone] = zonesOf(plot, 52, zoneOfCell)
    const noonAltitude = 38 + toDegrees(daySun(representativeDays[DECEMBER]).declinationRad)
    expect(20 * Math.tan(toRadians(noonAltitude))).toBeLessThan(30)
    expect(hoursOf(zone!.takers, 'ground')[DECEMBER]).toBeGreaterThan(4)
    expect(hoursOf(zone!.takers, 'own-slope')[DECEMBER]).toBe(0)
    expect(hoursOf(zone!.takers, 'several')[DECEMBER]).toBe(0)
    expect(zone!.litShares[DECEMBER][11]).toBe(0)
  })

  it('property: a mirrored plot has the same account, its hours turned about noon', () => {
    const scene = (side: 'east' | 'west') => zonesOf(levelScene([thing('wall', [wall(side, 12, 6)])]), 48)[0]!
    const [east, west] = [scene('east'), scene('west')]
    for (const month of months) {
      expect(east.sunHours[month]).toBeCloseTo(west.sunHours[month], 3)
      expect(east.sunHours[month] - east.morningHours[month]).toBeCloseTo(west.morningHours[month], 3)
      const inDay = (hours: Twelve<readonly number[]>) => hours[month]
      inDay(east.litShares).forEach((share, hour) =>
        expect(share).toBeCloseTo(inDay(west.litShares)[23 - hour]!, 5),
      )
    }
  })
})

describe('means of zoneSun', () => {
  const tree = {
    ...thing('tree', [], 0.2),
    crowns: [{ at: { eastM: 12, northM: 8 }, radiusM: 3, baseM: 1, topM: 7 }],
  }
  const plot = tiltedScene({ slopeDeg: 15, aspectDeg: 140 }, [tree, thing('wall', [wall('south', 11, 4)])])
  plot.shading.ground.share.forEach((_, cell, shares) => (shares[cell] = cell % 21 === 20 ? 0.4 : 1))

  it('property: zones weighted by plan area make up the whole plot', () => {
    const zoneOfCell = Int16Array.from({ length: 441 }, (_, cell) => (cell * 7) % 3)
    const parts = zonesOf(plot, 52, zoneOfCell)
    const [whole] = zonesOf(plot, 52)
    const areas = [0, 1, 2].map((zone) =>
      plot.shading.ground.share.reduce(
        (sum, share, cell) => (zoneOfCell[cell] === zone ? sum + share : sum),
        0,
      ),
    )
    const total = areas.reduce((sum, area) => sum + area, 0)
    const together = (value: (zone: (typeof parts)[number]) => number) =>
      parts.reduce((sum, zone, at) => sum + areas[at]! * value(zone), 0) / total
    expect(together((zone) => zone.skyView)).toBeCloseTo(whole!.skyView, 6)
    for (const month of months) {
      for (const name of ['sunHours', 'morningHours', 'dappledHours', 'usualWhPerM2'] as const)
        expect(together((zone) => zone[name][month])).toBeCloseTo(whole![name][month], 4)
      whole!.takers.forEach(({ hours }, at) =>
        expect(together((zone) => zone.takers[at]!.hours[month])).toBeCloseTo(hours[month], 6),
      )
      whole!.litShares[month].forEach((share, hour) =>
        expect(together((zone) => zone.litShares[month][hour]!)).toBeCloseTo(share, 6),
      )
    }
  })

  it('property: the share in the sun at the middle of an hour is what direct light reaches at that moment', () => {
    const level = levelScene([tree, thing('wall', [wall('south', 11, 4)])])
    const [zone] = zonesOf(level, 52)
    for (const month of [0, 5, 8] as const)
      for (const hour of [9, 12, 15]) {
        const { declinationRad } = daySun(representativeDays[month])
        const sun = sunAtHourAngle(toRadians(52), declinationRad, toRadians(15 * (hour - 11.5)))
        const light = directLight(level.shading, sun, month)
        const mean = light.reduce((sum, share) => sum + share, 0) / light.length
        expect(zone!.litShares[month][hour]).toBeCloseTo(mean, 5)
      }
  })

  it('reads winter darkness at the cell of the zone nearest to its middle', () => {
    // A zone in the shape of a horseshoe, whose middle lies outside it.
    const zoneOfCell = Int16Array.from({ length: 441 }, (_, cell) => {
      const [column, row] = [cell % 21, Math.floor(cell / 21)]
      return column < 3 || column > 17 || row < 3 ? 0 : 1
    })
    const [horseshoe, inside] = zonesOf(plot, 52, zoneOfCell)
    expect(horseshoe!.middle.northM).toBeGreaterThan(18)
    expect(inside!.middle.eastM).toBeCloseTo(10.5, 6)
    const { frame } = plot.shading.ground
    expect(
      [...zoneOfCell.keys()].some((cell) => cellCentre(frame, cell).eastM === horseshoe!.middle.eastM),
    ).toBe(true)
    for (const zone of [horseshoe!, inside!])
      expect(zone.dark).toEqual(darkSpell(placeSky(plot.shading, plot.cells, zone.middle)!, 52))
  })
})

describe('what follows from the sun of a zone', () => {
  it('common practice, no source: open ground has full sun; at midsummer of its own hemisphere', () => {
    expect(zonesOf(levelScene(), 52)[0]!.lightClass).toBe('full-sun')
    // Leaves from November to April: shade at the southern midsummer, none at the northern one.
    const through = eachMonth((month) => (month < 4 || month > 9 ? 0 : 1))
    const around = (['north', 'east', 'south', 'west'] as const).map((side) => wall(side, 11, 60))
    const hedge = { ...thing('hedge', around), through }
    expect(zonesOf(levelScene([hedge]), 52)[0]!.lightClass).toBe('full-sun')
    expect(zonesOf(levelScene([hedge]), -52)[0]!.lightClass).toBe('deep-shade')
  })

  it('own judgement: under leaves that let a quarter through it is dappled; a twentieth, deep shade', () => {
    const under = (through: number) =>
      zonesOf(
        levelScene([
          thing(
            'trees',
            (['north', 'east', 'south', 'west'] as const).map((side) => wall(side, 11, 60)),
            through,
          ),
        ]),
        52,
      )[0]!
    expect(under(0.25).lightClass).toBe('dappled')
    expect(under(0.05).lightClass).toBe('deep-shade')
    expect(under(0.25).sunHours[JUNE]).toBeCloseTo(0.25 * under(0.25).openHours[JUNE], 3)
  })

  it.each([
    [52, 20, 225, 0.804],
    [52, 20, 45, 0.3582],
    [46, 20, 25, 0.4609],
    [-52, 20, 315, 0.804],
  ])(
    'McCune & Keon 2002 equation 1: %s° latitude, %s° to %s°: heat load %s MJ/cm² a year in the open',
    (latitudeDeg, slopeDeg, aspectDeg, load) => {
      const [zone] = zonesOf(tiltedScene({ slopeDeg, aspectDeg }), latitudeDeg)
      expect(zone!.heatLoad).toBeCloseTo(load, 3)
      expect(zone!.heatLoadShaded! / zone!.heatLoad!).toBeCloseTo(1, 1)
    },
  )

  it('McCune & Keon 2002, and own judgement on shade: level open ground keeps all, a walled yard loses by its light', () => {
    const [open] = zonesOf(levelScene(), 45)
    expect(open!.heatLoadShaded).toBeCloseTo(open!.heatLoad!, 3)
    const yard = levelScene([
      thing(
        'walls',
        (['north', 'east', 'south', 'west'] as const).map((side) => wall(side, 11, 60)),
      ),
    ])
    const [zone] = zonesOf(yard, 45)
    const share = zone!.usualWhPerM2[JUNE] / open!.usualWhPerM2[JUNE]
    expect(share).toBeLessThan(0.5)
    expect(zone!.heatLoadShaded! / zone!.heatLoad!).toBeCloseTo(share, 1)
    expect(zonesOf(levelScene(), 61)[0]).toMatchObject({ heatLoad: undefined, heatLoadShaded: undefined })
  })

  it('refuses zones that do not fit the grid and zones without ground', () => {
    const { shading, cells } = levelScene()
    const sky = { site: site(52), usual }
    const sun = sunOnGround(shading, cells, sky)
    const of = (zoneOfCell: Int16Array, count: number) => () =>
      zoneSun(shading, cells, sky, { zoneOfCell, count, sun, classes })
    expect(of(new Int16Array(5), 1)).toThrow(/441 cells, got 5/)
    expect(of(new Int16Array(441), 2)).toThrow(/zone 1 has no cell/)
    expect(MIDDLE.eastM).toBe(zonesOf({ shading, cells }, 52)[0]!.middle.eastM)
  })
})
