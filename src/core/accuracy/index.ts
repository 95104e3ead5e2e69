export type { Accuracy } from './accuracy.types'
