export {
  bookSchema,
  type Book,
  type ChainBook,
  type LevelBook,
  type StepBook,
  type StringBook,
} from './booking.schema'
export { surveyTablesSchema, type Allowable, type SurveyMethod, type SurveyTables } from './methods.schema'
export { FOOT_M, lengthFromText, lengthToText, US_SURVEY_FOOT_M, type WrittenUnit } from './written-length'
export { reduceLevelBook } from './reduce-level-book'
export type { BookCheck, BookStation, ReducedLevelBook } from './reduced-book.types'
export { stationsOf } from './book-stations'
export { fromTheTop } from './turned-stations'
export { markedLevelsOf } from './marked-levels'
export { bookSdM, pointSdsM } from './book-error'
export { methodOfBook } from './method-of-book'
export { professionalAdvice } from './professional-advice'
export { trueBearing } from './true-bearing'
