import { createSSRApp, h, type Component } from 'vue'
import { renderToString } from 'vue/server-renderer'
import { demo, found } from '../plan/plans'

/** The plans of data/demos with their findings, worked out once. */
export const demos = [
  'bank-below-the-house',
  'garden-falling-to-the-house',
  'three-banks-below-the-ground',
].map((name) => {
  const plan = demo(name)
  return { name, plan, findings: found(plan) }
})

/** A component as Node writes it. */
export function written(component: Component, props: Record<string, unknown>): Promise<string> {
  return renderToString(createSSRApp({ render: () => h(component, props) }))
}

/** Words of a page without its tags, spaces put together. */
export function wordsOf(html: string): string {
  return html
    .replace(/<!--.*?-->/g, '')
    .replace(/<[^>]+>/g, ' ')
    .replace(/&#39;/g, "'")
    .replace(/[\s\u00A0]+/g, ' ')
}

/** Numbers of every attribute of that name, in order. */
export function numbersOf(html: string, attribute: string): number[] {
  return [...html.matchAll(new RegExp(` ${attribute}="(-?[\\d.]+)"`, 'g'))].map(([, value]) => Number(value))
}

/** Area inside a closed path of M, L, H, V and circular arcs of half a turn, by the shoelace formula [px²]. */
export function areaOf(path: string): number {
  return path
    .split('Z')
    .filter(Boolean)
    .reduce((sum, ring) => sum + Math.abs(shoelace(pointsOf(ring))), 0)
}

interface Point {
  readonly x: number
  readonly y: number
}

const ARC_STEPS = 360

function pointsOf(ring: string): Point[] {
  const points: Point[] = []
  for (const [, command, rest = ''] of ring.matchAll(/([MLHVA])([^MLHVA]*)/g)) {
    const values = [...rest.matchAll(/-?[\d.]+/g)].map(Number)
    const at = points.at(-1) ?? { x: 0, y: 0 }
    if (command === 'H') points.push({ x: values[0] ?? 0, y: at.y })
    else if (command === 'V') points.push({ x: at.x, y: values[0] ?? 0 })
    else if (command === 'A') points.push(...halfTurn(at, { x: values[5] ?? 0, y: values[6] ?? 0 }))
    else points.push({ x: values[0] ?? 0, y: values[1] ?? 0 })
  }
  return points
}

/** Sweep flag 1: clockwise on the screen. */
function halfTurn(from: Point, to: Point): Point[] {
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }
  const [dx, dy] = [from.x - middle.x, from.y - middle.y]
  return Array.from({ length: ARC_STEPS }, (_, at) => {
    const turn = ((at + 1) / ARC_STEPS) * Math.PI
    return {
      x: middle.x + dx * Math.cos(turn) - dy * Math.sin(turn),
      y: middle.y + dx * Math.sin(turn) + dy * Math.cos(turn),
    }
  })
}

function shoelace(points: readonly Point[]): number {
  return (
    points.reduce((sum, point, at) => {
      const next = points[(at + 1) % points.length] ?? point
      return sum + point.x * next.y - next.x * point.y
    }, 0) / 2
  )
}
