import { expect, it } from 'vitest'
import { terraceWords } from '#report'

const figures = {
  id: 'x',
  treadM: 2,
  because: '',
  source: 'own-judgement',
  stepM: 2 / 3,
  cutM3PerM: 1 / 6,
  cutM3: 12,
  levelM2: 100,
  levelShare: 0.9,
  cautions: [],
}

it('exact: a tread of 2 m on ground of 1 in 3 makes steps of 0.67 m, said as 0.7 m', () => {
  expect(terraceWords({ ...figures, stepSteepM: 2 / 3 })).toBe(
    'Treads of 2.0\u00A0m: steps 0.7\u00A0m high; 12\u00A0m³ to cut and lay.',
  )
})

it('says the higher step of the steep part when it reads differently', () => {
  expect(terraceWords({ ...figures, stepSteepM: 1 })).toContain('1.0\u00A0m where it is steepest')
  expect(terraceWords({ ...figures, stepSteepM: 0.68 })).not.toContain('steepest')
})
