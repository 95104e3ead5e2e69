import strips from '../figures/strips/strips.css?inline'
import year from '../figures/year/year.css?inline'
import book from '../figures/book/book.css?inline'
import lists from '../figures/lists/lists.css?inline'
import sun from '../figures/sun/sun.css?inline'
import figures from './figures.css?inline'
import print from './print.css?inline'
import tokens from './tokens.css?inline'

/** The whole style as text, for pages and drawings that are written to a file. */
export const styleText: string = [tokens, figures, strips, year, book, lists, sun, print].join('\n')
