import type { GridFrame } from '#core/geometry'

/** Codes of TIFF 6.0 field types. */
const SHORT = 3
const LONG = 4
const ASCII = 2
const DOUBLE = 12

/** One entry of the directory: a tag, its type and its figures as bytes. */
interface Field {
  readonly tag: number
  readonly type: number
  readonly count: number
  readonly bytes: Uint8Array
}

/** What the grid's coordinates are, for programs that ask: a system of the plot's own, on no map. */
const CITATION = 'Lynchet plot: metres east and north of its own origin|'

/**
 * Writes a grid as GeoTIFF 1.1 (OGC 19-008r4): one band of 32-bit floats, row 0 northernmost, placed by the plot's own
 * metres. The same grid gives the same bytes.
 *
 * @param frame - where the grid lies
 * @param values - one value per cell
 * @param share - part of each cell inside the plot; cells with none are written as no data
 * @param options - the value that stands for no data
 * @returns the file
 */
export function writeGeoTiff(
  frame: GridFrame,
  values: ArrayLike<number>,
  share: ArrayLike<number>,
  { noData }: { readonly noData: number },
): Uint8Array {
  const cells = cellBytes(frame, { values, share, noData })
  const dataAt = directoryEnd(fieldsOf(frame, noData, 0))
  const fields = fieldsOf(frame, noData, dataAt)
  const file = new Uint8Array(dataAt + cells.length)
  writeDirectory(file, fields)
  file.set(cells, dataAt)
  return file
}

interface Cells {
  readonly values: ArrayLike<number>
  readonly share: ArrayLike<number>
  readonly noData: number
}

function cellBytes({ columns, rows }: GridFrame, { values, share, noData }: Cells): Uint8Array {
  const view = new DataView(new ArrayBuffer(columns * rows * 4))
  for (let cell = 0; cell < columns * rows; cell++) {
    const value = values[cell]
    const known = (share[cell] ?? 0) > 0 && value !== undefined && Number.isFinite(value)
    view.setFloat32(cell * 4, known ? value : noData, true)
  }
  return new Uint8Array(view.buffer)
}

function fieldsOf(
  { columns, rows, cellM, westM, southM }: GridFrame,
  noData: number,
  dataAt: number,
): Field[] {
  return [
    longs(256, [columns]),
    longs(257, [rows]),
    // Bits of a sample, no compression, black is zero.
    shorts(258, [32]),
    shorts(259, [1]),
    shorts(262, [1]),
    // One strip holds all rows.
    longs(273, [dataAt]),
    shorts(277, [1]),
    longs(278, [rows]),
    longs(279, [columns * rows * 4]),
    shorts(284, [1]),
    // Samples are floats.
    shorts(339, [3]),
    doubles(33_550, [cellM, cellM, 0]),
    doubles(33_922, [0, 0, 0, westM, southM + rows * cellM, 0]),
    shorts(34_735, geoKeys),
    text(34_737, CITATION),
    text(42_113, String(noData)),
  ]
}

/** A model of our own (32767), values for areas, its name, and metres (9001) both ways. */
const geoKeys = [
  [1, 1, 1, 4],
  [1024, 0, 1, 32_767],
  [1025, 0, 1, 1],
  [1026, 34_737, CITATION.length, 0],
  [3076, 0, 1, 9001],
].flat()

const shorts = (tag: number, figures: readonly number[]): Field => ({
  tag,
  type: SHORT,
  count: figures.length,
  bytes: written(figures, 2, (view, at, figure) => view.setUint16(at, figure, true)),
})

const longs = (tag: number, figures: readonly number[]): Field => ({
  tag,
  type: LONG,
  count: figures.length,
  bytes: written(figures, 4, (view, at, figure) => view.setUint32(at, figure, true)),
})

const doubles = (tag: number, figures: readonly number[]): Field => ({
  tag,
  type: DOUBLE,
  count: figures.length,
  bytes: written(figures, 8, (view, at, figure) => view.setFloat64(at, figure, true)),
})

function text(tag: number, letters: string): Field {
  const bytes = new TextEncoder().encode(`${letters}\0`)
  return { tag, type: ASCII, count: bytes.length, bytes }
}

function written(
  figures: readonly number[],
  size: number,
  write: (view: DataView, at: number, figure: number) => void,
): Uint8Array {
  const view = new DataView(new ArrayBuffer(figures.length * size))
  figures.forEach((figure, at) => write(view, at * size, figure))
  return new Uint8Array(view.buffer)
}

/** Bytes of the header, of the count of entries, of an entry, of the link to a next directory. */
const HEADER = 8
const COUNT = 2
const ENTRY = 12
const LINK = 4

const even = (bytes: number): number => bytes + (bytes % 2)

/** Up to four bytes stand in the entry itself. */
const apart = ({ bytes }: Field): number => (bytes.length > 4 ? even(bytes.length) : 0)

function directoryEnd(fields: readonly Field[]): number {
  const own = HEADER + COUNT + fields.length * ENTRY + LINK
  return fields.reduce((sum, field) => sum + apart(field), own)
}

function writeDirectory(file: Uint8Array, fields: readonly Field[]): void {
  const view = new DataView(file.buffer)
  // Little-endian TIFF whose directory stands straight after the header.
  view.setUint16(0, 0x4949, true)
  view.setUint16(2, 42, true)
  view.setUint32(4, HEADER, true)
  view.setUint16(HEADER, fields.length, true)
  let room = HEADER + COUNT + fields.length * ENTRY + LINK
  fields.forEach((field, row) => {
    const at = HEADER + COUNT + row * ENTRY
    view.setUint16(at, field.tag, true)
    view.setUint16(at + 2, field.type, true)
    view.setUint32(at + 4, field.count, true)
    if (apart(field) === 0) {
      file.set(field.bytes, at + 8)
      return
    }
    view.setUint32(at + 8, room, true)
    file.set(field.bytes, room)
    room += apart(field)
  })
}
