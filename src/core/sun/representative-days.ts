import type { Twelve } from '#core/units'

/**
 * The day of the year whose sun above the air is nearest to the month's mean, January first.
 *
 * @see Klein 1977, Solar Energy 19:325-329
 */
export const representativeDays: Twelve<number> = [17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344]
