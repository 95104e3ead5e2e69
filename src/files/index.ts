export { groundOf } from './ground-of'
export { MOST_BYTES, readSurveyFile } from './read-survey-file'
export { readWithColumns } from './table-file'
export { unitLengthM, unitNames, unitOfWord } from './length-unit'
export { surveySummary, type PartSummary } from './survey-summary'
export { writeGeoTiff } from './write-geotiff'
export type {
  Doubt,
  DoubtAbout,
  FileCrs,
  LengthUnit,
  ReadTable,
  SurveyFormat,
  SurveyGround,
  SurveyPart,
  SurveyRead,
  SurveyWindow,
  SurveyWish,
} from './survey-read.types'
