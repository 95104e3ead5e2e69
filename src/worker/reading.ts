import type { Outcome } from '#core/units'
import { groundOf, readSurveyFile, readWithColumns, type SurveyRead } from '#files'
import type { ReadAnswer, ReadAsk } from './read-messages'

/**
 * Answers questions about one survey file after the other; the file read last is kept for the questions that follow.
 *
 * @param tell - sends an answer back
 * @returns the receiver of questions
 */
export function reading(tell: (answer: ReadAnswer) => void): (ask: ReadAsk) => Promise<void> {
  let last: SurveyRead | undefined
  let before: Promise<void> = Promise.resolve()
  const answer = async (ask: ReadAsk): Promise<void> => {
    try {
      if (ask.kind === 'ground') {
        const ground = groundOf(needed(last), ask.wish)
        tell(answerOf(ask.id, ground, (value) => ({ kind: 'ground', id: ask.id, ground: value })))
        return
      }
      const read = ask.kind === 'read' ? await readAnew(ask) : readWithColumns(needed(last), ask.columns)
      if (read.ok) last = read.value
      tell(answerOf(ask.id, read, (value) => ({ kind: 'read', id: ask.id, read: value })))
    } catch (error) {
      tell({ kind: 'failed', id: ask.id, message: error instanceof Error ? error.message : String(error) })
    }
  }
  const readAnew = ({ bytes, name, columns }: Extract<ReadAsk, { kind: 'read' }>) => {
    last = undefined
    return readSurveyFile(bytes, name, columns)
  }
  // A question about a file waits until the file is read.
  return (ask) => (before = before.then(() => answer(ask)))
}

function needed(last: SurveyRead | undefined): SurveyRead {
  if (!last) throw new RangeError('reading: a file must have been read first, got none')
  return last
}

function answerOf<Value>(
  id: number,
  outcome: Outcome<Value>,
  answer: (value: Value) => ReadAnswer,
): ReadAnswer {
  return outcome.ok ? answer(outcome.value) : { kind: 'problems', id, problems: outcome.problems }
}
