import './style/tokens.css'
import './style/figures.css'
import './style/print.css'
import './figures/strips/strips.css'
import './figures/year/year.css'
import './figures/book/book.css'
import './figures/lists/lists.css'
import './figures/sun/sun.css'

export { styleText } from './style/style-text'
export { rampColour, ramps, wordOn, type RampName } from './ramps'
export { sectionView } from './section-view'
export { planShade, planShadings } from './plan-shade'
export type { PlanShade } from './plan-shade.types'
export { lightPicture } from './light-picture'
export { planView } from './plan-view'
export { isOutline } from './section-view-obstacles'
export {
  questions,
  type PlanMarked,
  type PlanView,
  type Question,
  type SectionView,
  type SectionZone,
} from './section-view.types'
export type { Box } from './drawing/path'
export { COMPACT_PX, fittingHeightPx, groundAt, sectionScale, type SectionScale } from './drawing/scale'
export type { Axis } from './drawing/axis'
export { KEY_STRIP_PX, planScale, type PlanScale } from './drawing/plan-scale'
export { textWidthPx } from './drawing/text-width'
export { default as SectionFigure } from './figures/section/SectionFigure.vue'
export { default as SmallSections } from './figures/section/SmallSections.vue'
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
export { groundFacts, type GroundFact } from './words/ground-facts'
export { terraceWords } from './words/terraces'
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
export { counted, grouped, money, withUnit } from './words/figures-in-words'
export { fieldSheetHtml } from './paper/field-sheet-html'
export { reportHtml } from './paper/report-html'
export { default as LevelBook } from './figures/book/LevelBook.vue'
export { default as WaterBook } from './figures/book/WaterBook.vue'
export { default as PlantList } from './figures/planting/PlantList.vue'
export { default as RefusedList } from './figures/planting/RefusedList.vue'
export { default as CoverCurve } from './figures/planting/CoverCurve.vue'
export { default as CoverCompare } from './figures/planting/CoverCompare.vue'
export { default as SunHoursCharts } from './figures/strips/SunHoursCharts.vue'
export { default as ZoneTable } from './figures/lists/ZoneTable.vue'
export { default as ZoneRows } from './figures/lists/ZoneRows.vue'
export { default as SettleList } from './figures/lists/SettleList.vue'
export { default as FigureTable } from './figures/lists/FigureTable.vue'
export { mixTable } from './figures/planting/mix-table'
export { coverTable } from './figures/planting/cover-curve'
export { sourceWords, type SourceList } from './figures/book/source-words'
export { default as SunPathFigure } from './figures/sun/SunPathFigure.vue'
export { sunPathTable } from './figures/sun/sky-table'
export { dateOf, dayWords, timeWords, type Clock } from './words/day-words'
export { default as DayByHour } from './figures/sun/DayByHour.vue'
export { dayByHourTable } from './figures/sun/hour-table'
export { default as SunTakers } from './figures/sun/SunTakers.vue'
export { sunTakersTable } from './figures/sun/takers-table'
export type { SunTime } from './figures/sun/takers-asked.types'
export { default as TrialCompare } from './figures/sun/TrialCompare.vue'
export { trialTable } from './figures/sun/trial-rows'
export { lightWords } from './words/light-words'
