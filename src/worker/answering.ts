import type { Deriver } from '#plan'
import type { Answer, Ask } from './messages'

/**
 * Answers questions one stage at a time, and lets newer questions in between stages, so that a plan still being
 * worked on is dropped as soon as it is out of date or cancelled.
 *
 * @param deriver - runs the stages, keeping results from question to question
 * @param tell - sends an answer back
 * @param pause - lets waiting messages in; resolves at once when there are none
 * @returns the receiver of questions
 */
export function answering(
  deriver: Deriver,
  tell: (answer: Answer) => void,
  pause: () => Promise<void>,
): (ask: Ask) => Promise<void> {
  let newest = 0
  return async (ask) => {
    if (ask.kind === 'cancel') {
      newest = 0
      return
    }
    const { id, plan } = ask
    newest = id
    try {
      const steps = deriver.steps(plan)
      for (;;) {
        const step = steps.next()
        if (step.done) {
          const outcome = step.value
          tell(
            outcome.ok
              ? { kind: 'findings', id, findings: outcome.value }
              : { kind: 'problems', id, problems: outcome.problems },
          )
          return
        }
        tell({ kind: 'stage', id, stage: step.value.stage, done: step.value.done })
        await pause()
        if (newest !== id) return
      }
    } catch (error) {
      tell({ kind: 'failed', id, message: error instanceof Error ? error.message : String(error) })
    }
  }
}
