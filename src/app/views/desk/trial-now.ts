import type { Obstacle } from '#plan'
import { shownFigure, wayWords } from '../../edits/trial-words'
import type { TrialWay } from '../../edits/trials'
import type { UsualFigures } from '../../edits/usual-figures'

/** What a figure is now, measured or as usual; empty where the way has no figure. */
export function nowWords(thing: Obstacle, way: TrialWay, usual: UsualFigures): string {
  const { figure } = wayWords(thing, way)
  if (!figure || way === 'gone') return ''
  const measured = shownFigure(thing[way], figure.unit)
  if (measured !== undefined) return `Now: ${measured} ${figure.unit}.`
  const taken = way === 'heightM' || way === 'ridgeM' ? undefined : usual[way]
  return taken === undefined
    ? 'Now: not measured.'
    : `Now: ${shownFigure(taken, figure.unit)} ${figure.unit}, as usual.`
}
