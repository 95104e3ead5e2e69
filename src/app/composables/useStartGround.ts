import { professionalAdvice, type Book, type SurveyTables } from '#core/booking'
import { profileSurveySchema, type GroundSurvey, type ProfileSurvey } from '#core/survey'
import { toDegrees, type Outcome } from '#core/units'
import { problemsOf } from '#plan'
import { computed, type Ref } from 'vue'
import { keptBook, levelsOfBook, profileOfBook } from '../edits/book-ground'
import { linesOf } from '../edits/field-books'

/** An invented slope, to be typed over. */
export const FIRST_STATIONS: ProfileSurvey['stations'] = [
  { distanceM: 0, levelM: 3.4 },
  { distanceM: 3, levelM: 3.1 },
  { distanceM: 6, levelM: 1.8 },
  { distanceM: 9, levelM: 0.4 },
  { distanceM: 12, levelM: 0 },
]

/** What the ground of a measured slope is made from. */
interface GroundParts {
  readonly book: Readonly<Ref<Book | undefined>>
  readonly lies: Readonly<Ref<'line' | 'plan'>>
  readonly typed: Readonly<Ref<readonly ProfileSurvey['stations'][number][]>>
  readonly distancesAre: Readonly<Ref<ProfileSurvey['distancesAre']>>
  readonly facesDeg: Readonly<Ref<number | undefined>>
  readonly widthM: Readonly<Ref<number | undefined>>
}

/** The ground that a field book, or typed stations, give; with the problems in words. */
export function useStartGround(parts: GroundParts, tables: SurveyTables) {
  const { book, lies, typed, distancesAre, facesDeg, widthM } = parts

  const profile = computed(() => (book.value ? profileOfBook(book.value, tables) : undefined))
  const stations = computed(() => {
    if (!profile.value) return typed.value
    return profile.value.ok ? profile.value.value.stations : []
  })
  const turned = computed(() => profile.value?.ok === true && profile.value.value.turned)
  const levels = computed(() =>
    book.value?.kind === 'level-book' && lies.value === 'plan' ? levelsOfBook(book.value, tables) : undefined,
  )

  const ground = computed<Outcome<GroundSurvey>>(() => {
    if (levels.value) return levels.value.ok ? { ok: true, value: levels.value.value.ground } : levels.value
    if (profile.value && !profile.value.ok) return profile.value
    const whole = profileSurveySchema.safeParse({
      kind: 'profile',
      distancesAre: profile.value ? 'plan' : distancesAre.value,
      stations: stations.value,
      facesDeg: facesDeg.value,
      widthM: widthM.value,
    })
    return whole.success
      ? { ok: true, value: whole.data }
      : { ok: false, problems: problemsOf(whole.error.issues, 'profile') }
  })
  const kept = computed(() => (book.value ? keptBook(book.value) : undefined))
  /** An empty book has nothing wrong with it yet. */
  const begun = computed(() => book.value === undefined || linesOf(book.value).length > 1)
  const problems = computed(() => {
    if (!begun.value) return []
    return [
      ...(ground.value.ok ? [] : ground.value.problems),
      ...(kept.value?.ok === false ? kept.value.problems : []),
    ]
  })
  const ready = computed(() => ground.value.ok && kept.value?.ok !== false)
  const advice = computed(() => {
    const [first, last] = [stations.value[0], stations.value.at(-1)]
    if (!first || !last || widthM.value === undefined || !(widthM.value > 0)) return []
    const longM = last.distanceM - first.distanceM
    if (!(longM > 0)) return []
    const slopeDeg = toDegrees(Math.atan(Math.abs(first.levelM - last.levelM) / longM))
    return professionalAdvice({ slopeDeg, areaM2: longM * widthM.value }, tables)
  })

  return { stations, turned, levels, ground, kept, problems, ready, advice }
}
