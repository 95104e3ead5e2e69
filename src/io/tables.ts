import careMachines from '#data/care/machines'
import careOperations from '#data/care/operations'
import careWindows from '#data/care/windows'
import climatePlaces from '#data/climate/places'
import coverCautions from '#data/cover/cautions'
import coverLimits from '#data/cover/limits'
import coverRules from '#data/cover/rules'
import soilClasses from '#data/soil/classes'
import soilCompaction from '#data/soil/compaction'
import soilDrainage from '#data/soil/drainage'
import soilErodibility from '#data/soil/erodibility'
import surveyAdvice from '#data/survey/advice'
import surveyAllowables from '#data/survey/allowables'
import surveyAssumed from '#data/survey/assumed'
import surveyMethods from '#data/survey/methods'
import waterBeyond from '#data/water/beyond'
import waterCoverUse from '#data/water/cover-use'
import waterCurveNumbers from '#data/water/curve-numbers'
import waterStages from '#data/water/erosion-stages'
import waterGroundCover from '#data/water/ground-cover'
import { assumedMethodsSchema } from '#core/accuracy'
import { surveyTablesSchema } from '#core/booking'
import { careWindowsSchema, operationsSchema } from '#core/care'
import { placeSchema } from '#core/climate'
import { coverCautionsSchema, coverLimitsSchema, coverRulesSchema, machinesSchema } from '#core/cover'
import { soilTablesSchema } from '#core/soil'
import { waterTablesSchema } from '#core/water'
import type { Tables } from '#plan'
import { z } from 'zod'
import { loadPlants } from './plant-tables'
import { loadScoreRules } from './score-tables'
import { loadShadeTables } from './shade-tables'
import { loadSources } from './source-table'

/**
 * Every table of data/, checked once.
 *
 * @returns the tables that deriving reads
 */
export function loadTables(): Tables {
  return {
    survey: surveyTablesSchema.parse({
      methods: surveyMethods,
      allowables: surveyAllowables,
      advice: surveyAdvice,
    }),
    assumed: assumedMethodsSchema.parse(surveyAssumed),
    shade: loadShadeTables(),
    soil: soilTablesSchema.parse({
      classes: soilClasses,
      compaction: soilCompaction,
      drainage: soilDrainage,
      erodibility: soilErodibility,
    }),
    water: waterTablesSchema.parse({
      curveNumbers: waterCurveNumbers,
      coverUse: waterCoverUse,
      groundCover: waterGroundCover,
      stages: waterStages,
      beyond: waterBeyond,
    }),
    scores: loadScoreRules(),
    care: {
      cover: {
        machines: machinesSchema.parse(careMachines),
        limits: coverLimitsSchema.parse(coverLimits),
        rules: coverRulesSchema.parse(coverRules),
        cautions: coverCautionsSchema.parse(coverCautions),
      },
      operations: operationsSchema.parse(careOperations),
      windows: careWindowsSchema.parse(careWindows),
    },
    plants: loadPlants(),
    places: z.array(placeSchema).parse(climatePlaces),
    sources: loadSources(),
  }
}
