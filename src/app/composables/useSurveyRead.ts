import type { Problem } from '#core/units'
import { MOST_BYTES, type SurveyGround, type SurveyRead, type SurveyWish } from '#files'
import type { LevelColumns } from '#io'
import type { ReadAnswer } from '#worker'
import { onScopeDispose, ref, shallowRef, toRaw } from 'vue'
import { blankLines } from './blankLines'
import { useReader } from './useReader'

/** What is being read. */
interface Source {
  readonly name: string
  readonly bytes: Uint8Array
  /** Lines that the person left out. */
  readonly leftOut: ReadonlySet<number>
}

const MEBIBYTE = 1024 * 1024

/**
 * Reads survey files off the main thread: what was understood, and the ground it gives with what the person wishes.
 * Answers to earlier questions are dropped; to cancel, the worker is ended.
 *
 * @param start - starts a reader
 */
export function useSurveyRead(start: () => Worker) {
  const state = emptyState()
  const { source, read, problems, columns } = state
  const reader = useReader(start, (answer, ofGround) => take(state, answer, ofGround))

  function begin(next: Source, told?: LevelColumns): void {
    reset(state, next, told)
    state.busy.value = true
    reader.read({ ...next, ...(told ? { columns: { ...told } } : {}) })
  }

  const open = (name: string, bytes: Uint8Array): void => begin({ name, bytes, leftOut: new Set() })

  /** A file, unless it is larger than what is read; then it is not even opened. */
  async function openFile(file: File): Promise<void> {
    if (file.size <= MOST_BYTES) return open(file.name, new Uint8Array(await file.arrayBuffer()))
    clear()
    problems.value = [tooLarge(file)]
  }

  /** Ends the worker, and forgets the file. */
  function clear(): void {
    reader.end()
    reset(state)
  }

  /** The same table with its columns told by the person. */
  function setColumns(told: LevelColumns): void {
    if (!read.value) return void (source.value && begin(source.value, told))
    columns.value = told
    state.ground.value = undefined
    state.busy.value = true
    reader.columns({ ...told })
  }

  /** The same text without some of its lines. */
  function leaveOut(lines: readonly number[]): void {
    if (!source.value) return
    const leftOut = new Set([...source.value.leftOut, ...lines])
    begin({ ...source.value, bytes: blankLines(source.value.bytes, leftOut), leftOut }, columns.value)
  }

  /** What the file gives with this wish; none while the wish is not whole. */
  function wishFor(wish: SurveyWish | undefined): void {
    state.ground.value = undefined
    reader.ground(wish && toRaw(wish))
  }

  onScopeDispose(reader.end)
  return { ...state, open, openFile, clear, setColumns, leaveOut, wishFor }
}

const emptyState = () => ({
  source: shallowRef<Source>(),
  busy: ref(false),
  read: shallowRef<SurveyRead>(),
  ground: shallowRef<SurveyGround>(),
  problems: shallowRef<readonly Problem[]>([]),
  /** Columns of a table as the person told them. */
  columns: shallowRef<LevelColumns>(),
})

type State = ReturnType<typeof emptyState>

function reset(state: State, source?: Source, columns?: LevelColumns): void {
  state.source.value = source
  state.columns.value = columns
  state.busy.value = false
  state.read.value = undefined
  state.ground.value = undefined
  state.problems.value = []
}

function take(state: State, answer: ReadAnswer, ofGround: boolean): void {
  if (!ofGround) {
    state.busy.value = false
    // What was read before, with other columns, must not be kept by mistake.
    state.read.value = answer.kind === 'read' ? answer.read : undefined
  }
  state.ground.value = answer.kind === 'ground' ? answer.ground : undefined
  state.problems.value = problemsOf(answer)
}

function problemsOf(answer: ReadAnswer): readonly Problem[] {
  if (answer.kind === 'problems') return answer.problems
  return answer.kind === 'failed' ? [broken(answer.message)] : []
}

const broken = (message: string): Problem => ({
  where: 'reading the survey',
  what: `Something went wrong: ${message || 'no reason given'}.`,
  mend: 'Nothing was kept. Try another export of the survey, or paste its points.',
})

const tooLarge = ({ name, size }: File): Problem => ({
  where: name,
  what: `The file has ${Math.ceil(size / MEBIBYTE)} MiB; at most ${MOST_BYTES / MEBIBYTE} MiB are read.`,
  mend: 'Cut it to the plot and its surroundings, or thin it out.',
})
