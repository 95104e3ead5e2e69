import type { MixLine, PlantVerdict } from '#core/plants'
import { counted, grouped, withUnit } from '#report'
import type { Findings, Plan, ZoneFindings } from '#plan'
import { wrapped } from './text-layout'

/** What to plant in each zone, how much of it, and what to know of each plant. */
export function plantingLines(plan: Plan, { zoning, zones }: Findings): readonly string[] {
  return [
    ...zones.flatMap((found) => {
      const zone = zoning.zones.find(({ id }) => id === found.zoneId)
      return zone
        ? [`${zone.letter}  ${zone.name}: ${headline(found, zone.slopeAreaM2)}`, ...mixLines(found)]
        : []
    }),
    ...(plan.site.legalRegion === undefined
      ? wrapped('No country is set in the plan: plants are not checked against the law.')
      : []),
  ]
}

function headline({ planting }: ZoneFindings, slopeAreaM2: number): string {
  if (planting.mix.length === 0) return planting.none ?? 'nothing to plant.'
  const plants = planting.mix.reduce((sum, { count }) => sum + count, 0)
  const seedG = planting.mix.reduce((sum, line) => sum + (line.seedG ?? 0), 0)
  const { monthsToCover } = planting
  const what = [plants > 0 ? counted(plants, 'plant') : '', seedG > 0 ? `${grouped(seedG)} g of seed` : '']
  const when = monthsToCover
    ? `; four fifths covered in ${grouped(monthsToCover.from)} to ${grouped(monthsToCover.to)} months`
    : ''
  return `${what.filter(Boolean).join(' and ')} on ${withUnit(slopeAreaM2, 'm²', 0)} of slope${when}.`
}

function mixLines({ planting }: ZoneFindings): readonly string[] {
  const weighed = [...planting.offered, ...planting.refused]
  return planting.mix.flatMap((line) => {
    const verdict = weighed.find(({ plant }) => plant.id === line.plantId)
    if (!verdict) return []
    return [
      ...wrapped(
        `${amountOf(line)} ${verdict.plant.name}, ${verdict.plant.common}${howOf(line, verdict)}`,
        '   ',
      ),
      ...flagsOf(verdict).flatMap((flag) => wrapped(flag, '       ! ')),
    ]
  })
}

const amountOf = (line: MixLine): string =>
  line.seedG === undefined ? grouped(line.count) : withUnit(line.seedG, 'g')

const howOf = (line: MixLine, { plant }: PlantVerdict): string =>
  line.seedG === undefined
    ? `, ${plant.unit}, ${withUnit(line.spacingM * 100, 'cm', 0)} apart on the slope`
    : ', seed'

/** Law, poison and spread: what must be known before it is bought. */
function flagsOf({ reasons, flags }: PlantVerdict): readonly string[] {
  const must = ['legal-warning', 'poisonous', 'skin', 'animals', 'takes-over']
  const warned = reasons.filter((reason) => must.includes(reason.id)).map(({ because }) => because)
  return flags.barred ? ['Barred by law where the plot is.', ...warned] : warned
}
