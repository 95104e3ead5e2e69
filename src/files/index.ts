export type {
  FileCrs,
  LengthUnit,
  SurveyFormat,
  SurveyPart,
  SurveyRead,
  SurveyWish,
} from './survey-read.types'
