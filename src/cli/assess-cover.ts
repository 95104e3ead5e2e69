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
    ...closeCallsOf(cover).flatMap((text) => wrapped(text, '   ! ')),
    ...(standing?.cautions ?? []).flatMap(({ text }) => wrapped(text, '   ! ')),
  ]
}

/** What lies near a limit: of the machines where they cut, else of the cover that stands. */
function closeCallsOf({ chosen, machines, options }: ZoneFindings['cover']): readonly string[] {
  const cut = chosen === 'mown' || chosen === 'meadow' ? machines.map(({ closeCall }) => closeCall) : []
  const ofMachines = cut.filter((text) => text !== undefined)
  const own = options.find(({ kind }) => kind === chosen)?.closeCall
  return ofMachines.length > 0 || own === undefined ? ofMachines : [own]
}
