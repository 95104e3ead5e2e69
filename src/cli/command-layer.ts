import { writeGeoTiff } from '#files'
import { drawLayer, layers, writeAsciiGrid, type Layer, type LayerOptions } from '#io'
import { openPlan, type Plan } from '#plan'
import type { Arguments } from './arguments'
import { complainOf, readText, writeBytes, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import { layerOptions } from './layer-options'

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
  const options = layerOptions(given, found)
  const opened = openPlan(readText(file))
  const drawn = opened.ok ? drawnOf(found, opened.value, options) : opened
  if (!drawn.ok) return complainOf(drawn.problems, console)
  const { surface, values } = drawn.value
  const { frame, share } = surface
  const out = given.text('out')
  if (out !== undefined && /\.tiff?$/i.test(out))
    writeBytes(out, writeGeoTiff(frame, values, share, { noData: NO_DATA }))
  else writeText(out, writeAsciiGrid(frame, values, { share, decimals: found.decimals }), console)
  return exitCodes.done
}

/** Value that stands for no ground in a GeoTIFF, as in an ASCII grid. */
const NO_DATA = -9999

function drawnOf(found: Layer, plan: Plan, options: LayerOptions): ReturnType<typeof drawLayer> {
  if (found.needsViewpoint) refuseUnknownViewpoint(plan, options.from)
  return drawLayer(found, plan, options)
}

function refuseUnknownViewpoint({ survey }: Plan, name: string | undefined): void {
  const known = survey.viewpoints ?? []
  if (known.some((one) => one.name === name || one.id === name)) return
  const names = known.map((one) => `“${one.name}”`).join(', ')
  throw new UsageError(
    `The plan has no viewpoint “${name ?? ''}”. ${names ? `Known: ${names}.` : 'It has none.'}`,
  )
}

function layerList(): string {
  const widest = Math.max(...layers.map(({ name }) => name.length))
  const unitWidest = Math.max(...layers.map(({ unit }) => unit.length))
  return layers
    .map(({ name, unit, method }) => `${name.padEnd(widest)}  ${unit.padEnd(unitWidest)}  ${method}`)
    .join('\n')
}
