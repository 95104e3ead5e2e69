import type { Findings, Plan } from '#plan'
import { groundAnswer, holdAnswer, mowAnswer, waterAnswer } from '../words/answers'
import { sunAnswer } from '../words/sun-answer'
import type { Answer } from '../words/phrase'

/** The questions that the first page answers, with their answers. */
export function answersOf(
  plan: Plan,
  findings: Findings,
): readonly { readonly asks: string; readonly answer: Answer }[] {
  return [
    { asks: 'What is this ground?', answer: groundAnswer(findings) },
    { asks: 'Where does the water go?', answer: waterAnswer(findings) },
    { asks: 'Who gets the sun?', answer: sunAnswer(findings, plan.site.latitudeDeg) },
    { asks: 'What may I mow?', answer: mowAnswer(findings) },
    { asks: 'What holds this bank?', answer: holdAnswer(findings) },
  ]
}
