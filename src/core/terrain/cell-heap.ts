/** Cells waiting, the lowest first; of equally low ones the nearest to the outlet, then the one with the lower index. */
export class CellHeap {
  readonly #cells: Uint32Array
  readonly #places: Uint32Array
  readonly #levelM: Float64Array
  readonly #wayOut: Float64Array
  #size = 0

  /**
   * Makes an empty heap.
   *
   * @param levelM - level by which cells are ordered [m]; a waiting cell's level must not change
   * @param wayOut - way to the outlet, which decides between equal levels [cells]; it may shrink, see `moveUp`
   */
  constructor(levelM: Float64Array, wayOut: Float64Array) {
    this.#cells = new Uint32Array(levelM.length)
    this.#places = new Uint32Array(levelM.length)
    this.#levelM = levelM
    this.#wayOut = wayOut
  }

  /**
   * How many cells wait.
   *
   * @returns number of cells [count]
   */
  get size(): number {
    return this.#size
  }

  /**
   * Adds a cell; each cell may be added once.
   *
   * @param cell - index of the cell [count]
   */
  add(cell: number): void {
    this.#rise(cell, this.#size++)
  }

  /**
   * Gives a waiting cell its new place after its way out became shorter.
   *
   * @param cell - index of the cell [count]
   */
  moveUp(cell: number): void {
    this.#rise(cell, this.#places[cell]!)
  }

  /**
   * Takes the first cell out; there must be one.
   *
   * @returns index of the cell [count]
   */
  takeFirst(): number {
    const cells = this.#cells
    const first = cells[0]!
    const moved = cells[--this.#size]!
    let at = 0
    for (;;) {
      let below = 2 * at + 1
      if (below >= this.#size) break
      if (below + 1 < this.#size && this.#comesFirst(cells[below + 1]!, cells[below]!)) below += 1
      if (!this.#comesFirst(cells[below]!, moved)) break
      this.#put(cells[below]!, at)
      at = below
    }
    this.#put(moved, at)
    return first
  }

  #rise(cell: number, from: number): void {
    let at = from
    while (at > 0) {
      const above = (at - 1) >> 1
      const other = this.#cells[above]!
      if (!this.#comesFirst(cell, other)) break
      this.#put(other, at)
      at = above
    }
    this.#put(cell, at)
  }

  #put(cell: number, at: number): void {
    this.#cells[at] = cell
    this.#places[cell] = at
  }

  #comesFirst(one: number, other: number): boolean {
    const gapM = this.#levelM[one]! - this.#levelM[other]!
    if (gapM !== 0) return gapM < 0
    const gap = this.#wayOut[one]! - this.#wayOut[other]!
    return gap < 0 || (gap === 0 && one < other)
  }
}
