export type { Override, Score, ScoreName, Scores } from './score.types'
