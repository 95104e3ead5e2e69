import { toDegrees, wholeCircleDeg } from '#core/units'
import type { Section } from '#core/terrain'
import type { Findings, Plan } from '#plan'
import { dangersOn } from './section-view-dangers'
import { drawnStretch, obstaclesOn } from './section-view-obstacles'
import { measuredOn } from './section-view-measured'
import type { GroundPoint, MachineLimit, SectionView } from './section-view.types'
import { zonesOn } from './section-view-zones'

/**
 * Everything that the section drawing shows of a plan, and nothing else.
 *
 * @param plan - the plan
 * @param findings - what was derived from it
 * @returns the view that SectionFigure, SectionTable and the strips draw
 */
export function sectionView(plan: Plan, findings: Findings): SectionView {
  const { section } = findings.terrain
  const levels = section.stations.map((station) => station.levelM)
  const footLevelM = Math.min(...levels)
  const ground: GroundPoint[] = section.stations.map((station) => ({
    distanceM: station.distanceM,
    heightM: station.levelM - footLevelM,
    slopeDeg: station.slopeDeg,
    levelSdM: findings.accuracy.levelSdM[station.cell] ?? 0,
  }))
  const steepest = ground.reduce((most, point) => (point.slopeDeg > most.slopeDeg ? point : most))
  const obstacles = obstaclesOn({ section, standing: findings.standing, footLevelM }, plan.survey.obstacles)
  const zones = zonesOn(findings)
  return {
    name: plan.name,
    lengthM: section.lengthM,
    fallM: Math.max(...levels) - footLevelM,
    footLevelM,
    bearingDeg: bearingOf(section),
    latitudeDeg: plan.site.latitudeDeg,
    ground,
    measured: measuredOn(plan, findings, footLevelM),
    drawn: drawnStretch(section.lengthM, obstacles),
    zones,
    obstacles,
    machines: machinesOf(findings),
    steepest,
    dangers: dangersOn(findings, { ground, zones, obstacles }),
  }
}

function bearingOf({ from, to }: Section): number {
  return wholeCircleDeg(toDegrees(Math.atan2(to.eastM - from.eastM, to.northM - from.northM)))
}

function machinesOf(findings: Findings): MachineLimit[] {
  const all = findings.zones.flatMap((zone) => zone.cover.machines)
  const once = new Map(all.map((machine) => [machine.machineId, machine]))
  return [...once.values()].map(({ name, limitDeg }) => ({ name, limitDeg }))
}
