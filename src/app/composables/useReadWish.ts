import type { Doubt, LengthUnit, SurveyPart, SurveyRead, SurveyWish } from '#files'
import { computed, reactive, ref, watch, type Ref } from 'vue'

/** A doubt, how it is known, and whether it is answered. */
interface AskedDoubt extends Doubt {
  readonly key: string
  readonly answer: string | undefined
}

/**
 * What the person confirms of a survey: parts, unit, coordinate system, and an answer to every doubt.
 *
 * @param read - the file as understood
 */
export function useReadWish(read: Readonly<Ref<SurveyRead | undefined>>) {
  const said = emptyWish()
  const { partIds, unit, levelUnit, epsg, zeroLevels } = said
  const { doubts, answer, forget } = useDoubts(read, partIds, (word) => (zeroLevels.value = word))

  watch(read, (now, before) => {
    if (!now) return
    forget()
    zeroLevels.value = undefined
    // The same table with other columns keeps what was said of it.
    if (before?.table === undefined || now.table === undefined) begin(said, now)
  })

  const parts = computed(() => chosenOf(read.value, partIds.value))
  const hasZeros = computed(() => parts.value.some(holdsZero))
  const still = computed(() => {
    const open = doubts.value.filter((doubt) => doubt.answer === undefined).length
    return [
      ...(parts.value.length === 0 ? ['which part of the file is the ground'] : []),
      ...(unit.value === undefined ? ['the unit of its lengths'] : []),
      ...(open > 0 ? [open === 1 ? 'the question above' : `the ${open} questions above`] : []),
    ]
  })
  const wish = computed<SurveyWish | undefined>(() =>
    unit.value === undefined || parts.value.length === 0
      ? undefined
      : {
          partIds: parts.value.map(({ id }) => id),
          unit: unit.value,
          levelUnit: levelUnit.value,
          epsg: epsg.value,
          zeroLevels: zeroLevels.value,
        },
  )

  /** Groups of points go together; a surface or a grid is the whole ground by itself. */
  function choosePart(part: SurveyPart, chosen: boolean): void {
    const others = parts.value.filter(({ id }) => id !== part.id)
    const kept = part.kind === 'points' ? others.filter(({ kind }) => kind === 'points') : []
    partIds.value = (chosen ? [...kept, part] : others).map(({ id }) => id)
  }

  return { partIds, unit, levelUnit, epsg, parts, doubts, hasZeros, still, wish, answer, choosePart }
}

const emptyWish = () => ({
  partIds: ref<readonly string[]>([]),
  unit: ref<LengthUnit>(),
  levelUnit: ref<LengthUnit>(),
  epsg: ref<number>(),
  zeroLevels: ref<SurveyWish['zeroLevels']>(),
})

/** What the file says itself; a part is taken only when there is no other. */
function begin(said: ReturnType<typeof emptyWish>, { parts, unit, levelUnit }: SurveyRead): void {
  const [only] = parts
  said.partIds.value = only && parts.length === 1 ? [only.id] : []
  said.unit.value = unit
  said.levelUnit.value = levelUnit
  said.epsg.value = undefined
}

/** The doubts about what was chosen, and the answers to them. */
function useDoubts(
  read: Readonly<Ref<SurveyRead | undefined>>,
  partIds: Readonly<Ref<readonly string[]>>,
  zeros: (word: 'keep' | 'leave-out') => void,
) {
  const answers = reactive(new Map<string, string>())
  const doubts = computed<readonly AskedDoubt[]>(() =>
    (read.value?.doubts ?? [])
      .filter((doubt) => concerns(doubt, read.value?.parts ?? [], chosenOf(read.value, partIds.value)))
      .map((doubt) => ({ ...doubt, ...keyed(doubt), answer: answers.get(keyed(doubt).key) })),
  )
  function answer(doubt: AskedDoubt, word: string): void {
    answers.set(doubt.key, word)
    if (word === 'keep' || word === 'leave-out') zeros(word)
  }
  return { doubts, answer, forget: () => answers.clear() }
}

const chosenOf = (read: SurveyRead | undefined, ids: readonly string[]): SurveyPart[] =>
  ids.map((id) => read?.parts.find((part) => part.id === id)).filter((part) => part !== undefined)

const keyed = ({ where, what }: Doubt) => ({ key: `${where} | ${what}` })

/** A doubt about a part that was not chosen need not be answered; a layer may hold several parts. */
function concerns({ where }: Doubt, all: readonly SurveyPart[], chosen: readonly SurveyPart[]): boolean {
  const layer = where.replace(/^layer /, '')
  const named = (parts: readonly SurveyPart[]) =>
    parts.some(({ name }) => name === where || name.startsWith(`${layer}: `))
  return !named(all) || named(chosen)
}

const holdsZero = ({ points, grid }: SurveyPart): boolean =>
  points.some(({ levelM }) => levelM === 0) || (grid?.levelsM.includes(0) ?? false)
