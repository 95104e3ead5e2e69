import { expect, it } from 'vitest'
import type { ReadAnswer } from '../../src/worker/read-messages'
import { reading } from '../../src/worker/reading'

const table = new TextEncoder().encode('1,2,3\n40,5,6\n7,80,9\n')

function reader() {
  const answers: ReadAnswer[] = []
  return { answers, ask: reading((answer) => answers.push(answer)) }
}

it('reads a file, then the same with other columns, then makes ground of it, in the order asked', async () => {
  const { answers, ask } = reader()
  void ask({ kind: 'read', id: 1, name: 'a.txt', bytes: table })
  void ask({
    kind: 'columns',
    id: 2,
    columns: { mark: undefined, east: 1, north: 0, level: 2 },
  })
  await ask({ kind: 'ground', id: 3, wish: { partIds: ['points'], unit: 'm' } })
  expect(answers.map(({ kind, id }) => [kind, id])).toEqual([
    ['read', 1],
    ['read', 2],
    ['ground', 3],
  ])
  const [, , last] = answers
  expect(last?.kind === 'ground' && last.ground.ground).toMatchObject({
    points: [
      { eastM: 2, northM: 1, levelM: 3 },
      { eastM: 5, northM: 40, levelM: 6 },
      { eastM: 80, northM: 7, levelM: 9 },
    ],
  })
})

it('tells the problems of a file, and answers nothing about a file that was not read', async () => {
  const { answers, ask } = reader()
  await ask({ kind: 'read', id: 1, name: 'empty.txt', bytes: new Uint8Array() })
  await ask({ kind: 'ground', id: 2, wish: { partIds: ['points'], unit: 'm' } })
  expect(answers.map(({ kind }) => kind)).toEqual(['problems', 'failed'])
})
