import type { LightClassName } from '#core/shade'

/** What the light of a zone is called. */
export const lightWords: Readonly<Record<LightClassName, string>> = {
  'full-sun': 'full sun',
  'part-shade': 'part shade',
  dappled: 'dappled shade',
  shade: 'shade',
  'deep-shade': 'deep shade',
}
