import { CellHeap } from './cell-heap'

/** Cells to a step of the staircase, when levels are spread evenly [count]; tried out, not part of any result. */
const CELLS_TO_STEP = 4

/** Marks the end of a step's list. */
const NONE = -1

/**
 * Cells waiting to be flooded, the lowest first.
 *
 * The rise from the lowest to the highest level is cut into many equal steps. Because a flood only ever rises, cells
 * on a higher step need no order yet: they wait in that step's list. Only the cells of the step the flood stands on are
 * kept in order, in a heap that stays small.
 */
export class RisingQueue {
  readonly #levelM: Float64Array
  readonly #heads: Int32Array
  readonly #next: Int32Array
  readonly #heap: CellHeap
  readonly #lowestM: number
  readonly #stepsPerM: number
  #step = 0
  #waiting = 0

  /**
   * Makes an empty queue.
   *
   * @param levelM - level by which cells are ordered [m]; a waiting cell's level must not change
   * @param wayOut - way to the outlet, which decides between equal levels [cells]
   * @param range - lowest and highest level that can come [m]
   * @param range.lowestM - lowest [m]
   * @param range.highestM - highest [m]
   */
  constructor(
    levelM: Float64Array,
    wayOut: Float64Array,
    { lowestM, highestM }: { readonly lowestM: number; readonly highestM: number },
  ) {
    const steps = Math.max(1, Math.ceil(levelM.length / CELLS_TO_STEP))
    const riseM = highestM - lowestM
    this.#levelM = levelM
    this.#heads = new Int32Array(steps + 1).fill(NONE)
    this.#next = new Int32Array(levelM.length)
    this.#heap = new CellHeap(levelM, wayOut)
    this.#lowestM = lowestM
    this.#stepsPerM = riseM > 0 ? steps / riseM : 0
  }

  /**
   * How many cells wait.
   *
   * @returns number of cells [count]
   */
  get size(): number {
    return this.#waiting
  }

  /**
   * Adds a cell; each cell may be added once, and never below the last one taken.
   *
   * @param cell - index of the cell [count]
   */
  add(cell: number): void {
    this.#waiting += 1
    const step = ((this.#levelM[cell]! - this.#lowestM) * this.#stepsPerM) | 0
    if (step <= this.#step) {
      this.#heap.add(cell)
      return
    }
    this.#next[cell] = this.#heads[step]!
    this.#heads[step] = cell
  }

  /**
   * Gives a cell on the level of the flood its new place after its way out became shorter.
   *
   * @param cell - index of the cell [count]
   */
  moveUp(cell: number): void {
    this.#heap.moveUp(cell)
  }

  /**
   * Takes the first cell out; there must be one.
   *
   * @returns index of the cell [count]
   */
  takeFirst(): number {
    this.#waiting -= 1
    if (this.#heap.size === 0) this.#climb()
    return this.#heap.takeFirst()
  }

  // To the next step that has cells.
  #climb(): void {
    const heads = this.#heads
    let step = this.#step
    while (heads[step] === NONE) step += 1
    this.#step = step
    for (let cell = heads[step]!; cell !== NONE; cell = this.#next[cell]!) this.#heap.add(cell)
    heads[step] = NONE
  }
}
