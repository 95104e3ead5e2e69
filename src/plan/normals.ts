import type { MonthClimate, MonthNormals } from '#core/climate'
import { eachMonth, type Twelve } from '#core/units'

/** Normals as they are at the plot's own height. */
export function normalsOf(climate: Twelve<MonthClimate>): Twelve<MonthNormals> {
  return eachMonth((month) => {
    const { tMinC, tMaxC, rainMm } = climate[month]
    return { tMinC, tMaxC, rainMm }
  })
}
