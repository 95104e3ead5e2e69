import type { GridFrame } from '#core/geometry'
import { n } from './path'
import type { PlanScale } from './plan-scale'

/** Cells are drawn at least this large [px]: smaller ones are read at every second, third and so on. */
const LEAST_CELL_PX = 2.4

/** A rectangle of cells of one class, in cells. */
interface Block {
  readonly own: number
  readonly column: number
  readonly wide: number
  readonly row: number
  tall: number
}

/**
 * Cells of equal class as one path to a class: neighbours in a row are joined, and equal runs under each other.
 *
 * @param classOfCell - class of each cell, -1 for none
 * @param frame - where the grid lies
 * @param scale - a plan that lies north up
 * @returns the path of each class
 */
export function classRects(
  classOfCell: Int8Array,
  frame: GridFrame,
  scale: Pick<PlanScale, 'at' | 'pxPerM'>,
): ReadonlyMap<number, string> {
  const step = Math.max(1, Math.ceil(LEAST_CELL_PX / (frame.cellM * scale.pxPerM)))
  const blocks: Block[] = []
  let above = new Map<string, Block>()
  for (let row = 0; row < Math.ceil(frame.rows / step); row += 1) {
    const here = new Map<string, Block>()
    for (const run of runsOf(classOfCell, frame, { row, step })) {
      const key = `${run.own} ${run.column} ${run.wide}`
      const block = above.get(key) ?? { ...run, row, tall: 0 }
      if (block.tall === 0) blocks.push(block)
      block.tall += 1
      here.set(key, block)
    }
    above = here
  }
  const paths = new Map<number, string>()
  for (const block of blocks)
    paths.set(block.own, (paths.get(block.own) ?? '') + rectangle(block, { frame, scale, step }))
  return paths
}

/** Runs of one class in a row of steps, read in the middle of each step. */
function runsOf(
  classOfCell: Int8Array,
  { columns, rows }: GridFrame,
  { row, step }: { readonly row: number; readonly step: number },
): { own: number; column: number; wide: number }[] {
  const runs: { own: number; column: number; wide: number }[] = []
  const half = Math.floor(step / 2)
  const readRow = Math.min(rows - 1, row * step + half)
  for (let column = 0; column < Math.ceil(columns / step); column += 1) {
    const own = classOfCell[readRow * columns + Math.min(columns - 1, column * step + half)] ?? -1
    const last = runs.at(-1)
    if (own < 0) continue
    if (last?.own === own && last.column + last.wide === column) last.wide += 1
    else runs.push({ own, column, wide: 1 })
  }
  return runs
}

interface Laid {
  readonly frame: GridFrame
  readonly scale: Pick<PlanScale, 'at' | 'pxPerM'>
  readonly step: number
}

function rectangle({ column, wide, row, tall }: Block, { frame, scale, step }: Laid): string {
  const stepM = frame.cellM * step
  const corner = (columns: number, rows: number) =>
    scale.at({
      eastM: frame.westM + columns * stepM,
      northM: frame.southM + frame.rows * frame.cellM - rows * stepM,
    })
  const [from, to] = [corner(column, row), corner(column + wide, row + tall)]
  return `M${n(from.xPx)} ${n(from.yPx)}H${n(to.xPx)}V${n(to.yPx)}H${n(from.xPx)}Z`
}
