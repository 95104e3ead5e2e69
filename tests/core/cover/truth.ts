import { readFileSync } from 'node:fs'
import { z } from 'zod'

const deg = z.object({ deg: z.number() })
const height = z.object({ aboveM: z.number(), aboveIn: z.number() })
const rise = z.object({ riseOverRun: z.number() })
const bank = z.object({ desirablePercent: z.number(), extremePercent: z.number() })

/** Published limits, from tests/truth/cover-practice.json. */
export const truth = z
  .object({
    rideOnWithoutPlate: deg,
    rideOnTowing: deg,
    walkBehind: deg,
    travel: z.object({ walkBehind: z.string(), rideOn: z.string() }),
    robotEdge: z.object({ strictestPercent: z.number() }),
    hillTractorMedian: z.object({ percent: z.number(), deg: z.number() }),
    easyMowing: rise,
    publicLawn: rise,
    grassedBank: bank,
    plantedBank: bank,
    cutAndFill: rise,
    stepDesigned: height,
    stepPermit: height,
    soilForTreesM: z.object({ median: z.number() }),
  })
  .parse(JSON.parse(readFileSync('tests/truth/cover-practice.json', 'utf8')))
