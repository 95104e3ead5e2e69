import { northernTwin, type Month } from '#core/units'
import type { Findings } from '#plan'

/** Zones named at most. */
const MOST_ZONES = 3
const MIDSUMMER: Month = 5
const MIDWINTER: Month = 11

/** What a trial would bring to the zones, in a sentence or two. */
export function bringsWords(findings: Findings, trialId: string, latitudeDeg: number): string {
  const trial = findings.trials.find((each) => each.trialId === trialId)
  if (!trial) return 'Being worked out.'
  const at = (month: Month) => gainsIn(findings, trial, northernTwin(month, latitudeDeg))
  const words = [sayGains('at midsummer', at(MIDSUMMER)), sayGains('at midwinter', at(MIDWINTER))]
  const said = words.filter((each) => each !== '')
  return said.length > 0
    ? `Direct sun on a clear day ${said.join('. And ')}.`
    : 'No zone gains or loses direct sun, at midsummer or midwinter.'
}

interface Gain {
  readonly zone: string
  readonly fromH: number
  readonly toH: number
}

function gainsIn(findings: Findings, trial: Findings['trials'][number], month: Month): Gain[] {
  return findings.zoning.zones
    .map(({ letter, name }, at) => ({
      zone: `${letter} (${name})`,
      fromH: findings.zoneSun[at]?.sunHours[month] ?? 0,
      toH: trial.zoneSun[at]?.sunHours[month] ?? 0,
    }))
    .filter(({ fromH, toH }) => hours(fromH) !== hours(toH))
    .sort((one, other) => Math.abs(other.toH - other.fromH) - Math.abs(one.toH - one.fromH))
}

const hours = (h: number) => h.toFixed(1)

function sayGains(when: string, gains: readonly Gain[]): string {
  if (gains.length === 0) return ''
  const said = gains
    .slice(0, MOST_ZONES)
    .map(({ zone, fromH, toH }) => `${zone} from ${hours(fromH)} to ${hours(toH)} h`)
  const more = gains.length - said.length
  return `${when}: ${said.join('; ')}${more > 0 ? `; and ${more} more` : ''}`
}
