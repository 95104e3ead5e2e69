import { plainText, groundAnswer, holdAnswer, mowAnswer, sunAnswer, waterAnswer, type Answer } from '#report'
import type { Findings, Plan } from '#plan'
import { aroundLines } from './assess-around'
import { coverLines } from './assess-cover'
import { plantingLines } from './assess-planting'
import { monthLines } from './assess-months'
import { sunLines } from './assess-sun'
import { surveyLines } from './assess-survey'
import { zoneLines } from './assess-zones'
import { heading, plain, wrapped } from './text-layout'

/** The findings as text to read. */
export function assessText(plan: Plan, findings: Findings): string {
  const lines = [
    plan.name.toUpperCase(),
    ...(plan.note === undefined ? [] : wrapped(plan.note)),
    ...heading('First figures'),
    ...firstFigures(plan, findings),
    ...heading('The ground and what lies around'),
    ...aroundLines(plan, findings),
    ...surveyLines(findings),
    ...heading('To settle first'),
    ...settleLines(findings),
    ...heading('Zones, from the top down'),
    ...zoneLines(findings),
    ...heading('The sun of each zone'),
    ...sunLines(plan, findings),
    ...heading('What each zone may be'),
    ...coverLines(findings),
    ...heading('What to plant'),
    ...plantingLines(plan, findings),
    ...heading('The year’s care'),
    ...monthLines(plan, findings),
    ...heading('Mind'),
    ...wrapped(
      'Advice for gardeners, not an engineering assessment. Steep, wet or slipping ground, walls, and anything with a building above need a licensed engineer; laws and local codes come first.',
    ),
  ]
  return `${lines.join('\n')}\n`
}

function firstFigures(plan: Plan, findings: Findings): readonly string[] {
  const answers: readonly Answer[] = [
    groundAnswer(findings),
    waterAnswer(findings),
    sunAnswer(findings, plan.site.latitudeDeg),
    mowAnswer(findings),
    holdAnswer(findings),
  ]
  return answers.flatMap(({ says, note }) => [
    ...wrapped(plainText(says), '* '),
    ...(note.length > 0 ? wrapped(plainText(note), '  ') : []),
  ])
}

const kindWords = { danger: 'DANGER', clash: 'clash', gap: 'not known' } as const

function settleLines({ toSettle }: Findings): readonly string[] {
  if (toSettle.length === 0) return ['Nothing is open.']
  return toSettle.flatMap(({ kind, what, mend }) => [
    ...wrapped(`${kindWords[kind]}: ${what}`, '* '),
    ...wrapped(plain(mend), '  '),
  ])
}
