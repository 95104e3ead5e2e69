import strips from '../figures/strips/strips.css?inline'
import year from '../figures/year/year.css?inline'
import figures from './figures.css?inline'
import print from './print.css?inline'
import tokens from './tokens.css?inline'

/** The whole style as text, for pages and drawings that are written to a file. */
export const styleText: string = [tokens, figures, strips, year, print].join('\n')
