import type { GridFrame } from '#core/geometry'
import { LIGHT_LIMITS, ramps } from '#report'

/** What a picture of light and shade is made of. */
export interface LitCells {
  readonly frame: GridFrame
  /** Part of each cell inside the plot, 0 to 1. */
  readonly share: Float64Array
  /** Share of direct light that reaches the cell, 0 to 1. */
  readonly light: Float32Array
}

/** How strongly light and shade cover the paper, so that lines and letters still read on it, 0 to 1. */
export const LIGHT_COVER = { shade: 0.62, through: 0.58, sun: 0.5 }
/** Shade, light that comes through, and full sun, as #rrggbb; the more comes through, the lighter. */
export const LIGHT_COLOURS = { shade: ramps.sun[0], through: ramps.sun.slice(2, 6), sun: ramps.sun[6] }

const CHANNEL = 255
/** Shares of light that are told apart [count]: as fine as the limit of shade. */
const STEPS = 100

/** Paints the cells onto a canvas of one pixel a cell. */
export function lightPixels({ frame, share, light }: LitCells, context: CanvasRenderingContext2D): void {
  const image = context.createImageData(frame.columns, frame.rows)
  const pixels = new Uint32Array(image.data.buffer)
  for (let cell = 0; cell < pixels.length; cell += 1)
    pixels[cell] = (share[cell] ?? 0) > 0 ? (colours[Math.round((light[cell] ?? 0) * STEPS)] ?? 0) : 0
  context.putImageData(image, 0, 0)
}

/** Colour of each share of light. */
const colours = Uint32Array.from({ length: STEPS + 1 }, (_, step) => pixelOf(step / STEPS))

function pixelOf(share: number): number {
  const { shade, through, sun } = LIGHT_COLOURS
  if (share <= LIGHT_LIMITS.shade) return pixel(shade, LIGHT_COVER.shade)
  if (share >= LIGHT_LIMITS.sun) return pixel(sun, LIGHT_COVER.sun)
  return pixel(through[Math.floor(share * through.length)] ?? sun, LIGHT_COVER.through)
}

/** Four bytes of a pixel in the order of memory. */
function pixel(colour: string, cover: number): number {
  const channels = [1, 3, 5].map((at) => parseInt(colour.slice(at, at + 2), 16))
  return new Uint32Array(Uint8ClampedArray.of(...channels, cover * CHANNEL).buffer)[0] ?? 0
}
