import './style/tokens.css'
import './style/figures.css'
import './style/print.css'
import './figures/strips/strips.css'
import './figures/year/year.css'

export { styleText } from './style/style-text'
export { rampColour, ramps, wordOn, type RampName } from './ramps'
export { sectionView } from './section-view'
export { planView } from './plan-view'
export {
  questions,
  type PlanView,
  type Question,
  type SectionView,
  type SectionZone,
} from './section-view.types'
export type { Box } from './drawing/path'
export {
  COMPACT_PX,
  fittingHeightPx,
  groundAt,
  sectionScale,
  type Axis,
  type SectionScale,
} from './drawing/scale'
export { textWidthPx } from './drawing/text-width'
export { default as SectionFigure } from './figures/section/SectionFigure.vue'
export { default as SectionTable } from './figures/section/SectionTable.vue'
export { default as PlanFigure } from './figures/section/PlanFigure.vue'
export { coverWords, verdictWords } from './figures/section/verdict-words'
export {
  groundAnswer,
  handoverAnswer,
  holdAnswer,
  monthAnswer,
  mowAnswer,
  sunAnswer,
  waterAnswer,
} from './words/answers'
export { plainText, type AccountKey, type Answer, type Phrase } from './words/phrase'
export { stripView } from './figures/strips/strip-view'
export type { StripView } from './figures/strips/strip-view.types'
export { default as StripStack } from './figures/strips/StripStack.vue'
export { default as StripTables } from './figures/lists/StripTables.vue'
export { yearView } from './figures/year/year-view'
export type { YearKind, YearView } from './figures/year/year-view.types'
export { default as YearFigure } from './figures/year/YearFigure.vue'
export { default as YearTables } from './figures/year/YearTables.vue'
export { default as MonthList } from './figures/year/MonthList.vue'
