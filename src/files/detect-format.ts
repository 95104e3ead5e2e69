import type { SurveyFormat } from './survey-read.types'

/** Formats that are text. */
type TextFormat = Exclude<SurveyFormat, 'geotiff'>

/** Kinds of files that are often taken for a survey, each with what to do instead. */
const foreign: readonly {
  readonly starts: readonly number[]
  readonly what: string
  readonly mend: string
}[] = [
  {
    starts: [0x50, 0x4b, 0x03, 0x04],
    what: 'This is a packed file (zip, spreadsheet or KMZ).',
    mend: 'Unpack it first, or save the spreadsheet as CSV.',
  },
  { starts: [0x1f, 0x8b], what: 'This is a packed file (gzip).', mend: 'Unpack it first.' },
  {
    starts: [0x25, 0x50, 0x44, 0x46],
    what: 'This is a PDF, a drawing of levels and not the levels themselves.',
    mend: 'Ask the surveyor for the points as CSV, LandXML or DXF.',
  },
  {
    starts: [0x41, 0x43, 0x31, 0x30],
    what: 'This is a DWG drawing.',
    mend: 'Save it as DXF (text) in the drawing program.',
  },
  {
    starts: [0x00, 0x00, 0x27, 0x0a],
    what: 'This is a shapefile.',
    mend: 'Save the layer as GeoJSON or CSV.',
  },
  {
    starts: [0x53, 0x51, 0x4c, 0x69],
    what: 'This is a database, perhaps a GeoPackage.',
    mend: 'Save the layer as GeoJSON or CSV.',
  },
  {
    starts: [0x4c, 0x41, 0x53, 0x46],
    what: 'This is a point cloud (LAS or LAZ).',
    mend: 'Make a ground grid of it first, and save that as GeoTIFF or an ASCII grid.',
  },
  {
    starts: [0x89, 0x50, 0x4e, 0x47],
    what: 'This is a picture.',
    mend: 'Use it as a backdrop; levels must come from a file of figures.',
  },
  {
    starts: [0xff, 0xd8, 0xff],
    what: 'This is a photo.',
    mend: 'Use it as a backdrop; levels must come from a file of figures.',
  },
  {
    starts: [...'AutoCAD Binary DXF'].map((letter) => letter.charCodeAt(0)),
    what: 'This is a binary DXF.',
    mend: 'Save it as a text (ASCII) DXF.',
  },
]

/**
 * A file that is certainly no survey we can read, told by its first bytes.
 *
 * @param bytes - the file
 * @returns what it is and what to do; undefined when it may be a survey
 */
export function foreignFile(bytes: Uint8Array): { what: string; mend: string } | undefined {
  return foreign.find(({ starts }) => starts.every((byte, at) => bytes[at] === byte))
}

/** Whether bytes begin as a TIFF or BigTIFF, in either byte order. */
export function isTiff(bytes: Uint8Array): boolean {
  const head = [...bytes.subarray(0, 4)].join(' ')
  return ['73 73 42 0', '77 77 0 42', '73 73 43 0', '77 77 0 43'].includes(head)
}

/** How each kind of text begins, looked for in this order. */
const beginnings: readonly { readonly format: TextFormat; readonly begins: RegExp }[] = [
  { format: 'ascii-grid', begins: /^\s*(ncols|nrows|[xy]ll(corner|center)|cellsize|dx|dy)\s+[-+\d.]/i },
  { format: 'dxf', begins: /^\s*(999[^\S\n]*\n[^\n]*\n\s*)*0[^\S\n]*\n\s*SECTION\s*\n/i },
  { format: 'geojson', begins: /^\s*[{[]\s*["}\]{[]/ },
]

/** Letters of a text that are looked at to know it. */
const LOOKED_AT = 4000

/**
 * The format of a text, told by how it begins and not by its name.
 *
 * @param text - the file, decoded
 * @returns the format, or what the file is instead
 */
export function formatOfText(text: string): TextFormat | { what: string; mend: string } {
  const head = text.slice(0, LOOKED_AT)
  if (/^\s*</.test(head)) return formatOfXml(head)
  if (head.includes('\0'))
    return {
      what: 'This is neither text nor a GeoTIFF.',
      mend: 'Give the survey as CSV, GeoJSON, LandXML, DXF (text), ASCII grid or GeoTIFF.',
    }
  return beginnings.find(({ begins }) => begins.test(head))?.format ?? 'table'
}

function formatOfXml(head: string): TextFormat | { what: string; mend: string } {
  if (/<\s*([\w.-]+:)?LandXML[\s>]/i.test(head)) return 'landxml'
  return {
    what: 'This is XML, but not LandXML.',
    mend: 'Export the survey as LandXML 1.x, or its points as CSV.',
  }
}
