export type { Accuracy } from './accuracy.types'
export { assumedMethodsSchema, type AssumedMethods } from './assumed.schema'
export { accuracyOf } from './accuracy-of'
export { measuringErrors, type MeasuringErrors } from './measuring-errors'
