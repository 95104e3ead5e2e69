import type { Findings } from '#plan'
import type { Asked } from '../stores/asked'
import { useSheetStore } from '../stores/sheet'

/** Which account stands behind which strip. */
const behind: Readonly<Record<string, Asked['about']>> = {
  gradient: 'working',
  mowing: 'cover',
  wetness: 'wetness',
  sun: 'sun',
  soil: 'water',
  passing: 'water',
  cover: 'cover',
  planting: 'cover',
  hours: 'hours',
}

/** Opens the level book behind a strip: of the picked zone, or of the one where it matters most. */
export function useAskStrip(findings: () => Findings) {
  const sheet = useSheetStore()

  function askStrip(strip: string): void {
    const about = behind[strip]
    if (!about) return
    const zoneId = sheet.zoneId ?? telling(findings(), about)
    sheet.zoneId = zoneId
    sheet.asked = { zoneId, about }
  }

  return { askStrip }
}

/** The zone whose figure is furthest from the middle of its scale, or the steepest. */
function telling({ zones, zoning }: Findings, about: Asked['about']): string | undefined {
  if (about === 'water' || about === 'hours' || about === 'cover')
    return zoning.zones.reduce((most, zone) => (zone.slopeDegSteep > most.slopeDegSteep ? zone : most)).id
  const MIDDLE = 50
  return zones.reduce((most, zone) =>
    Math.abs(zone.scores[about].value - MIDDLE) > Math.abs(most.scores[about].value - MIDDLE) ? zone : most,
  ).zoneId
}
