import fc from 'fast-check'

/** Words that break careless readers. */
export const hostileWords = [
  'NaN',
  'Infinity',
  '-1e999',
  '1e308',
  '99999999999999999999',
  '0x10',
  '-0',
  '',
  ' ',
  '__proto__',
  'constructor',
  'toString',
  '\0',
  '\uFEFF',
  '\uD800',
  '‮',
  '&lt;',
  '&x;',
  '&#0;',
  '&#x110000;',
  '<!--',
  '<![CDATA[',
  ']]>',
  '-->',
  '</',
  '<?',
  '<!ENTITY a "&a;&a;">',
  '1,5',
  '1,2,3',
  '%%',
  '\\U+',
  '{\\',
  '999',
  '\n',
  '\r',
  '\n0\nEOF\n',
  'x'.repeat(5000),
  '1 '.repeat(2000),
  '\\A'.repeat(500),
]

type Kind = 'cut' | 'drop' | 'twice' | 'word' | 'swap' | 'number' | 'name' | 'lines' | 'two lines'

interface Damage {
  readonly kind: Kind
  readonly from: number
  readonly size: number
  readonly word: string
}

/** Gentle damage, which leaves the file readable, comes oftener than damage that a reader sees at once. */
const kinds: readonly Kind[] = [
  'cut',
  'drop',
  'twice',
  'word',
  'swap',
  ...Array<Kind>(5).fill('number'),
  ...Array<Kind>(3).fill('name'),
  ...Array<Kind>(2).fill('lines'),
  ...Array<Kind>(4).fill('two lines'),
]

const MILLION = 1_000_000

const damage: fc.Arbitrary<Damage> = fc.record({
  kind: fc.constantFrom(...kinds),
  from: fc.integer({ min: 0, max: MILLION }).map((part) => part / MILLION),
  size: fc.nat(60),
  word: fc.oneof(
    fc.constantFrom(...hostileWords),
    fc.constantFrom('0', '-1', '1', '2', '7', '3.5', '1e6', '1e12'),
    fc.string({ maxLength: 12, unit: 'binary' }),
  ),
})

/** A whole file of the given ones, damaged in one to four places. */
export const damagedText = (whole: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...whole), fc.array(damage, { minLength: 1, maxLength: 4 }))
    .map(([text, damages]) => damages.reduce(damaged, text))

function damaged(text: string, damage: Damage): string {
  const { kind, from, size, word } = damage
  const at = Math.floor(from * text.length)
  const [head, middle, tail] = [text.slice(0, at), text.slice(at, at + size), text.slice(at + size)]
  switch (kind) {
    case 'cut':
      return head
    case 'drop':
      return head + tail
    case 'twice':
      return head + middle.repeat(size % 5) + tail
    case 'word':
      return head + word + middle + tail
    case 'swap':
      return head + tail.slice(0, size) + middle + tail.slice(size)
    case 'number':
      return head + (middle + tail).replace(/-?\d+(\.\d+)?/, () => word.replace(/[<\r\n]/g, ''))
    case 'name':
      return renamed(text, middle + tail, word)
    default:
      return shuffledLines(text, damage)
  }
}

/** Another name in place of one, wherever it stands: tags stay closed, layers stay whole. */
function renamed(text: string, after: string, word: string): string {
  const name = /[A-Za-z][\w ]{1,15}/.exec(after)?.[0]
  return name === undefined ? text : text.replaceAll(name, () => word.replace(/[^\w ]/g, '') || 'P')
}

/** Lines dropped or doubled, one by one or in pairs as DXF has them. */
function shuffledLines(text: string, { kind, from, size }: Damage): string {
  const lines = text.split('\n')
  const step = kind === 'two lines' ? 2 : 1
  const at = Math.floor((from * lines.length) / step) * step
  const taken = lines.splice(at, step * (1 + (size % 3)))
  if (size % 2 === 1) lines.splice(Math.floor(lines.length / 2 / step) * step, 0, ...taken)
  return lines.join('\n')
}
