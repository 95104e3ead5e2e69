import { describe, expect, it } from 'vitest'
import { surveyLines } from '../../src/cli/assess-survey'
import { demos } from '../../src/io/demos'
import { findingsJson } from '../../src/io/findings-json'
import { findingsSchema } from '../../src/io/findings.schema'
import { assessed } from './assessed'

describe('notes on the survey and holes of the plot', () => {
  const { plan, findings } = assessed(demos[0]!.text)
  const hole = [
    { eastM: 1, northM: 1 },
    { eastM: 2, northM: 1 },
    { eastM: 2, northM: 2 },
  ]
  const notes = [
    { kind: 'outlier', what: 'Row 3 stands out.', at: { eastM: 1, northM: 2 } },
    { kind: 'left-out', what: 'Two rows are left out.', at: undefined },
  ] as const
  const noted = { ...findings, surface: { ...findings.surface, notes, holes: [hole] } }

  it('stand in the findings, without a place where they have none', () => {
    const { surface } = findingsSchema.parse(JSON.parse(findingsJson(plan, noted, { layers: false })))
    expect(surface.holes).toEqual([hole])
    expect(surface.notes).toEqual([notes[0], { ...notes[1], at: null }])
  })

  it('stand in the text of the command line, and leave no heading when there are none', () => {
    expect(surveyLines(noted).slice(-2)).toEqual(['* Row 3 stands out.', '* Two rows are left out.'])
    expect(surveyLines({ ...findings, surface: { ...findings.surface, notes: [] } })).toEqual([])
  })
})
