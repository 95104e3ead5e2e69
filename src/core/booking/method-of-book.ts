import type { Book } from './booking.schema'
import type { SurveyMethod } from './methods.schema'

/** The methods of data/survey/methods.json. */
interface MethodTable {
  readonly methods: readonly SurveyMethod[]
}

/**
 * The method a book was measured with, when nobody names another: a level book belongs to level and staff, a chain to
 * tape and clinometer, steps to the tool that was walked, a string to string and spirit level.
 *
 * @param book - any field book
 * @param tables - the methods
 * @returns the first method of the table that fills such a book
 * @throws RangeError when the table has none
 */
export function methodOfBook(book: Book, tables: MethodTable): SurveyMethod {
  const fills = tables.methods.filter((one) => one.book === book.kind)
  const method = book.kind === 'steps' ? fills.find(({ id }) => id === book.tool) : fills[0]
  if (!method) throw new RangeError(`methodOfBook: methods must hold one for ${book.kind}, got none`)
  return method
}
