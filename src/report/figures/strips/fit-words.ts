import { textWidthPx, type Face } from '../../drawing/text-width'

/** The first wording that fits a width; undefined when none does. */
export function firstThatFits(
  wordings: readonly string[],
  widthPx: number,
  face: Face,
  sizePx: number,
): string | undefined {
  return wordings.find((words) => textWidthPx(words, face, sizePx) <= widthPx)
}

/** Words broken into lines no wider than given; what does not fit in so many lines ends in an ellipsis. */
export function wrapWords(
  text: string,
  room: { readonly widthPx: number; readonly face: Face; readonly sizePx: number; readonly most: number },
): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    const longer = line ? `${line} ${word}` : word
    if (line && textWidthPx(longer, room.face, room.sizePx) > room.widthPx) {
      lines.push(line)
      line = word
    } else line = longer
  }
  if (line) lines.push(line)
  if (lines.length <= room.most) return lines
  const kept = lines.slice(0, room.most)
  return [...kept.slice(0, -1), `${kept.at(-1) ?? ''}…`]
}

/** Sentences on one line where they fit together, else one under the other. */
export function linesThatFit(sentences: readonly string[], roomPx: number): string[] {
  const one = sentences.join(' ')
  return textWidthPx(one, 'sans', 11) <= roomPx ? [one] : [...sentences]
}
