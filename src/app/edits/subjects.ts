import {
  backdropSubject,
  beyondSubject,
  sectionsSubject,
  thingsSubject,
  viewsSubject,
} from './around-subjects'
import { levelsSubject, linesSubject, outlineSubject } from './ground-subjects'
import type { Subject } from './subject.types'

/** Everything that can be worked on on the plan, besides zones. */
export const subjects: readonly Subject[] = [
  levelsSubject,
  linesSubject,
  outlineSubject,
  thingsSubject,
  beyondSubject,
  viewsSubject,
  sectionsSubject,
  backdropSubject,
]
