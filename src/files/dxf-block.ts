import type { DxfEntity } from './dxf-entities'
import { count, type DxfLayer, type DxfPoint } from './dxf-layers'
import { placeOf, toDrawing } from './dxf-places'
import { valueOf } from './dxf-records'
import { levelInText, plainText } from './dxf-text'

/** Tags of attributes that hold a level, a point's name, its code. */
const LEVEL_TAG = /^(elev(ation)?|level|lvl|height|hgt|h|z|rl|h(oe|ö)he|kote|cota|quota|alt(itude)?)\d?$/i
const MARK_TAG = /^(pt|pnt|point|no|num(ber)?|nr|id|name|p(oin)?t[ _-]?(no|nr|num(ber)?|id|name))\d?$/i
const CODE_TAG = /^(code|desc(ription)?|type|feature|remark)\d?$/i

/** Levels written with one decimal differ by this much at most from the true one [units of the drawing]. */
const ROUNDED_BY = 0.051
/** Longest code or mark that a plan keeps [letters]. */
const LONGEST_NAME = 60

interface Attribute {
  readonly tag: string
  readonly text: string
}

/**
 * The point that a block marks: where it stands, with the level it is drawn at or that its attribute states.
 *
 * @param entity - an INSERT with its attributes
 * @param layer - where doubts are counted
 * @returns the point; that it has no level (a mere sign); undefined when its place cannot be read
 */
export function blockPoint(
  { head, children }: DxfEntity,
  layer: DxfLayer,
): DxfPoint | 'no level' | undefined {
  const written = placeOf(head, 10)
  if (!written) return undefined
  const place = toDrawing(head)(written)
  const attributes = children.map((child) => ({
    tag: plainText(valueOf(child, 2) ?? '').trim(),
    text: plainText(valueOf(child, 1) ?? '').trim(),
  }))
  const mark = textUnder(attributes, MARK_TAG)
  const code = textUnder(attributes, CODE_TAG) ?? layer.name.slice(0, LONGEST_NAME)
  const levelM = levelOf(attributes, place.levelM, layer)
  if (levelM === undefined) return 'no level'
  return { ...(mark && { mark }), ...(code && { code }), ...place, levelM }
}

/** The level a block is drawn at is exact; its attribute may be rounded, and counts where the drawing is flat. */
function levelOf(attributes: readonly Attribute[], drawnAt: number, layer: DxfLayer): number | undefined {
  const stated = statedLevel(attributes)
  if (stated === undefined) return drawnAt === 0 ? undefined : drawnAt
  if (drawnAt === 0) {
    count(layer, 'level from attribute')
    return stated
  }
  if (Math.abs(stated - drawnAt) > ROUNDED_BY) count(layer, 'attribute differs')
  return drawnAt
}

/** Under a tag that says level; or the one attribute that is a number with decimals. */
function statedLevel(attributes: readonly Attribute[]): number | undefined {
  const tagged = attributes.find(({ tag, text }) => LEVEL_TAG.test(tag) && levelInText(text) !== undefined)
  if (tagged) return levelInText(tagged.text)
  const decimals = attributes.filter(({ text }) => /\d[.,]\d/.test(text) && levelInText(text) !== undefined)
  const [only] = decimals
  return only && decimals.length === 1 ? levelInText(only.text) : undefined
}

const textUnder = (attributes: readonly Attribute[], tags: RegExp) =>
  attributes.find(({ tag, text }) => tags.test(tag) && text !== '')?.text.slice(0, LONGEST_NAME)
