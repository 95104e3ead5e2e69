import { eightWays } from './neighbours'
import type { FlowShares } from './terrain.types'
import { weighWays, type FlowGround } from './weigh-ways'

/**
 * Where the water of every cell goes next: to all lower neighbours, more to the steeper.
 *
 * On level stretches it goes to the neighbours nearer to the outlet, shared out in the same manner. Where the ground
 * falls straight out of the plot, and at the lip of the edge, it leaves.
 *
 * @param ground - where water can go
 * @returns links with their shares; the shares of a cell add up to 1, or it has no link where water leaves
 * @see Freeman 1991, Computers & Geosciences 17: 413-422
 */
export function flowShares(ground: FlowGround): FlowShares {
  const { hood, filled } = ground
  const cells = hood.inside.length
  const starts = new Uint32Array(cells + 1)
  const weights = new Float64Array(eightWays.length)
  let links = new LinkList(filled.risingOrder.length * USUAL_LINKS)
  for (let cell = 0; cell < cells; cell++) {
    starts[cell] = links.size
    if (!hood.inside[cell]) continue
    const total = weighWays(weights, ground, cell)
    if (!(total > 0)) continue
    links = links.withRoom()
    for (let way = 0; way < eightWays.length; way++)
      if (weights[way]! > 0) links.add(cell + hood.offsets[way]!, weights[way]! / total)
  }
  starts[cells] = links.size
  return { starts, ...links.trimmed(), order: filled.risingOrder.slice().reverse() }
}

/** Links that a cell of even ground has [count]; more room is made when they prove too few. */
const USUAL_LINKS = 4

/** A list of links that grows. */
class LinkList {
  readonly to: Uint32Array
  readonly share: Float64Array
  size = 0

  constructor(room: number) {
    this.to = new Uint32Array(room + eightWays.length)
    this.share = new Float64Array(room + eightWays.length)
  }

  add(to: number, share: number): void {
    this.to[this.size] = to
    this.share[this.size++] = share
  }

  // This list, or a larger copy when eight more links would not fit.
  withRoom(): LinkList {
    if (this.size + eightWays.length <= this.to.length) return this
    const larger = new LinkList(Math.ceil(this.to.length * 1.25))
    larger.to.set(this.to)
    larger.share.set(this.share)
    larger.size = this.size
    return larger
  }

  trimmed(): Pick<FlowShares, 'to' | 'share'> {
    return { to: this.to.slice(0, this.size), share: this.share.slice(0, this.size) }
  }
}
