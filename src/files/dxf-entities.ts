import type { Problem } from '#core/units'
import { plainText } from './dxf-text'
import { eachRecord, flagsOf, valueOf, type DxfRecord } from './dxf-records'

/** An entity with what hangs on it: vertices of a polyline, attributes of a block. */
export interface DxfEntity {
  readonly head: DxfRecord
  readonly children: readonly DxfRecord[]
}

/** What of a drawing may be ground. */
export interface Drawing {
  /** Number of the unit ($INSUNITS); undefined when the drawing names none. */
  readonly unitCode: number | undefined
  readonly entities: readonly DxfEntity[]
  /** Layers that are switched off or frozen, in capitals. */
  readonly hiddenLayers: ReadonlySet<string>
  /** Entities on sheets of paper, which are no part of the ground. */
  readonly onPaper: number
}

interface Sheet {
  section: string
  unitCode: number | undefined
  open: { head: DxfRecord; children: DxfRecord[] } | undefined
  readonly entities: DxfEntity[]
  readonly hiddenLayers: Set<string>
  onPaper: number
  entitiesSeen: boolean
}

/** Group code of the mark for paper space. */
const PAPER_SPACE = 67

/**
 * Reads the entities of a text DXF.
 *
 * @param text - the file
 * @returns its unit and its entities in model space, or what is wrong with it
 */
export function readDrawing(text: string): Drawing | Problem {
  const sheet: Sheet = {
    section: '',
    unitCode: undefined,
    open: undefined,
    entities: [],
    hiddenLayers: new Set(),
    onPaper: 0,
    entitiesSeen: false,
  }
  const problem = eachRecord(text, (record) => take(record, sheet))
  if (problem) return problem
  if (!sheet.entitiesSeen)
    return {
      where: 'file',
      what: 'The file holds no section of entities, which is where a DXF keeps its drawing.',
      mend: 'Save the whole drawing as DXF (text).',
    }
  const { unitCode, entities, hiddenLayers, onPaper } = sheet
  return { unitCode, entities, hiddenLayers, onPaper }
}

function take(record: DxfRecord, sheet: Sheet): void {
  if (record.type === 'SECTION') {
    sheet.section = (valueOf(record, 2) ?? '').trim().toUpperCase()
    if (sheet.section === 'HEADER') sheet.unitCode = unitCode(record)
    if (sheet.section === 'ENTITIES') sheet.entitiesSeen = true
  } else if (record.type === 'ENDSEC') {
    close(sheet)
    sheet.section = ''
  } else if (sheet.section === 'ENTITIES') takeEntity(record, sheet)
  else if (sheet.section === 'TABLES' && record.type === 'LAYER') takeLayer(record, sheet)
}

/** A negative colour switches a layer off; flag 1 freezes it. */
function takeLayer(record: DxfRecord, sheet: Sheet): void {
  const hidden = flagsOf(record, 62) < 0 || (flagsOf(record, 70) & 1) !== 0
  if (hidden) sheet.hiddenLayers.add(plainText((valueOf(record, 2) ?? '').trim()).toUpperCase())
}

/** Vertices and attributes belong to the entity before them, up to its end mark. */
function takeEntity(record: DxfRecord, sheet: Sheet): void {
  const child = record.type === 'VERTEX' || record.type === 'ATTRIB'
  if (child && sheet.open) sheet.open.children.push(record)
  else {
    close(sheet)
    if (record.type !== 'SEQEND') sheet.open = { head: record, children: [] }
  }
}

function close(sheet: Sheet): void {
  if (!sheet.open) return
  if (flagsOf(sheet.open.head, PAPER_SPACE) === 1) sheet.onPaper++
  else sheet.entities.push(sheet.open)
  sheet.open = undefined
}

/** $INSUNITS stands as a name under group code 9, its value under 70 after it. */
function unitCode(header: DxfRecord): number | undefined {
  const at = header.values.findIndex((value, row) => header.codes[row] === 9 && value.trim() === '$INSUNITS')
  if (at < 0 || header.codes[at + 1] !== 70) return undefined
  const code = Number.parseInt(header.values[at + 1] ?? '', 10)
  return Number.isSafeInteger(code) ? code : undefined
}
