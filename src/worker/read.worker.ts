import { reading } from './reading'
import type { ReadAsk } from './read-messages'

const answer = reading((message) => postMessage(message))

addEventListener('message', (event: MessageEvent<ReadAsk>) => void answer(event.data))
