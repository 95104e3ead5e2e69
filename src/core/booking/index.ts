export {
  bookSchema,
  type Book,
  type ChainBook,
  type LevelBook,
  type StepBook,
  type StringBook,
} from './booking.schema'
export { surveyTablesSchema, type Allowable, type SurveyMethod, type SurveyTables } from './methods.schema'
