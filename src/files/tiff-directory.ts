/** Bytes of one figure by TIFF 6.0 and BigTIFF field type; index 0 is no type. */
const TYPE_BYTES = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4, 0, 0, 8, 8, 8]

/** Most entries that the first directory of an elevation model has. */
const MOST_ENTRIES = 200

/**
 * Whether the first directory of a TIFF promises no more than the file holds. A damaged count would otherwise have a
 * reader set aside all of the memory.
 *
 * @param bytes - a TIFF or BigTIFF, by its first four bytes
 * @returns false when an entry lies outside the file, or is of no known type
 */
export function soundDirectory(bytes: Uint8Array): boolean {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const little = bytes[0] === 0x49
  const big = bytes[2] === 43 || bytes[3] === 43
  try {
    return big ? soundEntries(view, bigLayout(view, little)) : soundEntries(view, classicLayout(view, little))
  } catch {
    return false
  }
}

/** Where a directory's entries stand and how they are read. */
interface Layout {
  readonly little: boolean
  readonly first: number
  readonly entries: number
  readonly entryBytes: number
  readonly countAt: (entry: number) => number
  /** Bytes that stand in the entry itself, and where a longer value begins. */
  readonly ownBytes: number
  readonly valueAt: (entry: number) => number
}

function classicLayout(view: DataView, little: boolean): Layout {
  const at = view.getUint32(4, little)
  return {
    little,
    first: at + 2,
    entries: view.getUint16(at, little),
    entryBytes: 12,
    countAt: (entry) => view.getUint32(entry + 4, little),
    ownBytes: 4,
    valueAt: (entry) => view.getUint32(entry + 8, little),
  }
}

function bigLayout(view: DataView, little: boolean): Layout {
  const long = (place: number) => Number(view.getBigUint64(place, little))
  const at = long(8)
  return {
    little,
    first: at + 8,
    entries: long(at),
    entryBytes: 20,
    countAt: (entry) => long(entry + 4),
    ownBytes: 8,
    valueAt: (entry) => long(entry + 12),
  }
}

function soundEntries(view: DataView, layout: Layout): boolean {
  const { little, first, entries, entryBytes, countAt, ownBytes, valueAt } = layout
  if (!(entries > 0 && entries <= MOST_ENTRIES)) return false
  for (let row = 0; row < entries; row++) {
    const entry = first + row * entryBytes
    const size = TYPE_BYTES[view.getUint16(entry + 2, little)] ?? 0
    const bytes = size * countAt(entry)
    if (size === 0 || bytes > view.byteLength) return false
    if (bytes > ownBytes && valueAt(entry) + bytes > view.byteLength) return false
  }
  return true
}
