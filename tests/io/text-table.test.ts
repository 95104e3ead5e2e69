import { describe, expect, it } from 'vitest'
import { guessLevelColumns } from '../../src/io/level-columns'
import { toNumber } from '../../src/io/table-numbers'
import { readTextTable } from '../../src/io/text-table'
import { guessProfileColumns, levelsFromTable, stationsFromTable } from '../../src/io/levels-table'

function tableOf(text: string) {
  const table = readTextTable(text)
  if (!table.ok) throw new Error(table.problems.map((problem) => problem.what).join())
  return table.value
}

describe('a table of levels', () => {
  it.each([
    ['comma (RFC 4180)', 'mark,east,north,level\nA1,1.5,2,10.25\nA2,3,4,11\nA3,5,9,12'],
    ['tab', 'mark\teast\tnorth\tlevel\nA1\t1.5\t2\t10.25\nA2\t3\t4\t11\nA3\t5\t9\t12'],
    ['semicolon, decimal comma', 'mark;east;north;level\nA1;1,5;2;10,25\nA2;3;4;11\nA3;5;9;12'],
    [
      'spaces, byte-order mark',
      '\uFEFFmark east north level\r\nA1  1.5 2 10.25\r\nA2 3 4  11\r\nA3 5 9 12\r\n',
    ],
  ])('%s reads to the same four columns', (_name, text) => {
    const table = tableOf(text)
    const levels = levelsFromTable(table, guessLevelColumns(table))
    expect(levels).toEqual({
      ok: true,
      value: {
        kind: 'levels',
        points: [
          { mark: 'A1', eastM: 1.5, northM: 2, levelM: 10.25 },
          { mark: 'A2', eastM: 3, northM: 4, levelM: 11 },
          { mark: 'A3', eastM: 5, northM: 9, levelM: 12 },
        ],
      },
    })
  })

  it('takes columns in any order by their headings, and in table order without headings', () => {
    expect(guessLevelColumns(tableOf('level,north,east\n1,2,3\n4,5,6'))).toEqual({
      east: 2,
      north: 1,
      level: 0,
      mark: undefined,
    })
    expect(guessLevelColumns(tableOf('1,2,3\n4,5,6'))).toEqual({
      mark: undefined,
      east: 0,
      north: 1,
      level: 2,
    })
  })

  it('names the line and the column of every figure it cannot read, all at once', () => {
    const table = tableOf('east,north,level\n1,2,3\n4,,6\n7,8,about 9\n1,1,1')
    const levels = levelsFromTable(table, guessLevelColumns(table))
    expect(levels.ok).toBe(false)
    expect(levels.ok ? [] : levels.problems.map((problem) => `${problem.where}: ${problem.what}`)).toEqual([
      'line 3, north: There is no north.',
      'line 4, level: “about 9” is not a number.',
    ])
  })

  it('international foot is 0.3048 m exactly (international yard and pound agreement, 1959)', () => {
    const table = tableOf('distance,level\n0,100\n10,90')
    const stations = stationsFromTable(table, guessProfileColumns(table), 0.3048)
    expect(stations.ok && stations.value[1]).toEqual({ distanceM: 3.048, levelM: 90 * 0.3048 })
  })

  it('refuses an empty table and too few rows, and says how many are needed', () => {
    expect(readTextTable(' \n\n').ok).toBe(false)
    const table = tableOf('east,north,level\n1,2,3\n4,5,6')
    const levels = levelsFromTable(table, guessLevelColumns(table))
    expect(!levels.ok && levels.problems[0]?.mend).toContain('3')
  })

  it('reads signs and either decimal mark, and nothing that only starts like a number', () => {
    expect(toNumber('-3,25', ',')).toBe(-3.25)
    expect(toNumber('\u22124.5', '.')).toBe(-4.5)
    expect(toNumber('12 m', '.')).toBeUndefined()
    expect(toNumber('', '.')).toBeUndefined()
  })
})
