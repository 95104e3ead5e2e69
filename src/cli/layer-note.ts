import { dayAsked, unitAsked, type Layer, type LayerOption, type LayerOptions } from '#io'
import { monthNames } from '#core/units'
import { dateOf, dayWords, withUnit } from '#report'
import type { Plan } from '#plan'
import { sunTimeWords } from './sun-words'
import { plain } from './text-layout'

/**
 * What a layer of a day or a moment is of, in one line: a grid has no room to say so itself.
 *
 * @param layer - which
 * @param plan - its plan
 * @param options - what was asked of it
 * @param year - whose clocks count, where one was given
 * @returns the line; undefined for a layer that is of no day
 */
export function layerNote(
  layer: Layer,
  plan: Plan,
  options: LayerOptions,
  year: number | undefined,
): string | undefined {
  const takes = (option: LayerOption) => layer.takes.includes(option)
  if (!takes('dayOfYear') || takes('withThings')) return undefined
  const dayOfYear = dayAsked(plan, options)
  const parts =
    takes('sky') || takes('solarHour') ? [dayWords(dayOfYear)] : [monthNames[dateOf(dayOfYear).month]]
  if (options.solarHour !== undefined) parts.push(sunTimeWords(options.solarHour, dayOfYear, plan.site, year))
  if (takes('perPlan')) parts.push(skyWords(options))
  if (options.castShadows === false) parts.push('nothing throws a shadow')
  if (options.skyline === false) parts.push('the sky cut by the cell’s own tilt alone')
  return plain(`${layer.name}, ${parts.join(', ')}: ${unitAsked(layer, options)}.`)
}

function skyWords({ sky, linke }: LayerOptions): string {
  if (sky !== 'clear') return 'usual sky'
  return linke === undefined
    ? 'clear sky of usual haze'
    : `clear sky of Linke turbidity ${withUnit(linke, '', 1).trim()}`
}
