import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

/** Published values of tests/truth, shaped as the test says. */
export function readTruth<Shape>(name: string): Shape {
  const path = fileURLToPath(new URL(`../../truth/${name}.json`, import.meta.url))
  return JSON.parse(readFileSync(path, 'utf8')) as Shape
}
