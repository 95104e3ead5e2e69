import { refusalOf } from '#core/cover'
import { coverWords, verdictWords } from '#report'
import type { Findings, ZoneFindings } from '#plan'
import { wrapped } from './text-layout'

/** What each zone may be, may not be, and what to mind. */
export function coverLines({ zoning, zones }: Findings): readonly string[] {
  return zones.flatMap((found) => {
    const zone = zoning.zones.find(({ id }) => id === found.zoneId)
    return zone ? [`${zone.letter}  ${zone.name}`, ...zoneCover(found)] : []
  })
}

function zoneCover({ cover }: ZoneFindings): readonly string[] {
  const lower = (kind: typeof cover.chosen) => coverWords[kind].toLowerCase()
  const could = cover.options.filter(({ kind, verdict }) => verdict !== 'refused' && kind !== cover.chosen)
  const refused = cover.options.filter(({ verdict }) => verdict === 'refused')
  const standing = cover.options.find(({ kind }) => kind === cover.chosen)
  return [
    ...wrapped(
      `${coverWords[cover.chosen]}${cover.chosenByPerson ? ', as you decided' : ', as suggested'}. Mowing: ${verdictWords[cover.mowing].toLowerCase()}.`,
      '   ',
    ),
    ...(could.length > 0
      ? wrapped(`Could also be: ${could.map(({ kind }) => lower(kind)).join(', ')}.`, '   ')
      : []),
    ...refused.flatMap((option) =>
      wrapped(`Not ${lower(option.kind)}: ${refusalOf(option) ?? 'it is refused.'}`, '   '),
    ),
    ...[...cover.machines, ...cover.options.filter(({ kind }) => kind === cover.chosen)].flatMap(
      ({ closeCall }) => (closeCall === undefined ? [] : wrapped(closeCall, '   ! ')),
    ),
    ...(standing?.cautions ?? []).flatMap(({ text }) => wrapped(text, '   ! ')),
  ]
}
