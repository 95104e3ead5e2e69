import { describe, expect, it } from 'vitest'
import { climateYear } from '#core/climate'
import { spotsFromText } from '../../src/io/spot-table'
import { loadTables } from '../../src/io/tables'

const { places } = loadTables()
const read = (text: string) => spotsFromText(text, { places })

function sound(text: string) {
  const outcome = read(text)
  if (!outcome.ok) throw new Error(outcome.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'))
  return outcome.value
}

describe('a table of places', () => {
  it('reads headings in any order and case, semicolons with decimal commas, and words for positions', () => {
    const { spots } = sound(
      'Texture;ID;position;LATITUDEDEG;slopedeg;aspectdeg;place;ph\nSandy Clay-Loam;one;Upper;51,5;12,5;190;london;6,5\n',
    )
    expect(spots).toHaveLength(1)
    expect(spots[0]).toMatchObject({
      id: 'one',
      latitudeDeg: 51.5,
      slopeDeg: 12.5,
      aspectDeg: 190,
      position: 0.7,
      formDown: 'straight',
      plantRegion: 'british-isles',
      soil: { texture: { by: 'class', class: 'sandy clay loam' }, ph: 6.5 },
    })
  })

  it('names the columns that it does not read', () => {
    const { ignoredColumns } = sound(
      'id,latitudeDeg,slopeDeg,aspectDeg,position,texture,place,seen by\na,51,5,90,1,clay,london,me\n',
    )
    expect(ignoredColumns).toEqual(['seen by'])
  })

  it('says which needed columns are missing', () => {
    const outcome = read('id,slopeDeg\na,5\n')
    expect(outcome.ok ? [] : outcome.problems.map(({ what }) => what)).toEqual([
      'There is no column “latitudeDeg”.',
      'There is no column “position”.',
      'There is no column “texture”.',
    ])
  })

  it('wants all twelve months, and no minimum above its maximum', () => {
    const month = (kind: string, value: number) =>
      Array.from({ length: 12 }, (_, at) => ({ name: `${kind}${at + 1}`, value: String(value) }))
    const cells = [...month('tmin', 9), ...month('tmax', 8), ...month('rain', 50)].filter(
      ({ name }) => name !== 'rain7',
    )
    const outcome = read(
      `id,latitudeDeg,slopeDeg,position,texture,${cells.map(({ name }) => name).join(',')}\na,51,0,0,clay,${cells.map(({ value }) => value).join(',')}\n`,
    )
    const where = outcome.ok ? [] : outcome.problems.map((problem) => problem.where)
    expect(where).toContain('row 2, rain7')
    expect(where).toContain('row 2, tmin1')
    expect(where).not.toContain('row 2, tmin7')
  })

  const twelveOf = (kind: string, value: number) =>
    Array.from({ length: 12 }, (_, at) => ({ name: `${kind}${at + 1}`, value: String(value) }))
  const rowWith = (latitudeDeg: number, cells: readonly { name: string; value: string }[]) =>
    `id,latitudeDeg,slopeDeg,position,texture,${cells.map(({ name }) => name).join(',')}\na,${latitudeDeg},0,0,clay,${cells.map(({ value }) => value).join(',')}\n`
  const normals = [...twelveOf('tmin', 14), ...twelveOf('tmax', 25), ...twelveOf('rain', 50)]

  it('FAO-56 ch. 3 example 10: sunshine of 220 h in May at Rio gives 14.5 MJ/m² a day, in place of temperature', () => {
    // 7.1 h a day; the day of the example is 15 May, ours the month's representative day.
    const { spots } = sound(rowWith(-22.9, [...normals, ...twelveOf('sunshine', 7.1)]))
    const may = climateYear(spots[0]!.climate, { latitudeDeg: -22.9, elevationM: 100 })[4]
    expect(may.solarFrom).toBe('sunshine')
    expect(Math.abs(may.solarMjPerM2 - 14.5)).toBeLessThan(0.2)
  })

  it('takes radiation as given, before sunshine, with a listed place too', () => {
    const { spots } = sound(
      rowWith(51.5, [
        { name: 'place', value: 'london' },
        ...twelveOf('radiation', 1.5),
        ...twelveOf('sunshine', 1),
      ]),
    )
    const year = climateYear(spots[0]!.climate, { latitudeDeg: 51.5, elevationM: 100 })
    for (const { solarFrom, solarMjPerM2 } of year) {
      expect(solarFrom).toBe('radiation')
      expect(solarMjPerM2).toBeCloseTo(1.5, 9)
    }
  })

  it('wants all twelve months of sunshine, no more of it than the day is long, and no more radiation than there is', () => {
    const refused = (cells: readonly { name: string; value: string }[]) => {
      const outcome = read(rowWith(51.5, [...normals, ...cells]))
      return outcome.ok ? [] : outcome.problems.map(({ where }) => where)
    }
    expect(refused(twelveOf('sunshine', 5).filter(({ name }) => name !== 'sunshine7'))).toEqual([
      'row 2, sunshine7',
    ])
    // London has some 8 h of day in December and January, and the top of its air gets below 10 MJ/m² a day then.
    expect(refused(twelveOf('sunshine', 9.2))).toEqual(
      expect.arrayContaining(['row 2, sunshine1', 'row 2, sunshine12']),
    )
    expect(refused(twelveOf('radiation', 20))).toEqual(expect.arrayContaining(['row 2, radiation12']))
    expect(refused(twelveOf('radiation', 20))).not.toContain('row 2, radiation6')
  })
})
