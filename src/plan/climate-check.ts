import { daylightHours, extraterrestrialMjPerM2 } from '#core/climate'
import { daysInMonth, monthNames, months, type Month, type Problem } from '#core/units'
import type { Plan } from './plan.schema'

/** Half of the last digit that tables of normals print: 0.1 MJ/m² and 0.1 h. */
const ROUNDING = 0.05

/** Radiation and sunshine that cannot be: some months without, more than there is above the air, or longer than the day. */
export function climateProblems({ climate, site }: Plan): Problem[] {
  return figures.flatMap(({ key, what, unit, most, mend, limit }) => {
    const given = climate.months.map((month) => month[key])
    const missing = given.findIndex((value) => value === undefined)
    if (given.every((value) => value === undefined)) return []
    if (missing >= 0)
      return [
        {
          where: `plan › climate › months, row ${missing + 1} › ${key}`,
          what: `${what} is given for some months, but not for ${monthNames[missing] ?? ''}.`,
          mend: 'Give it for all twelve months, or for none.',
        },
      ]
    return months.flatMap((month) => {
      const [value, limitHere] = [given[month] ?? 0, most(site.latitudeDeg, month)]
      if (value <= limitHere + ROUNDING) return []
      return [
        {
          where: `plan › climate › months, row ${month + 1} › ${key}`,
          what: `${what} of ${value} ${unit} in ${monthNames[month]} is more than ${limit}, ${limitHere.toFixed(1)} ${unit}.`,
          mend,
        },
      ]
    })
  })
}

const figures = [
  {
    key: 'solarMjPerM2',
    what: 'Radiation',
    unit: 'MJ/m² a day',
    limit: 'the sun sends to the top of the air there',
    most: (latitudeDeg: number, month: Month) =>
      mostOfMonth(month, (day) => extraterrestrialMjPerM2(latitudeDeg, day)),
    mend: 'Check the unit: 1 kWh is 3.6 MJ, and the figure is for a day, not for the month.',
  },
  {
    key: 'sunshineHours',
    what: 'Sunshine',
    unit: 'h a day',
    limit: 'its longest day',
    most: (latitudeDeg: number, month: Month) => mostOfMonth(month, (day) => daylightHours(latitudeDeg, day)),
    mend: 'Give hours a day: divide the hours of the month by its days.',
  },
] as const

// Over every day of the month: a mean cannot be above its greatest.
function mostOfMonth(month: Month, of: (dayOfYear: number) => number): number {
  const before = daysInMonth.slice(0, month).reduce<number>((sum, days) => sum + days, 0)
  return Math.max(...Array.from({ length: daysInMonth[month] }, (_, day) => of(before + day + 1)))
}
