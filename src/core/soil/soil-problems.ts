import type { Problem } from '#core/units'
import type { SoilSample, Texture } from './soil.schema'

/** Thinnest settled soil that can be read with a ruler [mm]: own judgement. */
const THINNEST_JAR_MM = 20

/** Most clay the water equations were made for [%]: Saxton & Rawls 2006. */
const MOST_CLAY_PERCENT = 60

/** Largest share of one layer that a garden soil is likely to have [share]: own judgement. */
const LIKELIEST_MOST_SHARE = 0.95

/**
 * What does not make sense about a soil sample.
 *
 * @param sample - one pit or handful
 * @param where - path of the sample in its plan, for the messages
 * @returns every problem found; none when the sample can be trusted
 */
export function soilProblems(sample: SoilSample, where: string): readonly Problem[] {
  const { texture } = sample
  const at = `${where}.texture`
  switch (texture.by) {
    case 'class':
      return []
    case 'feel':
      return feelProblems(texture, at)
    case 'jar':
      return jarProblems(texture, at)
    case 'percent':
      return clayProblems(texture.clayPercent, at)
  }
}

function feelProblems(texture: Extract<Texture, { by: 'feel' }>, where: string): readonly Problem[] {
  if (texture.ball || texture.ribbonCm === 0) return []
  return [
    {
      where,
      what: `A handful that does not hold together made a ribbon of ${texture.ribbonCm} cm.`,
      mend: 'Wet the soil until it works like putty and try both steps again.',
    },
  ]
}

function jarProblems(texture: Extract<Texture, { by: 'jar' }>, where: string): readonly Problem[] {
  const { sandMm, siltMm, clayMm } = texture
  const totalMm = sandMm + siltMm + clayMm
  if (totalMm === 0)
    return [{ where, what: 'All three layers of the jar are 0 mm.', mend: 'Measure the settled layers.' }]
  const problems: Problem[] = []
  if (totalMm < THINNEST_JAR_MM)
    problems.push({
      where,
      what: `The settled soil is only ${totalMm} mm thick, too thin to read with a ruler.`,
      mend: 'Fill a third of a tall jar with soil and shake it again.',
    })
  if (Math.max(sandMm, siltMm, clayMm) > LIKELIEST_MOST_SHARE * totalMm)
    problems.push({
      where,
      what: 'Nearly all of the jar is one layer.',
      mend: 'Give thickness per layer, not heights from the bottom, and wait until the water is clear: about 48 hours.',
    })
  else if (clayMm === 0)
    problems.push({
      where,
      what: 'The jar shows no clay at all.',
      mend: 'Wait until the water is clear, about 48 hours, then measure the fine top layer.',
    })
  return [...problems, ...clayProblems((100 * clayMm) / totalMm, where)]
}

function clayProblems(clayPercent: number, where: string): readonly Problem[] {
  if (clayPercent <= MOST_CLAY_PERCENT) return []
  return [
    {
      where,
      what: `${Math.round(clayPercent)} % of clay is more than the water equations were made for (${MOST_CLAY_PERCENT} %).`,
      mend: 'Check the clay; if it is right, take the water figures as rough: they are those of 60 % clay.',
    },
  ]
}
