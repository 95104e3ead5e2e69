import { defineStore } from 'pinia'
import { ref } from 'vue'

/** The seven questions, in the order of their keys. */
export const questions = [
  { id: 'ground', asks: 'What is this ground?', short: 'ground' },
  { id: 'water', asks: 'Where does the water go?', short: 'water' },
  { id: 'sun', asks: 'Who gets the sun?', short: 'sun' },
  { id: 'mow', asks: 'What may I mow?', short: 'mow' },
  { id: 'hold', asks: 'What holds this bank?', short: 'holds' },
  { id: 'month', asks: 'What happens this month?', short: 'month' },
  { id: 'handover', asks: 'What do I hand over?', short: 'hand over' },
] as const

export type QuestionId = (typeof questions)[number]['id']

/** What the person is looking at: nothing of it is saved in the plan. */
export const useSheetStore = defineStore('sheet', () => {
  const question = ref<QuestionId>('ground')
  /** Zone picked on the sheet, by its id. */
  const zoneId = ref<string>()
  /** Where the rod stands [m from the top edge]. */
  const rodM = ref<number>()
  /** Which account the level book shows, as "zoneId/score". */
  const asked = ref<{ readonly zoneId: string; readonly about: string }>()
  const month = ref(0)
  /** The plan fills the sheet and the section is a strip above it. */
  const planLarge = ref(false)
  return { question, zoneId, rodM, asked, month, planLarge }
})
