import type { GridFrame } from '#core/geometry'
import type { PlanShade } from '#report'

/** How strongly a shading covers the paper, so that lines and letters still read on it [0 to 1]. */
const SHADE = 0.72

/** Whole part of a channel of a colour written #rrggbb. */
const channel = (colour: string, at: number) => parseInt(colour.slice(at, at + 2), 16)

const OPAQUE = 255

/** A shading as a picture laid over the cells it was made of; one pixel a cell. */
export function shadePicture({ classes, classOfCell }: PlanShade, frame: GridFrame) {
  const { columns, rows, cellM, westM, southM } = frame
  const [eastM, northM] = [westM + columns * cellM, southM + rows * cellM]
  return {
    dataUrl: paint(
      classOfCell,
      classes.map(({ colour }) => colour),
      columns,
    ),
    widthPx: columns,
    heightPx: rows,
    topLeft: { eastM: westM, northM },
    topRight: { eastM, northM },
    bottomLeft: { eastM: westM, northM: southM },
    shade: SHADE,
  }
}

function paint(classOfCell: Int8Array, colours: readonly string[], columns: number): string {
  const canvas = document.createElement('canvas')
  canvas.width = columns
  canvas.height = classOfCell.length / columns
  const context = canvas.getContext('2d')
  if (!context) return ''
  const image = context.createImageData(canvas.width, canvas.height)
  classOfCell.forEach((own, cell) => {
    const colour = colours[own]
    if (colour) image.data.set([channel(colour, 1), channel(colour, 3), channel(colour, 5), OPAQUE], cell * 4)
  })
  context.putImageData(image, 0, 0)
  return canvas.toDataURL('image/png')
}
