import type { TableTwin } from './table-twin.types'

/** A table as running words, for the description of its drawing. */
export function tableWords({ columns, rows, note }: TableTwin): string {
  const said = rows.map(([head = '', ...cells]) => {
    const parts = cells.map((cell, at) => `${(columns[at + 1] ?? '').toLowerCase()} ${cell}`)
    return `${head}: ${parts.join(', ')}`
  })
  return `${said.join('. ')}.${note ? ` ${note}` : ''}`
}
