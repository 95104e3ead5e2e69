import { writeGeoTiff } from '#files'
import { drawLayer, layers, writeAsciiGrid, type DrawnLayer, type Layer, type LayerOptions } from '#io'
import { openPlan, type Plan } from '#plan'
import type { Arguments } from './arguments'
import { complainOf, readText, writeBytes, writeText, type Console } from './console'
import { dateGiven } from './date-option'
import { exitCodes, UsageError } from './exit'
import { layerNote } from './layer-note'
import { layerOptions, withClock } from './layer-options'

/** Writes one grid, or lists them all. */
export function layer(given: Arguments, console: Console): number {
  if (given.flag('list')) {
    console.print(layerList())
    return exitCodes.done
  }
  const [file, name] = given.words
  if (file === undefined || name === undefined)
    throw new UsageError('layer needs a plan and the name of a layer; layer --list shows the names.')
  const found = layers.find((one) => one.name === name)
  if (!found)
    throw new UsageError(`There is no layer “${name}”. Known: ${layers.map((one) => one.name).join(', ')}.`)
  const asked = layerOptions(given, found)
  const opened = openPlan(readText(file))
  if (!opened.ok) return complainOf(opened.problems, console)
  const plan = opened.value
  const options = withClock(given, plan, asked)
  if (!options.ok) return complainOf(options.problems, console)
  const drawn = drawnOf(found, plan, options.value)
  if (!drawn.ok) return complainOf(drawn.problems, console)
  const note = layerNote(found, plan, options.value, dateGiven(given)?.year)
  if (note !== undefined) console.complain(note)
  writeLayer(found, drawn.value, { file: given.text('out'), console })
  return exitCodes.done
}

interface Target {
  readonly file: string | undefined
  readonly console: Console
}

function writeLayer({ decimals }: Layer, { surface, values }: DrawnLayer, { file, console }: Target): void {
  const { frame, share } = surface
  if (file !== undefined && /\.tiff?$/i.test(file))
    writeBytes(file, writeGeoTiff(frame, values, share, { noData: NO_DATA }))
  else writeText(file, writeAsciiGrid(frame, values, { share, decimals }), console)
}

/** Value that stands for no ground in a GeoTIFF, as in an ASCII grid. */
const NO_DATA = -9999

function drawnOf(found: Layer, plan: Plan, options: LayerOptions): ReturnType<typeof drawLayer> {
  if (found.needs.includes('from')) refuseUnknown('viewpoint', plan.survey.viewpoints, options.from)
  if (found.needs.includes('trial')) refuseUnknown('trial', plan.trials, options.trial)
  return drawLayer(found, plan, options)
}

function refuseUnknown(
  kind: string,
  known: readonly { readonly id: string; readonly name: string }[] = [],
  name = '',
): void {
  if (known.some((one) => one.name === name || one.id === name)) return
  const names = known.map((one) => `“${one.name}”`).join(', ')
  throw new UsageError(`The plan has no ${kind} “${name}”. ${names ? `Known: ${names}.` : 'It has none.'}`)
}

function layerList(): string {
  const widest = Math.max(...layers.map(({ name }) => name.length))
  const unitWidest = Math.max(...layers.map(({ unit }) => unit.length))
  return layers
    .map(({ name, unit, method }) => `${name.padEnd(widest)}  ${unit.padEnd(unitWidest)}  ${method}`)
    .join('\n')
}
