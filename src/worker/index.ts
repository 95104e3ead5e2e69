export type { Answer, Ask } from './messages'
export type { ReadAnswer, ReadAsk } from './read-messages'

/** Starts the worker that derives findings. */
export function startWorker(): Worker {
  return new Worker(new URL('./derive.worker.ts', import.meta.url), { type: 'module', name: 'derive' })
}

/** Starts the worker that reads survey files. */
export function startReader(): Worker {
  return new Worker(new URL('./read.worker.ts', import.meta.url), { type: 'module', name: 'read' })
}
