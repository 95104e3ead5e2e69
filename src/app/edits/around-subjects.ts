import { nearestOnRing, type PlanPoint } from '#core/geometry'
import type { Beyond, Obstacle, Viewpoint } from '#plan'
import { backdropEnds, draggedBackdrop, layBackdrop, removeBackdrop } from './backdrop'
import { addBeyond, beyondKinds, removeBeyond, setBeyond } from './beyond'
import { gone } from './refused'
import { addSection, removeSection, setLargeSection, setSection } from './sections'
import type { GroundNow, Placed, PlacedFigure, Subject } from './subject.types'
import { fieldsOf } from './thing-fields'
import { addThing, linesUp, removeThing, setThing, thingKinds } from './things'
import { setHeight } from './usual-sizes'
import { addViewpoint, removeViewpoint, setViewpoint, viewpointKinds } from './viewpoints'

const NOTHING_MISSING = () => ''
const noFigure = () => gone('figure')

/** House, walls, trees and what else stands or lies there. */
export const thingsSubject: Subject = {
  id: 'things',
  name: 'House, walls, trees',
  missing: NOTHING_MISSING,
  kinds: () => thingKinds,
  all: ({ survey }) =>
    survey.obstacles.map((thing) => ({
      id: thing.id,
      name: thing.name,
      ring: thing.ring,
      closed: !linesUp(thing),
      least: thingKinds.find(({ id }) => id === thing.kind)?.lies === 'point' ? undefined : 2,
      mayGo: true,
    })),
  put: (plan, kind, places) => addThing(plan, kind as Obstacle['kind'], places),
  reshape: (plan, id, ring) => setThing(plan, id, { ring: [...ring] }),
  takeOut: removeThing,
  figures: ({ survey }, id) => {
    const thing = survey.obstacles.find((each) => each.id === id)
    return thing ? thingFigures(thing) : []
  },
  setFigure: (plan, { id, key, value }) =>
    key === 'heightM' ? setHeight(plan, id, value) : setThing(plan, id, { [key]: value }),
}

const lengths = [
  { key: 'heightM', label: 'Height' },
  { key: 'ridgeM', label: 'Ridge' },
  { key: 'crownBaseM', label: 'Lowest branches' },
  { key: 'crownWidthM', label: 'Width of the crown' },
] as const

/** The lengths that are measured of a thing, as it is worked on on the plan. */
function thingFigures(thing: Obstacle): PlacedFigure[] {
  const fields: readonly string[] = fieldsOf(thing)
  return lengths
    .filter(({ key }) => fields.includes(key))
    .map(({ key, label }) => ({ key, label, unit: 'm', value: thing[key], optional: true }))
}

/** Where one looks at the plot from. */
export const viewsSubject: Subject = {
  id: 'views',
  name: 'Viewpoints',
  missing: NOTHING_MISSING,
  kinds: () => viewpointKinds.map(({ id, text }) => ({ id, text, lies: 'point' })),
  all: ({ survey }) => (survey.viewpoints ?? []).map(({ id, name, at }) => single(id, name, at)),
  put: (plan, kind, [at]) => (at ? addViewpoint(plan, kind as Viewpoint['kind'], at) : gone('viewpoint')),
  reshape: (plan, id, [at]) => (at ? setViewpoint(plan, id, { at: flat(at) }) : gone('viewpoint')),
  takeOut: removeViewpoint,
  figures: ({ survey }, id) => {
    const view = survey.viewpoints?.find((each) => each.id === id)
    return view
      ? [{ key: 'eyeM', label: 'Eye above the ground', unit: 'm', value: view.eyeM, optional: false }]
      : []
  },
  setFigure: (plan, { id, value }) =>
    value === undefined ? noFigure() : setViewpoint(plan, id, { eyeM: value }),
}

/** What lies beyond stretches of the boundary. */
export const beyondSubject: Subject = {
  id: 'beyond',
  name: 'Beyond the boundary',
  missing: NOTHING_MISSING,
  kinds: () => beyondKinds.map(({ id, text }) => ({ id, text, lies: 'pair' })),
  all: ({ survey }) => (survey.beyond ?? []).map(({ id, name, from, to }) => pair(id, name, [from, to])),
  put: (plan, kind, places, ground) =>
    addBeyond(plan, kind as Beyond['what'], places.map(ontoBoundary(ground))),
  reshape: (plan, id, places, ground) => {
    const [from, to] = places.map(ontoBoundary(ground))
    return from && to ? setBeyond(plan, id, { from, to }) : gone('stretch')
  },
  takeOut: removeBeyond,
  figures: ({ survey }, id) => {
    const stretch = survey.beyond?.find((each) => each.id === id)
    const label = 'Ground beyond that sheds water here'
    return stretch ? [{ key: 'uphillM', label, unit: 'm', value: stretch.uphillM, optional: true }] : []
  },
  setFigure: (plan, { id, value }) => setBeyond(plan, id, { uphillM: value }),
}

const LARGE = 'large'

/** Where sections are cut: the one drawn large, and others. */
export const sectionsSubject: Subject = {
  id: 'sections',
  name: 'Sections',
  missing: NOTHING_MISSING,
  kinds: () => [{ id: 'section', text: 'section', lies: 'pair' }],
  all: ({ survey }, { terrain }) => {
    const { from, to } = survey.sectionLine ?? terrain.section
    const others = (survey.sections ?? []).map((each) =>
      pair(each.id, `section ${each.name}`, [each.from, each.to]),
    )
    return [
      { ...pair(LARGE, 'section A, drawn large', [from, to]), mayGo: survey.sectionLine !== undefined },
      ...others,
    ]
  },
  put: (plan, _, [from, to]) => (from && to ? addSection(plan, { from, to }) : gone('section')),
  reshape: (plan, id, [from, to]) => {
    if (!from || !to) return gone('section')
    return id === LARGE
      ? setLargeSection(plan, { from, to })
      : setSection(plan, id, { from: flat(from), to: flat(to) })
  },
  takeOut: (plan, id) => (id === LARGE ? setLargeSection(plan, undefined) : removeSection(plan, id)),
  figures: () => [],
  setFigure: noFigure,
}

/** A picture under the plan: its first marked point moves it, its second turns it. */
export const backdropSubject: Subject = {
  id: 'backdrop',
  name: 'Backdrop',
  missing: ({ survey }) =>
    survey.backdrop ? '' : 'No picture lies under the plan. Choose one on the Backdrop page.',
  kinds: () => [],
  all: ({ survey }) =>
    survey.backdrop
      ? [pair('backdrop', survey.backdrop.name || 'the picture', backdropEnds(survey.backdrop))]
      : [],
  put: noFigure,
  reshape: (plan, _, places) =>
    plan.survey.backdrop
      ? layBackdrop(plan, draggedBackdrop(plan.survey.backdrop, places))
      : gone('backdrop'),
  takeOut: removeBackdrop,
  figures: ({ survey }) =>
    survey.backdrop
      ? [{ key: 'shade', label: 'Shade, 0.1 to 1', unit: '', value: survey.backdrop.shade, optional: false }]
      : [],
  setFigure: (plan, { value }) =>
    plan.survey.backdrop && value !== undefined
      ? layBackdrop(plan, { ...plan.survey.backdrop, shade: value })
      : noFigure(),
}

const flat = ({ eastM, northM }: PlanPoint) => ({ eastM, northM })
const single = (id: string, name: string, at: PlanPoint): Placed => ({
  id,
  name,
  ring: [at],
  closed: false,
  least: undefined,
  mayGo: true,
})
const pair = (id: string, name: string, ring: readonly PlanPoint[]): Placed => ({
  ...single(id, name, { eastM: 0, northM: 0 }),
  ring,
})

/** The nearest place on the boundary, to the centimetre. */
const ontoBoundary =
  ({ surface }: GroundNow) =>
  (place: PlanPoint): PlanPoint => {
    const { at } = nearestOnRing(surface.boundary, place)
    return { eastM: Math.round(at.eastM * 100) / 100, northM: Math.round(at.northM * 100) / 100 }
  }
