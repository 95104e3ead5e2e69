import { loadTables } from '#io'
import { createDeriver } from '#plan'
import { answering } from './answering'
import type { Ask } from './messages'

const answer = answering(
  createDeriver(loadTables()),
  (message) => postMessage(message),
  () => new Promise((resolve) => setTimeout(resolve)),
)

addEventListener('message', (event: MessageEvent<Ask>) => void answer(event.data))
