import type { SectionObstacle, SectionView, StandingRoof } from '../section-view.types'
import { n } from './path'
import { groundAt, type SectionScale } from './scale'
import { seededRandom } from './seeded'
import { foliage } from './foliage'

/** Lines of one thing that stands on the section, by how they are drawn. */
export interface ObstacleDrawing {
  /** Cut or seen faces, washed with paper. */
  readonly face: string
  /** Masonry in coursing. */
  readonly stone: string
  /** Strong outlines. */
  readonly bold: string
  readonly thin: string
  readonly water: string
  /** Leaves of hedges. */
  readonly leaf: string
}

/** Heights used for the drawing only, when the person gave none [m]; our judgement. */
const USUAL_HEIGHT_M: Readonly<Partial<Record<SectionObstacle['kind'], number>>> = {
  house: 5.5,
  building: 4,
  wall: 1,
  fence: 1.2,
  hedge: 1.5,
  downpipe: 3,
}

const NOTHING: ObstacleDrawing = { face: '', stone: '', bold: '', thin: '', water: '', leaf: '' }

/** Share of a house's height at its eaves where none was given, and how far a foundation is shown below ground [m]. */
const EAVES_SHARE = 0.62
const FOOTING_M = 0.45
const HOUSE_WALL_M = 0.3

/** Depth at which buried things are drawn, a sign and not a survey [px]. */
const BURIED_PX = 22

interface Place {
  readonly leftPx: number
  readonly rightPx: number
  readonly footPx: number
  readonly topPx: number
  readonly scale: SectionScale
  readonly roof: StandingRoof
}

/** Draws a thing as it stands in the section; trees are drawn with the plants. */
export function obstacleDrawing(
  view: SectionView,
  scale: SectionScale,
  obstacle: SectionObstacle,
): ObstacleDrawing {
  const draw = drawings[obstacle.kind]
  return draw ? { ...NOTHING, ...draw(placeOf(view, scale, obstacle), obstacle) } : NOTHING
}

/** Height that a thing is drawn with where its standing is not known [m]. */
export function drawnHeightM(obstacle: SectionObstacle): number {
  return obstacle.heightM ?? USUAL_HEIGHT_M[obstacle.kind] ?? 0
}

/** Eaves and ridge of a building on the sheet [m above the section's lowest point]; guessed where no height was given. */
export function roofOf(view: SectionView, obstacle: SectionObstacle): StandingRoof {
  if (obstacle.standing?.roof) return obstacle.standing.roof
  const footM = groundAt(view.ground, obstacle.toM).heightM
  const heightM = drawnHeightM(obstacle)
  return { eavesM: footM + heightM * EAVES_SHARE, ridgeM: footM + heightM, form: 'gable' }
}

/** Houses and all other buildings. */
export function isBuilding({ kind }: Pick<SectionObstacle, 'kind'>): boolean {
  return kind === 'house' || kind === 'building'
}

function placeOf(view: SectionView, scale: SectionScale, obstacle: SectionObstacle): Place {
  const middleM = (Math.max(obstacle.fromM, -1e6) + obstacle.toM) / 2
  const ground = groundAt(view.ground, isBuilding(obstacle) ? obstacle.toM : middleM).heightM
  return {
    leftPx: scale.axis.x(obstacle.fromM),
    rightPx: Math.max(scale.axis.x(obstacle.toM), scale.axis.x(obstacle.fromM) + 3),
    footPx: scale.y(ground),
    topPx: scale.y(ground + drawnHeightM(obstacle)),
    scale,
    roof: roofOf(view, obstacle),
  }
}

type Draw = (place: Place, obstacle: SectionObstacle) => Partial<ObstacleDrawing>

const house: Draw = ({ leftPx, rightPx, footPx, scale, roof }, { cut }) => {
  const eavesPx = scale.y(roof.eavesM)
  const wallPx = Math.max(3, HOUSE_WALL_M * scale.xPxPerM)
  const low = footPx + FOOTING_M * scale.yPxPerM
  const walls = [leftPx, rightPx - wallPx]
    .map((left) => `M${n(left)} ${n(eavesPx)}h${n(wallPx)}V${n(low)}h${n(-wallPx)}Z`)
    .join('')
  const top = roofLines({ leftPx, rightPx, eavesPx, ridgePx: scale.y(roof.ridgeM) }, roof.form, wallPx * 0.9)
  return {
    face: `M${n(leftPx)} ${n(footPx)}V${n(eavesPx)}${top.face}V${n(footPx)}Z`,
    stone: cut ? walls : '',
    bold: top.bold,
    thin: `${walls}${top.thin}M${n(leftPx + wallPx)} ${n((footPx + eavesPx) / 2)}H${n(rightPx - wallPx)}`,
  }
}

interface Roof {
  readonly leftPx: number
  readonly rightPx: number
  readonly eavesPx: number
  readonly ridgePx: number
}

/** A roof seen from its gable, from its side, or flat; it stands out by so much over the walls. */
function roofLines(
  { leftPx, rightPx, eavesPx, ridgePx }: Roof,
  form: 'flat' | 'gable' | 'along',
  outPx: number,
) {
  const [left, right, eaves] = [n(leftPx - outPx), n(rightPx + outPx), n(eavesPx)]
  if (form === 'flat') return { face: `H${n(rightPx)}`, bold: `M${left} ${eaves}H${right}`, thin: '' }
  if (form === 'along')
    return {
      face: `L${n(leftPx)} ${n(ridgePx)}H${n(rightPx)}V${eaves}`,
      bold: `M${left} ${eaves}L${n(leftPx)} ${n(ridgePx)}H${n(rightPx)}L${right} ${eaves}`,
      thin: `M${left} ${eaves}H${right}`,
    }
  const middle = (leftPx + rightPx) / 2
  return {
    face: `L${n(middle)} ${n(ridgePx)}L${n(rightPx)} ${eaves}`,
    bold: `M${left} ${n(eavesPx + outPx * 0.4)}L${n(middle)} ${n(ridgePx)}L${right} ${n(eavesPx + outPx * 0.4)}`,
    thin: '',
  }
}

const wall: Draw = ({ leftPx, rightPx, footPx, topPx, scale }) => {
  const low = footPx + FOOTING_M * scale.yPxPerM
  const width = Math.max(rightPx - leftPx, 5)
  const shape = `M${n(leftPx)} ${n(low)}V${n(topPx)}h${n(width)}V${n(low)}Z`
  return { face: shape, stone: shape, bold: shape }
}

const fence: Draw = ({ leftPx, footPx, topPx }) => ({
  bold: `M${n(leftPx)} ${n(footPx)}V${n(topPx)}`,
  thin: `M${n(leftPx - 4)} ${n(topPx + 3)}h8M${n(leftPx - 4)} ${n((topPx + footPx) / 2)}h8`,
})

const hedge: Draw = ({ leftPx, rightPx, footPx, topPx }, { id }) => {
  const random = seededRandom(id)
  const radius = Math.max(4, Math.min((rightPx - leftPx) / 2, (footPx - topPx) / 2.4))
  const clumps = [0.2, 0.5, 0.8].flatMap((across) =>
    [0.25, 0.7].map((up) => ({
      xPx: leftPx + across * (rightPx - leftPx),
      yPx: footPx - up * (footPx - topPx),
      radiusPx: radius,
    })),
  )
  const drawn = foliage(clumps, 4, random)
  return { leaf: drawn.fill, thin: drawn.edge }
}

const flat: Draw = ({ leftPx, rightPx, footPx }) => ({
  stone: `M${n(leftPx)} ${n(footPx)}H${n(rightPx)}v6H${n(leftPx)}Z`,
  bold: `M${n(leftPx)} ${n(footPx)}H${n(rightPx)}`,
})

const drain: Draw = ({ leftPx, footPx }) => ({
  face: ring(leftPx, footPx + BURIED_PX),
  water: ring(leftPx, footPx + BURIED_PX),
})

const downpipe: Draw = ({ leftPx, footPx, topPx }) => ({
  water: `M${n(leftPx)} ${n(topPx)}V${n(footPx - 5)}q0 5 7 5h5`,
})

const spring: Draw = ({ leftPx, footPx }) => ({
  face: ring(leftPx, footPx),
  water: `${ring(leftPx, footPx)}M${n(leftPx - 1)} ${n(footPx)}h2`,
})

const services: Draw = ({ leftPx, footPx }) => ({
  face: diamond(leftPx, footPx + BURIED_PX),
  bold: diamond(leftPx, footPx + BURIED_PX),
})

const drawings: Readonly<Partial<Record<SectionObstacle['kind'], Draw>>> = {
  house,
  building: house,
  wall,
  fence,
  hedge,
  path: flat,
  paving: flat,
  drain,
  downpipe,
  spring,
  services,
}

function ring(xPx: number, yPx: number): string {
  return `M${n(xPx - 5.5)} ${n(yPx)}a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0 -11 0Z`
}

function diamond(xPx: number, yPx: number): string {
  return `M${n(xPx)} ${n(yPx - 5)}l5 5l-5 5l-5 -5Z`
}
