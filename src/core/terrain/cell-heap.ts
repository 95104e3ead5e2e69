/** Cells waiting, the lowest first; of equally low ones the nearest to the outlet, then the one that came first. */
export class CellHeap {
  readonly #cells: Uint32Array
  readonly #places: Uint32Array
  readonly #turns: Uint32Array
  readonly #levelM: Float64Array
  readonly #wayOut: Float64Array
  #size = 0
  #turn = 0

  /**
   * Makes an empty heap.
   *
   * @param levelM - level by which cells are ordered [m]; a waiting cell's level must not change
   * @param wayOut - way to the outlet, which decides between equal levels [cells]; it may shrink, see `moveUp`
   */
  constructor(levelM: Float64Array, wayOut: Float64Array) {
    this.#cells = new Uint32Array(levelM.length)
    this.#places = new Uint32Array(levelM.length)
    this.#turns = new Uint32Array(levelM.length)
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
    this.#turns[cell] = this.#turn++
    this.#places[cell] = this.#size++
    this.moveUp(cell)
  }

  /**
   * Gives a waiting cell its new place after its way out became shorter.
   *
   * @param cell - index of the cell [count]
   */
  moveUp(cell: number): void {
    let at = this.#places[cell] ?? 0
    while (at > 0) {
      const above = (at - 1) >> 1
      const other = this.#cells[above] ?? 0
      if (!this.#comesFirst(cell, other)) break
      this.#put(other, at)
      at = above
    }
    this.#put(cell, at)
  }

  /**
   * Takes the first cell out; there must be one.
   *
   * @returns index of the cell [count]
   */
  takeFirst(): number {
    const first = this.#cells[0] ?? 0
    const moved = this.#cells[--this.#size] ?? 0
    let at = 0
    for (;;) {
      const below = this.#firstChild(at)
      const other = this.#cells[below] ?? 0
      if (below >= this.#size || !this.#comesFirst(other, moved)) break
      this.#put(other, at)
      at = below
    }
    this.#put(moved, at)
    return first
  }

  #put(cell: number, at: number): void {
    this.#cells[at] = cell
    this.#places[cell] = at
  }

  #firstChild(at: number): number {
    const left = 2 * at + 1
    const right = left + 1
    if (right >= this.#size) return left
    return this.#comesFirst(this.#cells[right] ?? 0, this.#cells[left] ?? 0) ? right : left
  }

  #comesFirst(one: number, other: number): boolean {
    const gapM = (this.#levelM[one] ?? 0) - (this.#levelM[other] ?? 0)
    if (gapM !== 0) return gapM < 0
    const gap = (this.#wayOut[one] ?? 0) - (this.#wayOut[other] ?? 0)
    return gap < 0 || (gap === 0 && (this.#turns[one] ?? 0) < (this.#turns[other] ?? 0))
  }
}
