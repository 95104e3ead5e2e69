import type { Problem } from '#core/units'
import type { z } from 'zod'

type Issue = z.core.$ZodIssue

/** What each kind of value is called when it is missing or of the wrong kind. */
const kindNames: Readonly<Record<string, string>> = {
  number: 'a number',
  string: 'text',
  boolean: 'true or false',
  array: 'a list',
  object: 'a group of entries',
  int: 'a whole number',
}

/** Every problem that a schema found, in plain words, with its path and how to mend it. */
export function problemsOf(issues: readonly Issue[], root: string): Problem[] {
  return issues.flatMap((issue) => plainProblem(issue, root))
}

/** Reads a path as a gardener counts: the first row is row 1. */
function placeOf(path: readonly PropertyKey[], root: string): string {
  return path.reduce<string>(
    (place, step) => (typeof step === 'number' ? `${place}, row ${step + 1}` : `${place} › ${String(step)}`),
    root,
  )
}

function plainProblem(issue: Issue, root: string): Problem[] {
  const where = placeOf(issue.path, root)
  switch (issue.code) {
    case 'invalid_type':
      return [wrongKind(issue, where)]
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        where: `${where} › ${key}`,
        what: `“${key}” is not an entry that a plan knows.`,
        mend: 'Check its spelling, or take it out.',
      }))
    case 'too_small':
    case 'too_big':
      return [outOfRange(issue, where)]
    case 'invalid_value':
      return [
        {
          where,
          what: 'This is none of the words allowed here.',
          mend: `Use one of: ${issue.values.map(String).join(', ')}.`,
        },
      ]
    case 'invalid_union':
      return [
        {
          where,
          what: 'It is not clear which kind of entry this is.',
          mend: 'Give it one of the kinds listed in the plan format page, spelt as there.',
        },
      ]
    default:
      return [{ where, what: sentence(issue.message), mend: 'Correct this entry and open the plan again.' }]
  }
}

function wrongKind(issue: Extract<Issue, { code: 'invalid_type' }>, where: string): Problem {
  const wanted = kindNames[issue.expected] ?? issue.expected
  return issue.input === undefined && issue.message.includes('undefined')
    ? { where, what: 'This entry is missing.', mend: `Add ${wanted}.` }
    : { where, what: `This should be ${wanted}.`, mend: `Put ${wanted} here.` }
}

function outOfRange(issue: Extract<Issue, { code: 'too_small' | 'too_big' }>, where: string): Problem {
  const small = issue.code === 'too_small'
  const limit = small ? issue.minimum : issue.maximum
  const counted = issue.origin === 'array' ? 'entries' : issue.origin === 'string' ? 'letters' : ''
  const own = /^(Too (small|big)|Invalid)/.test(issue.message) ? '' : sentence(issue.message)
  const bound = `${small ? 'at least' : 'at most'} ${limit}${counted ? ` ${counted}` : ''}`
  return {
    where,
    what: own || `This is ${small ? 'below' : 'above'} what is possible here.`,
    mend: `It must be ${bound}. Check the figure and its unit.`,
  }
}

/** First letter large, full stop at the end. */
function sentence(text: string): string {
  const large = text.charAt(0).toUpperCase() + text.slice(1)
  return /[.?!]$/.test(large) ? large : `${large}.`
}
