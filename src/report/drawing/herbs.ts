import { n, type Px } from './path'

/** A soft plant on the sheet. */
export interface HerbSize {
  readonly base: Px
  readonly heightPx: number
  readonly widthPx: number
}

/** Green strokes and, when it flowers, the beads or heads at their ends. */
export interface HerbDrawing {
  readonly blades: string
  readonly blooms: string
}

type Draw = (size: HerbSize, random: () => number) => HerbDrawing

/** Tussock: a fan of arching blades. */
export const tussock: Draw = ({ base, heightPx, widthPx }, random) => {
  const count = Math.max(5, Math.min(11, Math.round(widthPx / 2.4)))
  let blades = ''
  for (let at = 0; at < count; at++) {
    const side = (at / (count - 1) - 0.5) * 2
    const tall = heightPx * (1 - 0.42 * side * side) * (0.85 + random() * 0.2)
    blades += curve(
      base,
      { xPx: side * widthPx * 0.14, yPx: -tall * 0.95 },
      { xPx: side * widthPx * 0.5, yPx: -tall },
    )
  }
  return { blades, blooms: '' }
}

/** Herb: a stem with paired leaves and a bead. */
export const herb: Draw = ({ base, heightPx, widthPx }, random) => {
  const lean = (random() - 0.5) * widthPx * 0.6
  const tip = { xPx: lean, yPx: -heightPx * (0.85 + random() * 0.15) }
  let blades = curve(base, { xPx: lean * 0.2, yPx: tip.yPx * 0.6 }, tip)
  for (const share of [0.3, 0.52]) {
    const at = { xPx: base.xPx + lean * share * 0.6, yPx: base.yPx + tip.yPx * share }
    const leafPx = Math.min(widthPx * 0.4, heightPx * 0.22)
    blades += `M${n(at.xPx)} ${n(at.yPx)}q${n(leafPx * 0.5)} ${n(-leafPx * 0.7)} ${n(leafPx)} ${n(-leafPx * 0.6)}`
    blades += `M${n(at.xPx)} ${n(at.yPx)}q${n(-leafPx * 0.5)} ${n(-leafPx * 0.7)} ${n(-leafPx)} ${n(-leafPx * 0.6)}`
  }
  return { blades, blooms: bead({ xPx: base.xPx + tip.xPx, yPx: base.yPx + tip.yPx }, heightPx, random) }
}

/** Damp ground: upright blades, some with a head. */
export const uprightBlades: Draw = ({ base, heightPx, widthPx }, random) => {
  let blades = ''
  let blooms = ''
  const count = Math.max(3, Math.min(7, Math.round(widthPx / 3)))
  for (let at = 0; at < count; at++) {
    const foot = { xPx: base.xPx + (at / count - 0.4) * widthPx * 0.6, yPx: base.yPx }
    const lean = (random() - 0.4) * widthPx * 0.22
    const tall = heightPx * (0.7 + random() * 0.3)
    blades += curve(foot, { xPx: lean * 0.1, yPx: -tall * 0.6 }, { xPx: lean, yPx: -tall })
    if (random() < 0.3)
      blooms += `M${n(foot.xPx + lean)} ${n(foot.yPx - tall)}l${n(lean * 0.12)} ${n(-Math.min(5, tall * 0.16))}`
  }
  return { blades, blooms }
}

/** Mat: three low scallops lying on the ground. */
export const mat: Draw = ({ base, heightPx, widthPx }) => {
  const third = widthPx / 3
  const rise = Math.max(1.5, Math.min(heightPx, third))
  let blades = `M${n(base.xPx - widthPx / 2)} ${n(base.yPx)}`
  for (let at = 0; at < 3; at++) blades += `a${n(third / 2)} ${n(rise)} 0 0 1 ${n(third)} 0`
  return { blades, blooms: '' }
}

/** Fern: arching fronds with short pinnae. */
export const fern: Draw = ({ base, heightPx, widthPx }, random) => {
  let blades = ''
  for (let at = 0; at < 5; at++) {
    const side = (at / 4 - 0.5) * 2
    const tall = heightPx * (1 - 0.38 * Math.abs(side)) * (0.88 + random() * 0.16)
    const tip = { xPx: side * widthPx * 0.5, yPx: -tall * (1 - 0.15 * Math.abs(side)) }
    blades += curve(base, { xPx: side * widthPx * 0.12, yPx: -tall }, tip)
    for (const share of [0.45, 0.65, 0.85]) {
      const at2 = {
        xPx: base.xPx + tip.xPx * share * share,
        yPx: base.yPx - tall * share * (1.25 - 0.35 * share),
      }
      blades += `M${n(at2.xPx - 2)} ${n(at2.yPx + 1.4)}l2 -1.4l2 1.4`
    }
  }
  return { blades, blooms: '' }
}

/** Mown turf: short ticks along a stretch of ground. */
export function turf(ground: readonly Px[], tallPx: number, random: () => number): string {
  return ground
    .map(
      (foot) =>
        `M${n(foot.xPx)} ${n(foot.yPx)}l${n((random() - 0.5) * 2.2)} ${n(-tallPx * (0.7 + random() * 0.6))}`,
    )
    .join('')
}

function curve(foot: Px, bend: Px, tip: Px): string {
  return `M${n(foot.xPx)} ${n(foot.yPx)}q${n(bend.xPx)} ${n(bend.yPx)} ${n(tip.xPx)} ${n(tip.yPx)}`
}

function bead(at: Px, heightPx: number, random: () => number): string {
  const radius = Math.max(0.5, Math.min(1.5, heightPx * 0.07)) * (0.8 + random() * 0.4)
  return `M${n(at.xPx)} ${n(at.yPx - radius)}v${n(radius * 1.4)}`
}
