import bases from '#data/rules/bases'
import changes from '#data/rules/changes'
import classes from '#data/rules/classes'
import erosion from '#data/rules/erosion'
import frost from '#data/rules/frost'
import lightScale from '#data/rules/light-scale'
import moistureScale from '#data/rules/moisture-scale'
import sun from '#data/rules/sun'
import wetness from '#data/rules/wetness'
import working from '#data/rules/working'
import { scoreRulesSchema, type ScoreRules } from '#core/scores'

/**
 * The rules of the five scores.
 *
 * @returns the tables of data/rules, checked
 */
export function loadScoreRules(): ScoreRules {
  return scoreRulesSchema.parse({
    bases,
    wetness,
    sun,
    erosion,
    frost,
    working,
    classes,
    moistureScale,
    lightScale,
    changes,
  })
}
