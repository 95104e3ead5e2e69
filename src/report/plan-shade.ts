import { groundFacts } from '#core/terrain'
import type { Findings, Plan } from '#plan'
import type { PlanShade, Shading, ShadingRow } from './plan-shade.types'
import { sunRows } from './plan-shade-sun'
import { rampColour } from './ramps'
import { grouped, withUnit } from './words/figures-in-words'

/** Limits of gradient as verdicts use them [°]; a class begins at each. */
const GRADIENT_LIMITS_DEG = [0, 5, 10, 15, 20, 25] as const

/** Classes of equal steps [count], and the share at each end that is left to the outer ones. */
const STEPS = 6
const TAIL_SHARE = 0.02

const CM_PER_M = 100

const rows: readonly ShadingRow[] = [
  {
    id: 'gradient',
    name: 'gradient',
    group: 'ground',
    unit: '°',
    ramp: 'gradient',
    limits: GRADIENT_LIMITS_DEG,
    values: (_plan, { terrain }) => terrain.slopeDeg,
  },
  {
    id: 'level-error',
    name: 'how well the level is known',
    group: 'ground',
    unit: 'cm',
    ramp: 'hours',
    values: (_plan, { accuracy }) => accuracy.levelSdM.map((errorM) => errorM * CM_PER_M),
  },
  {
    id: 'slope-error',
    name: 'how well the slope is known',
    group: 'ground',
    unit: '°',
    ramp: 'hours',
    values: (_plan, { accuracy }) => accuracy.slopeSdDeg,
  },
  {
    id: 'height',
    name: 'height above the foot',
    group: 'ground',
    unit: 'm',
    ramp: 'gradient',
    values: (_plan, { terrain }) => terrain.heightAboveFootM,
  },
  {
    id: 'wetness',
    name: 'where water gathers (wetness index)',
    group: 'ground',
    unit: '',
    ramp: 'wetness',
    values: (_plan, { surface }) => groundFacts(surface).wetnessIndex(),
  },
]

/** Every shading that the findings can give: the measures of the ground, the sun, trials, and what is seen from each viewpoint. */
export function planShadings(findings: Findings): Shading[] {
  return [
    ...[...rows, ...sunRows(findings)].map(({ id, name, group }) => ({ id, name, group })),
    ...findings.around.views.map(({ viewpointId, name }) => ({
      id: `seen-${viewpointId}`,
      name: `what is seen from the ${name.toLowerCase()}`,
      group: 'views' as const,
    })),
  ]
}

/**
 * Shades the plan.
 *
 * @param plan - the plan
 * @param findings - what was derived from it
 * @param id - one of `planShadings`
 * @returns classes with their areas on plan, and the class of each cell; undefined when there is no such shading
 */
export function planShade(plan: Plan, findings: Findings, id: string): PlanShade | undefined {
  const row = [...rows, ...sunRows(findings)].find((shading) => shading.id === id)
  if (row) return shaded(row, row.values(plan, findings), findings)
  const view = findings.around.views.find(({ viewpointId }) => id === `seen-${viewpointId}`)
  return view && seenShade(view, findings)
}

function shaded(row: ShadingRow, values: ArrayLike<number>, { surface }: Findings): PlanShade {
  const limits = row.limits ?? equalSteps(values, surface.share)
  const classOfCell = Int8Array.from(surface.share, (share, cell) =>
    share > 0 ? classAt(values[cell] ?? 0, limits) : -1,
  )
  const areas = areasOf(classOfCell, surface)
  return {
    name: row.name,
    classOfCell,
    classes: limits.map((_, at) => ({
      colour: rampColour(row.ramp, limits.length > 1 ? at / (limits.length - 1) : 0),
      words: row.words?.[at] ?? rangeWords({ limits, unit: row.unit }, at),
      planAreaM2: areas[at] ?? 0,
    })),
  }
}

function seenShade({ name, seen }: Findings['around']['views'][number], { surface }: Findings): PlanShade {
  const classOfCell = Int8Array.from(surface.share, (share, cell) => (share > 0 ? (seen[cell] ? 1 : 0) : -1))
  const areas = areasOf(classOfCell, surface)
  return {
    name: `what is seen from the ${name.toLowerCase()}`,
    classOfCell,
    classes: [
      { colour: rampColour('sun', 0), words: 'hidden', planAreaM2: areas[0] ?? 0 },
      { colour: rampColour('sun', 1), words: 'seen', planAreaM2: areas[1] ?? 0 },
    ],
  }
}

function equalSteps(values: ArrayLike<number>, share: Float64Array): number[] {
  const inside = Float64Array.from(Array.from(values).filter((_, cell) => (share[cell] ?? 0) > 0)).sort()
  const low = inside[Math.floor(TAIL_SHARE * inside.length)] ?? 0
  const high = inside[Math.floor((1 - TAIL_SHARE) * (inside.length - 1))] ?? low
  // Ground that is alike everywhere is one class.
  if (!(high - low > 1e-6 * Math.max(1, Math.abs(high)))) return [low]
  return Array.from({ length: STEPS }, (_, at) => low + (at / STEPS) * (high - low))
}

function classAt(value: number, limits: readonly number[]): number {
  let at = 0
  while (at + 1 < limits.length && value >= (limits[at + 1] ?? Infinity)) at++
  return at
}

/** Ground of each class, on plan [m²]. */
export function areasOf(classOfCell: Int8Array, { share, frame }: Findings['surface']): number[] {
  const areas: number[] = []
  classOfCell.forEach((own, cell) => {
    if (own >= 0) areas[own] = (areas[own] ?? 0) + (share[cell] ?? 0) * frame.cellM ** 2
  })
  return areas
}

function rangeWords({ limits, unit }: { limits: readonly number[]; unit: string }, at: number): string {
  const [from, to] = [limits[at] ?? 0, limits[at + 1]]
  const whole = limits.every((limit) => Number.isInteger(limit * 2))
  const fine = !whole && (limits.at(-1) ?? 0) - (limits[0] ?? 0) < STEPS * 2
  const decimals = (limit: number) => (fine || (whole && !Number.isInteger(limit)) ? 1 : 0)
  if (limits.length === 1) return withUnit(from, unit, 1)
  if (to === undefined) return `${withUnit(from, unit, decimals(from))} and more`
  return at === 0
    ? `up to ${withUnit(to, unit, decimals(to))}`
    : `${grouped(from, decimals(from))} to ${withUnit(to, unit, decimals(to))}`
}
