import type { ZoneFacts } from '#core/zones'

/** Where on the section the middle of a zone lies [m from the top edge]; undefined when the section misses it. */
export function middleOfZone({ spans }: ZoneFacts): number | undefined {
  return spans[0] && (spans[0].fromM + spans[0].toM) / 2
}
