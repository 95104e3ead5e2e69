import { defineStore, storeToRefs } from 'pinia'
import { startWorker } from '#worker'
import { useFindings } from '../composables/useFindings'
import { usePlanStore } from './plan'

/** What follows from the plan on the sheet, worked out beside the page. */
export const useFindingsStore = defineStore('findings', () =>
  useFindings(storeToRefs(usePlanStore()).plan, startWorker()),
)
