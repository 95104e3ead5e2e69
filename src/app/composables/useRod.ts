import { computed, type Ref } from 'vue'
import type { Findings } from '#plan'
import { readingAt } from '../stores/reading'
import { useSheetStore } from '../stores/sheet'

/** The rod on the section: where it stands, what it reads, and how it is moved. */
export function useRod(findings: Readonly<Ref<Findings | undefined>>) {
  const sheet = useSheetStore()

  const lengthM = computed(() => findings.value?.terrain.section.lengthM ?? 0)
  const reading = computed(() => {
    if (!findings.value || sheet.rodM === undefined) return undefined
    const atM = Math.min(sheet.rodM, lengthM.value)
    return readingAt(findings.value, atM, { question: sheet.question, month: sheet.month })
  })

  /** Moves it along; the first step sets it up in the middle. */
  function step(metres: number): void {
    if (lengthM.value === 0) return
    const atM = sheet.rodM === undefined ? lengthM.value / 2 : sheet.rodM + metres
    sheet.rodM = Math.min(lengthM.value, Math.max(0, Math.round(atM * 2) / 2))
  }

  return { reading, step }
}
