import { defineStore } from 'pinia'
import { ref, shallowRef } from 'vue'
import type { SubjectId } from '../edits/subject.types'
import type { Asked } from './asked'

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

/** The pages of the field book, where what was measured and said is changed. */
export const deskPages = [
  { id: 'survey', name: 'Levels' },
  { id: 'lines', name: 'Lines' },
  { id: 'outline', name: 'Outline and holes' },
  { id: 'sections', name: 'Sections' },
  { id: 'around', name: 'Around the plot' },
  { id: 'far', name: 'Far hills' },
  { id: 'trials', name: 'Try a change' },
  { id: 'accuracy', name: 'Accuracy' },
  { id: 'backdrop', name: 'Backdrop' },
  { id: 'soil', name: 'Soil' },
  { id: 'climate', name: 'Climate' },
  { id: 'site', name: 'Place' },
  { id: 'brief', name: 'People and machines' },
  { id: 'zones', name: 'Zones' },
] as const

export type DeskPage = (typeof deskPages)[number]['id']

/** What the person is looking at: nothing of it is saved in the plan. */
export const useSheetStore = defineStore('sheet', () => {
  const question = ref<QuestionId>('ground')
  /** Zone picked on the sheet, by its id. */
  const zoneId = ref<string>()
  /** Where the rod stands [m from the top edge]. */
  const rodM = ref<number>()
  /** Which account the level book shows. */
  const asked = shallowRef<Asked>()
  const month = ref(new Date().getMonth())
  /** What is worked on on the plan. */
  const subject = ref<SubjectId | 'zones'>('zones')
  /** What is picked on the plan, besides zones. */
  const placed = shallowRef<{ readonly subject: SubjectId; readonly id: string }>()
  /** The plan fills the sheet and the section is a strip above it. */
  const planLarge = ref(false)
  /** Page of the field book that lies open under the drawing. */
  const desk = ref<DeskPage>()
  /** Figures are shown as tables. */
  const tables = ref(false)
  /** Which year of care is on show. */
  const yearKind = ref<'established' | 'first'>('established')
  /** Years since planting, for the drawing [a]. */
  const years = ref(5)

  /** Turns to a question; the level book is closed. */
  function turnTo(id: QuestionId): void {
    question.value = id
    asked.value = undefined
  }

  /** Opens the plan to work on something. */
  function workOn(id: SubjectId | 'zones'): void {
    subject.value = id
    planLarge.value = true
  }

  /** Everything as when a plan is first laid out. */
  function clear(): void {
    turnTo('ground')
    zoneId.value = undefined
    rodM.value = undefined
    subject.value = 'zones'
    placed.value = undefined
    planLarge.value = false
    desk.value = undefined
  }

  return {
    question,
    zoneId,
    rodM,
    asked,
    month,
    subject,
    placed,
    planLarge,
    desk,
    tables,
    yearKind,
    years,
    turnTo,
    workOn,
    clear,
  }
})
