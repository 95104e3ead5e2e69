/** Letter faces of the drawings. */
export type Face = 'sans' | 'sansBold' | 'serif' | 'serifItalic'

/** Characters whose advances were measured, in the order of the rows below. */
const CHARACTERS =
  ' !"#$%&\'()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_`abcdefghijklmnopqrstuvwxyz{|}~°²³–−’“”·×±′›½'

/** Advances measured in a browser from the two shipped fonts [hundredths of the type size]. */
const advances: Readonly<Record<Face, readonly number[]>> = {
  sans: [
    20, 22, 32, 57, 60, 89, 63, 18, 26, 26, 40, 57, 23, 46, 22, 35, 55, 43, 51, 52, 52, 50, 54, 50, 55, 55,
    22, 23, 57, 57, 57, 45, 94, 53, 55, 60, 61, 51, 48, 62, 63, 24, 25, 56, 45, 73, 63, 61, 52, 61, 57, 54,
    51, 61, 55, 81, 52, 51, 52, 26, 35, 26, 48, 50, 21, 47, 51, 49, 51, 49, 35, 49, 53, 22, 22, 47, 22, 80,
    53, 51, 51, 51, 34, 44, 37, 51, 47, 68, 46, 47, 44, 26, 24, 26, 57, 37, 38, 38, 70, 57, 23, 38, 38, 23,
    57, 57, 22, 31, 90,
  ],
  sansBold: [
    19, 25, 37, 58, 60, 90, 64, 20, 27, 27, 40, 57, 26, 46, 26, 38, 57, 46, 52, 54, 55, 52, 56, 52, 56, 57,
    25, 26, 57, 57, 57, 47, 94, 56, 56, 61, 62, 52, 49, 63, 64, 25, 26, 59, 47, 75, 64, 62, 53, 62, 58, 54,
    52, 62, 58, 83, 55, 54, 53, 27, 38, 27, 50, 51, 24, 48, 51, 50, 52, 51, 36, 50, 53, 23, 23, 49, 23, 80,
    53, 52, 51, 52, 35, 45, 38, 52, 49, 71, 48, 49, 45, 28, 25, 28, 57, 37, 42, 42, 70, 57, 26, 45, 45, 27,
    57, 57, 28, 31, 101,
  ],
  serif: [
    23, 25, 34, 60, 60, 80, 75, 18, 27, 27, 39, 57, 23, 33, 23, 39, 60, 60, 60, 60, 60, 60, 60, 60, 60, 60,
    27, 28, 57, 57, 57, 48, 90, 73, 66, 71, 77, 67, 61, 77, 82, 35, 40, 76, 62, 102, 78, 80, 63, 80, 70, 56,
    72, 79, 71, 102, 73, 69, 65, 29, 39, 29, 57, 41, 50, 51, 58, 47, 59, 49, 36, 51, 59, 28, 25, 57, 27, 88,
    60, 57, 59, 58, 40, 42, 36, 58, 57, 79, 56, 55, 47, 29, 23, 29, 57, 37, 35, 32, 49, 57, 23, 41, 41, 25,
    57, 57, 19, 30, 78,
  ],
  serifItalic: [
    24, 25, 34, 60, 60, 76, 70, 19, 27, 27, 39, 57, 23, 31, 23, 40, 60, 60, 60, 60, 60, 60, 60, 65, 60, 60,
    27, 27, 57, 57, 57, 49, 90, 70, 64, 69, 75, 65, 58, 75, 79, 34, 39, 72, 59, 98, 75, 77, 61, 77, 68, 54,
    69, 76, 68, 96, 68, 66, 62, 29, 38, 29, 57, 39, 50, 52, 49, 39, 51, 40, 29, 43, 53, 29, 27, 49, 26, 81,
    57, 46, 55, 49, 42, 35, 31, 53, 48, 72, 49, 51, 41, 28, 24, 28, 57, 38, 35, 32, 47, 57, 23, 40, 40, 25,
    57, 57, 18, 30, 75,
  ],
}

/** Advance of a character that was not measured [hundredths of the type size]. */
const UNKNOWN_ADVANCE = 62

/** A space that keeps a figure with its unit is as wide as a plain one. */
const TIED = '\u00A0'

/** Room for hinting and optical sizes [ratio]. */
const SLACK = 1.03

/** Width of a line of text, from a table of advances: figures are laid out with no screen at hand [px]. */
export function textWidthPx(text: string, face: Face, sizePx: number): number {
  let hundredths = 0
  for (const character of text.replaceAll(TIED, ' '))
    hundredths += advances[face][CHARACTERS.indexOf(character)] ?? UNKNOWN_ADVANCE
  return (hundredths / 100) * sizePx * SLACK
}
