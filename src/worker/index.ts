export type { Answer, Ask } from './messages'

/** Starts the worker that derives findings. */
export function startWorker(): Worker {
  return new Worker(new URL('./derive.worker.ts', import.meta.url), { type: 'module', name: 'derive' })
}
