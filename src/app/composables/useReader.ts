import type { SurveyWish } from '#files'
import type { LevelColumns } from '#io'
import type { ReadAnswer, ReadAsk } from '#worker'

/**
 * A reader of survey files, started when it is first asked; answers to any but the newest question are dropped.
 *
 * @param start - starts the worker
 * @param told - gets each answer, and whether it is about the ground or about the file
 */
export function useReader(start: () => Worker, told: (answer: ReadAnswer, ofGround: boolean) => void) {
  let worker: Worker | undefined
  let files = 0
  let grounds = 0

  function ask(question: ReadAsk): void {
    worker ??= listened(start())
    worker.postMessage(question)
  }

  function listened(made: Worker): Worker {
    made.onmessage = ({ data }: MessageEvent<ReadAnswer>) => {
      // Questions about the ground are counted below zero.
      if (data.id === files) told(data, false)
      else if (data.id === -grounds) told(data, true)
    }
    made.onerror = ({ message }) => told({ kind: 'failed', id: files, message }, false)
    return made
  }

  return {
    read: (file: { name: string; bytes: Uint8Array; columns?: LevelColumns }): void => {
      const { name, bytes, columns } = file
      ask({ kind: 'read', id: ++files, name, bytes, ...(columns ? { columns } : {}) })
    },
    columns: (columns: LevelColumns): void => ask({ kind: 'columns', id: ++files, columns }),
    /** No wish only drops the answer that is awaited. */
    ground: (wish: SurveyWish | undefined): void => {
      grounds += 1
      if (wish) ask({ kind: 'ground', id: -grounds, wish })
    },
    end: (): void => {
      worker?.terminate()
      worker = undefined
      files += 1
      grounds += 1
    },
  }
}
