import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { readLandXml } from '../../src/files/land-xml'
import { damagedText, hostileWords } from './damaged-text'
import { unsound } from './read-soundness'

const SEED = 20261125
/** Files of each kind; together 20,000. */
const DAMAGED = 12_000
const BUILT = 6000
const CUT = 2000
/** Ten times what it takes on an idle machine [ms]. */
const PATIENCE_MS = 300_000

const folder = join(import.meta.dirname, '../truth/files')
const whole = ['landxml-us-survey-feet.xml', 'landxml-prefixed-1-0.xml', 'landxml-mesh-writer.xml'].map(
  (name) => readFileSync(join(folder, name), 'utf8').trimEnd(),
)

const tags = [
  'LandXML',
  'Units',
  'Metric',
  'Imperial',
  'CoordinateSystem',
  'Surfaces',
  'Surface',
  'Definition',
  'Pnts',
  'P',
  'Faces',
  'F',
  'SourceData',
  'Breaklines',
  'Breakline',
  'Boundaries',
  'Boundary',
  'Contours',
  'Contour',
  'DataPoints',
  'PntList3D',
  'PntList2D',
  'CgPoints',
  'CgPoint',
  'Survey',
  '__proto__',
  'lx:P',
]
const attributes = [
  'id',
  'name',
  'pntRef',
  'i',
  'n',
  'linearUnit',
  'elevationUnit',
  'epsgCode',
  'ogcWktCode',
  'elev',
]

const words = fc.oneof(
  fc.constantFrom(...hostileWords),
  fc
    .array(fc.constantFrom('1', '2', '3', '10.5', '-7', '1e6', '2,5', 'a'), { maxLength: 9 })
    .map((all) => all.join(' ')),
)
const attribute = fc
  .tuple(fc.constantFrom(...attributes), words)
  .map(([name, word]) => ` ${name}="${word.replace(/[<"]/g, '')}"`)

/** An element with any children, in any order and depth, as a file that is well formed but senseless. */
const { element } = fc.letrec<{ element: string }>((tie) => ({
  element: fc
    .tuple(
      fc.constantFrom(...tags),
      fc.array(attribute, { maxLength: 3 }),
      fc.oneof(
        { maxDepth: 8 },
        words,
        fc.array(tie('element'), { maxLength: 4 }).map((all) => all.join('')),
      ),
    )
    .map(([tag, all, inside]) => `<${tag}${all.join('')}>${inside}</${tag}>`),
}))

/** A surface of the right shape whose figures are anything. */
const surface = fc
  .tuple(fc.array(fc.tuple(words, words), { maxLength: 8 }), fc.array(words, { maxLength: 8 }), element)
  .map(
    ([points, faces, other]) =>
      `<LandXML><Surfaces><Surface name="S"><Definition><Pnts>${points
        .map(([id, text]) => `<P id="${id.replace(/[<"]/g, '')}">${text}</P>`)
        .join(
          '',
        )}</Pnts><Faces>${faces.map((face) => `<F>${face}</F>`).join('')}</Faces></Definition>${other}</Surface></Surfaces></LandXML>`,
  )

const sound = (text: string) => {
  expect(unsound(readLandXml(text))).toEqual([])
}

it(
  'survives 12,000 damaged LandXML files',
  () => {
    let readable = 0
    fc.assert(
      fc.property(damagedText(whole), (text) => {
        const outcome = readLandXml(text)
        if (outcome.ok) readable++
        expect(unsound(outcome)).toEqual([])
      }),
      { seed: SEED, numRuns: DAMAGED },
    )
    expect(readable, 'the damage must reach what is read').toBeGreaterThan(DAMAGED / 10)
  },
  PATIENCE_MS,
)

it(
  'survives 6,000 LandXML files of senseless elements',
  () =>
    fc.assert(
      fc.property(
        fc.oneof(
          element,
          surface,
          element.map((one) => `<LandXML>${one}</LandXML>`),
        ),
        sound,
      ),
      {
        seed: SEED,
        numRuns: BUILT,
      },
    ),
  PATIENCE_MS,
)

it(
  'refuses 2,000 LandXML files cut off anywhere: never half an import',
  () =>
    fc.assert(
      fc.property(fc.constantFrom(...whole), fc.integer({ min: 0, max: 999_999 }), (text, part) => {
        const outcome = readLandXml(text.slice(0, Math.floor((part / 1e6) * text.length)))
        expect(outcome.ok).toBe(false)
        expect(unsound(outcome)).toEqual([])
      }),
      { seed: SEED, numRuns: CUT },
    ),
  PATIENCE_MS,
)
