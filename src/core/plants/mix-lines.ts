import type { Chosen } from './choose-layer'
import type { Sown } from './meadow-mix'
import type { MixLine, PlantVerdict, Site } from './plants.types'
import { timeStretch } from './closing'
import { monthsToCover } from './cover-over-time'
import { shareCap } from './shares'
import { plantsPerM2 } from './spacing'

/** Keeps 12 plants from becoming 13 through the rounding of binary fractions [plants]. */
const COUNT_TOLERANCE = 1e-9

const leafWords: Readonly<Record<PlantVerdict['plant']['persistence'], string>> = {
  evergreen: 'evergreen',
  semi: 'keeps most of its leaves',
  'winter-green': 'green in winter',
  'summer-green': 'bare in winter',
  ephemeral: 'green for a part of the year only',
}

/**
 * A planted species with its number of plants: share of the slope area times plants per m² of slope, rounded up.
 *
 * @param chosen - the plant and its share
 * @param layer - where it stands in the mix
 * @param site - what the zone offers; the count is for its slope area [m²]
 * @returns the line of the mix
 */
export function plantedLine(chosen: Chosen, layer: MixLine['layer'], site: Site): MixLine {
  const { verdict, share } = chosen
  const perM2 = plantsPerM2(verdict.plant.spacingM, 'staggered')
  return {
    plantId: verdict.plant.id,
    layer,
    share,
    spacingM: verdict.plant.spacingM,
    perM2,
    count: Math.ceil(share * site.slopeAreaM2 * perM2 - COUNT_TOLERANCE),
    seedG: undefined,
    monthsToCover: monthsToCover([{ plant: verdict.plant, share: 1, sown: false }], timeStretch(site)),
    because: reasonFor(chosen),
  }
}

/**
 * A sown species with its seed. Plants are not counted: their number, and plants per m², stand at 0.
 *
 * @param sown - the species, its share of the seed by weight and its rate [g/m²]
 * @param site - what the zone offers; the seed is for its slope area [m²]
 * @returns the line of the mix
 */
export function sownLine(sown: Sown, site: Site): MixLine {
  const { plant } = sown.verdict
  return {
    plantId: plant.id,
    layer: 'meadow',
    share: sown.share,
    spacingM: plant.spacingM,
    perM2: 0,
    count: 0,
    seedG: sown.gPerM2 * site.slopeAreaM2,
    monthsToCover: monthsToCover([{ plant, share: 1, sown: true }], timeStretch(site)),
    because: sown.because,
  }
}

function reasonFor({ verdict, share, insisted }: Chosen): string {
  const { plant, fit, bindingClass, reasons, offered } = verdict
  if (insisted && !offered) {
    const objection = reasons.find((reason) => !reason.for)
    return `You insist on it. We would not offer it: ${objection?.because ?? ''}`
  }
  const cap = shareCap({ dominance: plant.dominance, insisted })
  const held = Math.abs(share - cap) < COUNT_TOLERANCE && cap < 1
  return [
    insisted ? 'You insist on it; it' : 'It',
    ` fits ${fit} of 100, ${leafWords[plant.persistence]}, soil binding class ${bindingClass} of 5.`,
    held ? ` Held to ${Math.round(cap * 100)} % because it spreads.` : '',
  ].join('')
}
