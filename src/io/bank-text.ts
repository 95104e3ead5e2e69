import {
  bankSurveySchema,
  riseFromAngleM,
  riseFromPercentM,
  riseFromRatioM,
  type BankSurvey,
} from '#core/survey'
import type { Outcome } from '#core/units'
import { problemsOf } from '#plan'

/** Ways to write a rise, each with how it becomes metres. */
const riseForms: readonly {
  readonly form: RegExp
  readonly makesSense: (figure: number) => boolean
  readonly riseM: (lengthM: number, figure: number) => number
}[] = [
  { form: /^([\d.]+) ?(deg|°)$/, makesSense: (figure) => figure <= 90, riseM: riseFromAngleM },
  { form: /^([\d.]+) ?%$/, makesSense: () => true, riseM: riseFromPercentM },
  { form: /^1 ?: ?([\d.]+)$/, makesSense: (figure) => figure > 0, riseM: riseFromRatioM },
  { form: /^([\d.]+) ?m?$/, makesSense: () => true, riseM: (_lengthM, figure) => figure },
]

/**
 * A rise as a person writes it: "2.4", "19.5deg", "1:3" or "33%".
 *
 * @param text - the rise
 * @param lengthM - length down the slope, tape on the ground [m]
 * @returns rise [m], or undefined when the text says none
 */
export function riseFromText(text: string, lengthM: number): number | undefined {
  for (const { form, makesSense, riseM } of riseForms) {
    const figure = Number(form.exec(text.trim())?.[1])
    if (Number.isFinite(figure) && makesSense(figure) && lengthM > 0) return riseM(lengthM, figure)
  }
  return undefined
}

/**
 * A bank in four numbers: "LENGTH,RISE,DIRECTION,WIDTH".
 *
 * @param text - such as "7.2,2.4,215,11" or "7.2,1:3,215,11"
 * @returns the bank, or what is wrong with it
 */
export function bankFromText(text: string): Outcome<BankSurvey> {
  const parts = text.split(',').map((part) => part.trim())
  const [length = '', rise = '', direction = '', width = ''] = parts
  const riseM = riseFromText(rise, Number(length))
  if (parts.length !== 4 || riseM === undefined)
    return {
      ok: false,
      problems: [
        {
          where: 'bank',
          what: `“${text}” is not a bank in four numbers.`,
          mend: 'Write length, rise, direction and width, such as 7.2,2.4,215,11. The rise may be 2.4, 20deg, 1:3 or 33%.',
        },
      ],
    }
  const bank = bankSurveySchema.safeParse({
    kind: 'bank',
    lengthM: Number(length),
    riseM,
    facesDeg: Number(direction),
    widthM: Number(width),
  })
  return bank.success
    ? { ok: true, value: bank.data }
    : { ok: false, problems: problemsOf(bank.error.issues, 'bank') }
}
