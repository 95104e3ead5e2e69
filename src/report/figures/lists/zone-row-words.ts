import { northernTwin } from '#core/units'
import { cubicMetres, degrees, hours, squareMetres } from '../../drawing/measures'
import { coverWords, verdictWords } from '../../figures/section/verdict-words'
import { amountWords } from '../../figures/strips/planting-lines'
import type { StripView, StripZone } from '../../figures/strips/strip-view.types'
import type { Question } from '../../section-view.types'
import { counted } from '../../words/figures-in-words'

/** A zone's answer to a question, as a row: what, how, and two figures. */
export interface ZoneRowWords {
  readonly title: string
  readonly note: string
  readonly figure: string
  readonly aside: string
  /** Ground that must be kept off: in red, and said so. */
  readonly warns: boolean
}

type Say = (zone: StripZone, view: StripView) => Omit<ZoneRowWords, 'warns'>

const says: Readonly<Record<Question, Say>> = {
  ground: (zone) => ({
    title: zone.name,
    note: `${zone.soil.texture}, ${zone.soil.depthM.toFixed(2)} m deep`,
    figure: squareMetres(zone.slopeAreaM2),
    aside: `mean ${degrees(zone.slopeDegMean)}`,
  }),
  water: (zone) => ({
    title: `${capital(zone.scores.wetness.class)}, ${zone.scores.wetness.value} of 100`,
    note: `wet ${days(zone.wetDays)}, dry ${days(zone.dryDays)} a year`,
    figure: cubicMetres(zone.passing.overOutM3),
    aside: 'runs off a year',
  }),
  sun: (zone, view) => ({
    title: `${capital(zone.scores.sun.class)}, ${zone.scores.sun.value} of 100`,
    note: 'clear sky, ground shading itself',
    figure: hours(zone.sunHours[northernTwin(5, view.latitudeDeg)]),
    aside: `midwinter ${hours(zone.sunHours[northernTwin(11, view.latitudeDeg)])}`,
  }),
  mow: (zone) => ({
    title: verdictWords[zone.mowing],
    note: `proposed: ${coverWords[zone.chosen].toLowerCase()}`,
    figure: squareMetres(zone.slopeAreaM2),
    aside: `${hours(zone.care.hours)} a year`,
  }),
  hold: (zone) => ({
    title: coverWords[zone.chosen],
    note:
      zone.planting.length > 0
        ? `${amountWords(zone.planting)} of ${counted(zone.planting.length, 'kind')}`
        : 'nothing to plant',
    figure: `erosion ${zone.scores.erosion.value}`,
    aside: zone.scores.erosion.class,
  }),
  month: (zone) => careOf(zone),
  handover: (zone) => careOf(zone),
}

/** What a zone answers. */
export function zoneRowWords(zone: StripZone, question: Question, view: StripView): ZoneRowWords {
  return { ...says[question](zone, view), warns: question === 'mow' && zone.mowing === 'never' }
}

function careOf(zone: StripZone) {
  return {
    title: coverWords[zone.chosen],
    note: verdictWords[zone.mowing],
    figure: hours(zone.care.hours),
    aside: 'a year',
  }
}

function days(values: readonly number[]): string {
  return `${Math.round(values.reduce((sum, value) => sum + value, 0))} d`
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1)
}
