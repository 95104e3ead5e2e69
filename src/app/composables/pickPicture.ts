import type { Outcome, Problem } from '#core/units'

/** A picture from the device; it is kept in the plan and goes nowhere else. */
export interface Picture {
  readonly name: string
  readonly dataUrl: string
  readonly widthPx: number
  readonly heightPx: number
  /** What was done to it, in a sentence; empty when nothing was. */
  readonly note: string
}

/** Larger files are not read [bytes]. */
const LARGEST_FILE = 40_000_000
/** A longer picture is made smaller [characters of its data URL]: some 3 MB, so that every save stays quick. */
const LONGEST_KEPT = 4_000_000
/** Longest side of a picture that is made smaller [px]. */
const LONGEST_SIDE_PX = 3000
/** Strength of JPEG, 0 to 1. */
const JPEG_QUALITY = 0.85
const KINDS = ['image/png', 'image/jpeg', 'image/webp']

/** Lets the person choose a picture; undefined when they choose none. */
export function pickPicture(): Promise<Outcome<Picture> | undefined> {
  return new Promise((resolve) => {
    const input = document.createElement('input')
    input.type = 'file'
    input.accept = KINDS.join(',')
    input.addEventListener('cancel', () => resolve(undefined))
    input.addEventListener('change', () => {
      const [file] = input.files ?? []
      if (file) void readPicture(file).then(resolve)
      else resolve(undefined)
    })
    input.click()
  })
}

async function readPicture(file: File): Promise<Outcome<Picture>> {
  if (!KINDS.includes(file.type))
    return refusedPicture(file, 'It is not a PNG, JPEG or WebP picture.', 'Save or scan it as one of these.')
  if (file.size > LARGEST_FILE)
    return refusedPicture(
      file,
      `It takes ${Math.round(file.size / 1e6)} MB; up to ${LARGEST_FILE / 1e6} MB are read.`,
      'Scan it at a lower resolution.',
    )
  try {
    return await kept(file, await createImageBitmap(file))
  } catch {
    return refusedPicture(
      file,
      'The picture cannot be read.',
      'It may be cut short. Open it elsewhere and save it anew.',
    )
  }
}

async function kept(file: File, bitmap: ImageBitmap): Promise<Outcome<Picture>> {
  const { width, height } = bitmap
  const own = await asDataUrl(file)
  const share = Math.min(1, LONGEST_SIDE_PX / Math.max(width, height))
  if (own.length <= LONGEST_KEPT && share === 1)
    return { ok: true, value: { name: file.name, dataUrl: own, widthPx: width, heightPx: height, note: '' } }
  const [widthPx, heightPx] = [Math.round(width * share), Math.round(height * share)]
  const canvas = document.createElement('canvas')
  canvas.width = widthPx
  canvas.height = heightPx
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, widthPx, heightPx)
  const dataUrl = canvas.toDataURL('image/jpeg', JPEG_QUALITY)
  if (dataUrl.length > LONGEST_KEPT)
    return refusedPicture(
      file,
      'It is too large even when made smaller.',
      'Cut it to the plot and save it as JPEG.',
    )
  const note = `It was ${width} × ${height} px and is kept as ${widthPx} × ${heightPx} px, so that the plan stays small.`
  return { ok: true, value: { name: file.name, dataUrl, widthPx, heightPx, note } }
}

function asDataUrl(file: File): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader()
    reader.addEventListener('load', () =>
      typeof reader.result === 'string' ? resolve(reader.result) : reject(new Error('no text')),
    )
    reader.addEventListener('error', () => reject(reader.error ?? new Error('not read')))
    reader.readAsDataURL(file)
  })
}

const refusedPicture = (file: File, what: string, mend: string): Outcome<never> => {
  const problem: Problem = { where: file.name, what, mend }
  return { ok: false, problems: [problem] }
}
