import { describe, expect, it } from 'vitest'
import type { LevelsSurvey, Surface } from '#core/survey'
import { loadTables } from '#io'
import { createDeriver, openPlan, type Backdrop, type Plan } from '#plan'
import {
  backdropEnds,
  bearingFromNorth,
  draggedBackdrop,
  layBackdrop,
  northOnPictureDeg,
  pictureToPlot,
  placementOf,
} from '../../src/app/edits/backdrop'
import { addBeyond, removeBeyond, setBeyond } from '../../src/app/edits/beyond'
import { sortNotes } from '../../src/app/edits/level-notes'
import { addLevel, levelName, removeLevel, setLevel } from '../../src/app/edits/levels'
import { addLine, linesOf, removeLine, reshapeLine, setLine, setVertex } from '../../src/app/edits/lines'
import { pickPlaced, snapped } from '../../src/app/edits/pick-placed'
import { addHole, removeHole, setBoundary, setHole } from '../../src/app/edits/rings'
import {
  acrossFrom,
  addSection,
  drawLarge,
  removeSection,
  setLargeSection,
  setSection,
} from '../../src/app/edits/sections'
import { addThing, linesUp, removeThing, setThing } from '../../src/app/edits/things'
import { toLevels, toProfile } from '../../src/app/edits/to-levels'
import { addViewpoint, removeViewpoint, setViewpoint } from '../../src/app/edits/viewpoints'
import { demoPlan } from './demo-plan'

const at = (eastM: number, northM: number) => ({ eastM, northM })
const square = [at(0, 0), at(10, 0), at(10, 10), at(0, 10)]

/** Ground that rises a metre for every ten northward, measured at the corners of a square of 10 m. */
const levels: LevelsSurvey = {
  kind: 'levels',
  points: square.map((place, row) => ({ ...place, levelM: 50 + place.northM / 10, mark: `P${row + 1}` })),
}
const withGround = (ground: Plan['survey']['ground']): Plan => {
  const plan = demoPlan()
  return { ...plan, trials: [], survey: { ground, obstacles: [], aboveM: 0 } }
}
const plan = withGround(levels)
const planeAt = ({ northM }: { readonly northM: number }) => 50 + northM / 10

/** The plan after an edit; it must open again as it is. */
function after(outcome: ReturnType<typeof setLevel>): Plan {
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  const opened = openPlan(JSON.stringify(outcome.value))
  if (!opened.ok) throw new Error(opened.problems.map(({ where, what }) => `${where}: ${what}`).join(' '))
  return opened.value
}
const refusal = (outcome: ReturnType<typeof setLevel>) => (outcome.ok ? '' : outcome.problems[0]?.what)
const pointsOf = ({ survey }: Plan) => (survey.ground.kind === 'levels' ? survey.ground.points : [])

describe('levels', () => {
  it('are moved, changed, added and taken out, each alone', () => {
    expect(pointsOf(after(setLevel(plan, 1, { eastM: 9 })))[1]).toEqual({ ...levels.points[1], eastM: 9 })
    expect(pointsOf(after(setLevel(plan, 2, { levelM: 51.2 })))[2]?.levelM).toBe(51.2)
    expect(pointsOf(after(addLevel(plan, { ...at(5, 5), levelM: 50.5 }))).at(-1)).toMatchObject(at(5, 5))
    expect(pointsOf(after(removeLevel(plan, 0))).map(({ mark }) => mark)).toEqual(['P2', 'P3', 'P4'])
    expect([levelName(levels.points[0], 0), levelName({ ...at(0, 0), levelM: 0 }, 13)]).toEqual(['P1', '14'])
  })

  it('triangles that came with them stay while only a level changes, and go when a place does', () => {
    const faced = withGround({ ...levels, faces: [[0, 1, 2]] })
    const facesOf = ({ survey }: Plan) => (survey.ground.kind === 'levels' ? survey.ground.faces : undefined)
    expect(facesOf(after(setLevel(faced, 0, { levelM: 49 })))).toEqual([[0, 1, 2]])
    expect(facesOf(after(setLevel(faced, 0, { eastM: 1 })))).toBeUndefined()
    expect(facesOf(after(addLevel(faced, { ...at(5, 5), levelM: 50 })))).toBeUndefined()
    expect(facesOf(after(removeLevel(faced, 3)))).toBeUndefined()
  })

  it('refuse a second level in one place, and ground without levels', () => {
    const before = JSON.stringify(plan)
    expect(refusal(setLevel(plan, 1, at(0, 0)))).toBe('Level P1 stands there already.')
    expect(refusal(addLevel(plan, { ...at(10, 10), levelM: 1 }))).toBe('Level P3 stands there already.')
    expect(refusal(setLevel(plan, 99, { levelM: 1 }))).toContain('not in the plan')
    expect(refusal(removeLevel(demoPlan(), 0))).toContain('not measured as spot levels')
    expect(JSON.stringify(plan)).toBe(before)
  })

  it('notes of the surface stand at the row they are about', () => {
    const note = { kind: 'outlier', what: 'odd', at: at(10, 0.01) } as const
    const sorted = sortNotes(levels.points, [note, { ...note, at: undefined }, { ...note, at: at(4, 4) }])
    expect([[...sorted.byRow], sorted.others]).toEqual([[[1, ['odd']]], ['odd', 'odd']])
  })
})

describe('ground turned into levels', () => {
  it('keeps its surface and its outline (a plane by construction)', () => {
    const bank = withGround({ kind: 'bank', lengthM: 10, riseM: 6, facesDeg: 180, widthM: 12 })
    const derived = createDeriver(loadTables()).derive(bank)
    if (!derived.ok) throw new Error('the bank does not derive')
    const turned = after(toLevels(bank, derived.value.surface))
    const again = createDeriver(loadTables()).derive(turned)
    expect(again.ok && again.value.surface.fallM).toBeCloseTo(6, 3)
    expect(turned.survey.boundary).toEqual(derived.value.surface.boundary)
    if (bank.survey.ground.kind !== 'bank') throw new Error('no bank')
    expect(after(toProfile(bank, bank.survey.ground)).survey.ground).toMatchObject({
      stations: [
        { distanceM: 0, levelM: 6 },
        { distanceM: 10, levelM: 0 },
      ],
    })
  })

  it('refuses a grid of more cells than anyone changes by hand', () => {
    const cells = 80 * 80
    const surface = {
      frame: { columns: 80, rows: 80, cellM: 1, westM: 0, southM: 0 },
      share: new Float64Array(cells).fill(1),
      levelM: new Float64Array(cells),
      tin: undefined,
      boundary: square,
    } as Partial<Surface> as Surface
    expect(refusal(toLevels(plan, surface))).toContain('6400 cells')
  })
})

describe('lines', () => {
  const drawn = after(addLine(plan, 'top', [at(0, 5), at(10, 5)], planeAt))
  const walled = after(addLine(drawn, 'wall', [at(0, 2), at(10, 2)], planeAt))

  it('a wall reads its two levels half a metre to each side: left is north, walking east', () => {
    const [, wall] = linesOf(walled)
    expect(wall).toMatchObject({ id: 'line-2', kind: 'wall' })
    expect(wall?.vertices[0]).toMatchObject({ leftM: 50.25, rightM: 50.15 })
  })

  it('are reshaped without losing the levels of points that stay', () => {
    const measured = after(setVertex(drawn, 'line-1', 0, { levelM: 50.4 }))
    const longer = after(reshapeLine(measured, 'line-1', [at(0, 5), at(5, 6), at(10, 5)]))
    expect(linesOf(longer)[0]?.vertices).toEqual([{ ...at(0, 5), levelM: 50.4 }, at(5, 6), at(10, 5)])
    const moved = after(reshapeLine(longer, 'line-1', [at(1, 5), at(5, 6), at(10, 5)]))
    expect(linesOf(moved)[0]?.vertices[0]).toEqual({ ...at(1, 5), levelM: 50.4 })
    const wall = after(reshapeLine(walled, 'line-2', [at(0, 2), at(5, 3), at(10, 2)]))
    expect(linesOf(wall)[1]?.vertices[1]).toEqual({ ...at(5, 3), leftM: 50.25, rightM: 50.15 })
  })

  it('become walls and edges again, are renamed and taken out', () => {
    const wall = after(setLine(drawn, 'line-1', { kind: 'wall' }, planeAt))
    expect(linesOf(wall)[0]?.vertices[1]).toMatchObject({ leftM: 50.55, rightM: 50.45 })
    const edge = after(setLine(wall, 'line-1', { kind: 'toe', name: ' Foot ' }, planeAt))
    expect(linesOf(edge)[0]).toEqual({
      id: 'line-1',
      kind: 'toe',
      name: 'Foot',
      vertices: [at(0, 5), at(10, 5)],
    })
    expect(linesOf(after(removeLine(edge, 'line-1')))).toEqual([])
    expect(refusal(removeLine(edge, 'line-9'))).toContain('not in the plan')
    expect(refusal(addLine(demoPlan(), 'top', square, planeAt))).toContain(
      'Lines bend a surface of spot levels',
    )
  })
})

describe('outline and holes', () => {
  const bowTie = [at(0, 0), at(10, 10), at(10, 0), at(0, 10)]

  it('are drawn, changed and taken out', () => {
    const outlined = after(setBoundary(plan, square))
    expect(outlined.survey.boundary).toEqual(square)
    expect(after(setBoundary(outlined, undefined)).survey.boundary).toBeUndefined()
    const holed = after(addHole(plan, [at(2, 2), at(4, 2), at(4, 4)]))
    expect(after(setHole(holed, 0, square)).survey.holes).toEqual([square])
    expect(after(removeHole(holed, 0)).survey.holes).toEqual([])
  })

  it('refuse corners that cross, lie in line, or are too few', () => {
    expect(refusal(setBoundary(plan, bowTie))).toMatch(/^The side from corner 1 cuts/)
    expect(refusal(addHole(plan, [at(0, 0), at(1, 1), at(2, 2)]))).toBe('Its corners lie in one line.')
    expect(refusal(addHole(plan, square.slice(0, 2)))).toBe('An outline of 2 corners holds nothing.')
    expect(refusal(setHole(plan, 3, square))).toContain('not in the plan')
    expect(refusal(addThing(plan, 'house', bowTie))).toMatch(/cuts the side/)
  })
})

describe('sections', () => {
  it('a further one is first put across the middle, square to the large one (by construction)', () => {
    const cut = acrossFrom(square, { from: at(5, 10), to: at(5, 0) })
    expect([cut.from.northM, cut.to.northM]).toEqual([5, 5])
    expect(Math.abs(cut.to.eastM - cut.from.eastM)).toBe(10)
  })

  it('are named by the next letter, moved, drawn large and taken out', () => {
    const one = after(addSection(plan, { from: at(0, 5), to: at(10, 5) }))
    const two = after(addSection(one, { from: at(5, 0), to: at(5, 10) }))
    expect(two.survey.sections?.map(({ name }) => name)).toEqual(['B', 'C'])
    expect(after(setSection(two, 'section-1', { to: at(9, 5) })).survey.sections?.[0]?.to).toEqual(at(9, 5))
    const large = after(drawLarge(two, 'section-1'))
    expect(large.survey.sectionLine).toEqual({ from: at(0, 5), to: at(10, 5) })
    expect(large.survey.sections?.map(({ name }) => name)).toEqual(['C'])
    const swapped = after(drawLarge(large, 'section-2'))
    expect(swapped.survey.sectionLine).toEqual({ from: at(5, 0), to: at(5, 10) })
    expect(swapped.survey.sections).toEqual([{ id: 'section-2', name: 'C', from: at(0, 5), to: at(10, 5) }])
    expect(after(removeSection(swapped, 'section-2')).survey.sections).toEqual([])
    expect(after(setLargeSection(swapped, undefined)).survey.sectionLine).toBeUndefined()
  })

  it('refuse what is too short to show anything', () => {
    expect(refusal(addSection(plan, { from: at(1, 1), to: at(1, 1.2) }))).toBe('It would be 0.20 m long.')
    expect(refusal(drawLarge(plan, 'section-1'))).toContain('not in the plan')
  })
})

describe('things, stretches beyond and viewpoints', () => {
  it('a wall with a bend stays a line, a house of three corners is an outline', () => {
    expect(linesUp({ kind: 'wall', ring: square })).toBe(true)
    expect(linesUp({ kind: 'house', ring: square })).toBe(false)
  })

  it('get names and ids of their own, are changed and taken out', () => {
    const two = after(addThing(after(addThing(plan, 'tree', [at(1, 1)])), 'tree', [at(2, 2)]))
    expect(two.survey.obstacles.map(({ id, name }) => [id, name])).toEqual([
      ['tree-1', 'Tree'],
      ['tree-2', 'Tree 2'],
    ])
    expect(after(setThing(two, 'tree-2', { heightM: 8 })).survey.obstacles[1]?.heightM).toBe(8)
    expect(after(removeThing(two, 'tree-1')).survey.obstacles).toHaveLength(1)
    const field = after(addBeyond(plan, 'field', [at(0, 10), at(10, 10)]))
    expect(after(setBeyond(field, 'field-1', { uphillM: 40 })).survey.beyond?.[0]).toMatchObject({
      what: 'field',
      uphillM: 40,
    })
    expect(after(removeBeyond(field, 'field-1')).survey.beyond).toEqual([])
    const seat = after(addViewpoint(plan, 'seat', at(3, 3)))
    expect(after(setViewpoint(seat, 'seat-1', { eyeM: 1.1 })).survey.viewpoints?.[0]?.eyeM).toBe(1.1)
    expect(after(removeViewpoint(seat, 'seat-1')).survey.viewpoints).toEqual([])
  })

  it('refuse a stretch without length, and what is gone', () => {
    expect(refusal(addBeyond(plan, 'road', [at(1, 1), at(1, 1)]))).toBe('It begins and ends in one place.')
    expect(refusal(addBeyond(plan, 'road', [at(1, 1)]))).toBe('A stretch has two ends.')
    for (const outcome of [
      setThing(plan, 'x', {}),
      removeThing(plan, 'x'),
      setBeyond(plan, 'x', {}),
      removeBeyond(plan, 'x'),
      setViewpoint(plan, 'x', {}),
      removeViewpoint(plan, 'x'),
    ])
      expect(refusal(outcome)).toContain('not in the plan')
  })
})

describe('a picture under the plan (by construction: known turns of a picture of 400 by 200 px)', () => {
  const picture: Backdrop = {
    name: 'scan',
    dataUrl: 'data:image/png;base64,AAAA',
    widthPx: 400,
    heightPx: 200,
    one: { xPx: 100, yPx: 100 },
    other: { xPx: 300, yPx: 100 },
    apartM: 20,
    bearingDeg: 90,
    at: at(1000, 2000),
    shade: 0.5,
  }

  it.each([
    [90, 0, at(990, 2010), at(1030, 2010), at(990, 1990)],
    [0, 270, at(990, 1990), at(990, 2030), at(1010, 1990)],
    [180, 90, at(1010, 2010), at(1010, 1970), at(990, 2010)],
    [270, 180, at(1010, 1990), at(970, 1990), at(1010, 2010)],
  ])('second point at %i°: its top points to %i°', (bearingDeg, topDeg, topLeft, topRight, bottomLeft) => {
    const turned = { ...picture, bearingDeg }
    expect(placementOf(turned)).toEqual({ mPerPx: 0.1, topDeg })
    for (const [xPx, yPx, place] of [
      [0, 0, topLeft],
      [400, 0, topRight],
      [0, 200, bottomLeft],
    ] as const) {
      const found = pictureToPlot(turned, { xPx, yPx })
      expect(found.eastM).toBeCloseTo(place.eastM, 9)
      expect(found.northM).toBeCloseTo(place.northM, 9)
    }
  })

  it('the two points lie where they were said to lie, whatever the turn (3-4-5 triangle)', () => {
    const slanted = { ...picture, other: { xPx: 400, yPx: 500 }, apartM: 5, bearingDeg: 36.8698976458 }
    const [one, other] = backdropEnds({ ...slanted, at: at(0, 0) })
    expect(one).toEqual(at(0, 0))
    expect(other.eastM).toBeCloseTo(3, 9)
    expect(other.northM).toBeCloseTo(4, 9)
  })

  it('north on the picture and the bearing say the same', () => {
    expect(bearingFromNorth(picture.one, picture.other, 0)).toBe(90)
    expect(bearingFromNorth(picture.one, picture.other, 30)).toBe(60)
    expect(northOnPictureDeg({ ...picture, bearingDeg: 60 })).toBeCloseTo(30, 9)
  })

  it('is moved by its first point and only turned by its second', () => {
    const [one, other] = backdropEnds(picture)
    expect(draggedBackdrop(picture, [at(1001, 2000), other])).toEqual({ ...picture, at: at(1001, 2000) })
    expect(draggedBackdrop(picture, [one, at(1000, 2044)])).toEqual({ ...picture, bearingDeg: 0 })
  })

  it('refuses two points in one place', () => {
    expect(refusal(layBackdrop(plan, { ...picture, other: picture.one }))).toContain(
      'one place on the picture',
    )
    expect(after(layBackdrop(plan, picture)).survey.backdrop).toEqual(picture)
  })
})

describe('a touch on the plan', () => {
  const placed = (id: string, ring: typeof square, closed: boolean) => ({
    id,
    name: id,
    ring,
    closed,
    least: undefined,
    mayGo: true,
  })
  const all = [placed('plot', square, true), placed('line', [at(2, 5), at(8, 5)], false)]

  it('means the nearest within reach, else the smallest outline around it', () => {
    expect(pickPlaced(all, at(5, 5.3), 0.5)?.id).toBe('line')
    expect(pickPlaced(all, at(5, 8), 0.5)?.id).toBe('plot')
    expect(
      pickPlaced([...all, placed('pond', [at(4, 7), at(6, 7), at(5, 9)], true)], at(5, 7.6), 0.1)?.id,
    ).toBe('pond')
    expect(pickPlaced(all, at(20, 20), 0.5)).toBeUndefined()
  })

  it('takes a point that is already there, and only within reach', () => {
    expect(snapped(square, at(9.8, 0.1), 0.5)).toEqual(at(10, 0))
    expect(snapped(square, at(9, 0.1), 0.5)).toEqual(at(9, 0.1))
  })
})
