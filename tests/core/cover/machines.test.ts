import { describe, expect, it } from 'vitest'
import { coverOf, machineOf, refusalOf } from '#core/cover'
import { truth } from './truth'
import { brief, degOfPercent, option, steep, tables, zone } from './tables'

const machine = (id: string) => machineOf(id, tables)

describe('machine limits against what makers and safety bodies publish', () => {
  it('OSHA: a ride-on mower without a stated limit keeps off ground above 15°', () => {
    expect(machine('ride-on').limitDeg).toBeLessThanOrEqual(truth.rideOnWithoutPlate.deg)
    const verdict = (deg: number) => coverOf(steep(deg), brief([{ id: 'ride-on' }]), tables).machines[0]
    expect(verdict(truth.rideOnWithoutPlate.deg)?.allowed).toBe(true)
    expect(verdict(truth.rideOnWithoutPlate.deg + 0.01)?.allowed).toBe(false)
  })

  it('lawn-tractor manuals: towing stops at 10°', () => {
    expect(machine('ride-on-towing').limitDeg).toBeLessThanOrEqual(truth.rideOnTowing.deg)
  })

  it('mower manuals: a walk-behind rotary mower stops at 15° and goes across, a ride-on up and down', () => {
    expect(machine('walk-behind').limitDeg).toBeLessThanOrEqual(truth.walkBehind.deg)
    expect(machine('walk-behind').travel).toBe(truth.travel.walkBehind)
    expect(machine('ride-on').travel).toBe(truth.travel.rideOn)
    expect(machine('ride-on-towing').travel).toBe(truth.travel.rideOn)
  })

  it('robotic mower manuals: no steeper at the edge than the strictest of four, 10 %', () => {
    expect(machine('robot').limitDeg).toBeLessThanOrEqual(degOfPercent(truth.robotEdge.strictestPercent))
  })

  it('Agroscope 2010: a hill tractor stops below the 23.7° median of practice', () => {
    expect(degOfPercent(truth.hillTractorMedian.percent)).toBeCloseTo(truth.hillTractorMedian.deg, 1)
    expect(machine('hill-tractor').limitDeg).toBeLessThan(truth.hillTractorMedian.deg)
  })
})

describe('whose limit counts', () => {
  it('takes the maker’s plate, lower or higher, and says so', () => {
    const low = coverOf(steep(11), brief([{ id: 'ride-on', limitDeg: 10 }]), tables).machines[0]
    expect(low).toMatchObject({ limitDeg: 10, allowed: false, source: 'yours' })
    const high = coverOf(steep(18), brief([{ id: 'ride-on', limitDeg: 20 }]), tables).machines[0]
    expect(high).toMatchObject({ limitDeg: 20, allowed: true, source: 'yours' })
    expect(high?.because).toContain('15° is the usual caution')
    const same = coverOf(steep(8), brief([{ id: 'ride-on', limitDeg: 15 }]), tables).machines[0]
    expect(same?.because).toMatch(/from your plate\.$/)
  })

  it('lets no plate raise the limit of a hand tool', () => {
    const trimmer = coverOf(steep(28), brief([{ id: 'trimmer', limitDeg: 45 }]), tables).machines[0]
    expect(trimmer).toMatchObject({ limitDeg: machine('trimmer').limitDeg, allowed: false })
  })

  it('judges by the steep figure, not by the mean', () => {
    const uneven = zone({ slopeDegMean: 8, slopeDegSteep: 17 })
    expect(coverOf(uneven, brief([{ id: 'ride-on' }]), tables).machines[0]?.allowed).toBe(false)
  })

  it('judges what is worked on foot when no machine is named', () => {
    const ids = coverOf(zone(), brief([]), tables).machines.map(({ machineId }) => machineId)
    expect(ids).toEqual(['walk-behind', 'trimmer', 'scythe'])
  })

  it('refuses a ride-on above its limit for any area', () => {
    for (const slopeAreaM2 of [1, 50, 5000, 200_000]) {
      const cover = coverOf(steep(15.2, { slopeAreaM2 }), brief([{ id: 'ride-on' }]), tables)
      expect(cover.machines[0]?.allowed).toBe(false)
      expect(option(cover, 'mown').verdict).toBe('refused')
      expect(cover.suggested).not.toBe('mown')
    }
  })

  it('names machine, limit and gradient in the refusal', () => {
    const refusal = refusalOf(option(coverOf(steep(22.4), brief([{ id: 'ride-on' }]), tables), 'mown'))
    expect(refusal).toContain('Ride-on mower')
    expect(refusal).toContain('15°')
    expect(refusal).toContain('22.4°')
    expect(refusal).toContain('zone B')
  })

  it('keeps limit and gradient apart in words when they round alike', () => {
    const verdict = coverOf(steep(15.01), brief([{ id: 'ride-on' }]), tables).machines[0]
    expect(verdict?.because).toContain('15.010°')
  })

  it('throws on an unknown machine and on an impossible plate', () => {
    expect(() => coverOf(zone(), brief([{ id: 'hovercraft' }]), tables)).toThrow(
      /must be one of.*got hovercraft/,
    )
    expect(() => coverOf(zone(), brief([{ id: 'ride-on', limitDeg: 60 }]), tables)).toThrow(/0 to 45, got 60/)
  })
})
