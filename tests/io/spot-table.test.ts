import { describe, expect, it } from 'vitest'
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
})
