import { XMLParser, XMLValidator } from 'fast-xml-parser'
import type { Outcome, Problem } from '#core/units'

/** An element of an XML file: attributes under "@name", text under "#text", children under their names. */
export interface XmlNode {
  readonly [key: string]: XmlValue | readonly XmlValue[] | undefined
}

/** An element with attributes or children, or the bare text of one without. */
export type XmlValue = string | XmlNode

/** Nothing is interpreted: no entities, no numbers; prefixes of namespaces are dropped. */
const asWritten = {
  ignoreAttributes: false,
  attributeNamePrefix: '@',
  removeNSPrefix: true,
  parseTagValue: false,
  parseAttributeValue: false,
  processEntities: false,
  ignoreDeclaration: true,
  ignorePiTags: true,
} as const

/** The five entities every XML file may use without declaring them. */
const declaredByXml = new Map([
  ['amp', '&'],
  ['lt', '<'],
  ['gt', '>'],
  ['quot', '"'],
  ['apos', "'"],
])

/**
 * Reads an XML file into its elements.
 *
 * @param text - the file
 * @returns the elements at its top, or the first thing that is wrong with it
 */
export function readXmlTree(text: string): Outcome<XmlNode> {
  const problem = declaredEntities(text) ?? firstFault(text)
  if (problem) return { ok: false, problems: [problem] }
  try {
    const tree: unknown = new XMLParser(asWritten).parse(text)
    return { ok: true, value: isNode(tree) ? tree : {} }
  } catch (error) {
    return { ok: false, problems: [unreadable(error instanceof Error ? error.message : '')] }
  }
}

/** The children of that name, in the order of the file. */
export function childrenOf(parent: XmlValue | undefined, name: string): readonly XmlValue[] {
  if (parent === undefined || typeof parent === 'string' || !Object.hasOwn(parent, name)) return []
  const found = parent[name]
  if (found === undefined) return []
  return isList(found) ? found : [found]
}

/** The text between the tags of an element. */
export function textOf(element: XmlValue): string {
  if (typeof element === 'string') return element
  const text = element['#text']
  return typeof text === 'string' ? text : ''
}

/** An attribute as written, without its entities; undefined when it is missing or empty. */
export function attributeOf(element: XmlValue, name: string): string | undefined {
  if (typeof element === 'string' || !Object.hasOwn(element, `@${name}`)) return undefined
  const value = element[`@${name}`]
  return typeof value === 'string' && value.trim() !== '' ? withoutEntities(value.trim()) : undefined
}

const isList = (found: XmlValue | readonly XmlValue[]): found is readonly XmlValue[] => Array.isArray(found)

const isNode = (tree: unknown): tree is XmlNode => typeof tree === 'object' && tree !== null

function declaredEntities(text: string): Problem | undefined {
  if (!text.includes('<!ENTITY')) return undefined
  return {
    where: 'file',
    what: 'The file declares text of its own to be put in place of names (ENTITY), which survey files do not need.',
    mend: 'Export it again from the program it came from, without a document type.',
  }
}

/** Unclosed and crossing tags: the parser itself lets them pass, and half a file would be read as a whole one. */
function firstFault(text: string): Problem | undefined {
  const verdict = XMLValidator.validate(text)
  if (verdict === true) return undefined
  const { msg, line } = verdict.err
  return { ...unreadable(msg), where: `line ${line}` }
}

const unreadable = (message: string): Problem => ({
  where: 'file',
  what: `The file is not whole or is no XML: ${message.slice(0, 160)}`,
  mend: 'It may have been cut off when it was copied or sent. Export or copy it again.',
})

function withoutEntities(value: string): string {
  if (!value.includes('&')) return value
  return value.replace(/&(#x?[0-9a-f]{1,6}|[a-z]{2,4});/gi, (whole, name: string) => {
    if (!name.startsWith('#')) return declaredByXml.get(name) ?? whole
    const hex = name[1] === 'x' || name[1] === 'X'
    const code = Number.parseInt(name.slice(hex ? 2 : 1), hex ? 16 : 10)
    return code > 0 && code <= 0x10_ff_ff ? String.fromCodePoint(code) : whole
  })
}
