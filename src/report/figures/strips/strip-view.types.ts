import type { CoverKind, MowingVerdict } from '#core/cover'
import type { MixLine } from '#core/plants'
import type { Scores } from '#core/scores'
import type { TextureClass } from '#core/soil'
import type { Twelve } from '#core/units'
import type { MachineLimit, Stretch } from '../../section-view.types'

/** Everything the strips under the section show, and nothing else. */
export interface StripView {
  readonly lengthM: number
  readonly latitudeDeg: number
  readonly zones: readonly StripZone[]
  readonly stations: readonly StripStation[]
  readonly machines: readonly MachineLimit[]
  /** Direct sun on open level ground [h]. */
  readonly openSunHours: Twelve<number>
  /** Hours of care available [h a year]; undefined when not said. */
  readonly hoursAvailable: number | undefined
}

/** A place on the section with what varies from place to place. */
export interface StripStation {
  readonly distanceM: number
  readonly slopeDeg: number
  /** Hours of direct sun on each month's representative day, clear sky [h]. */
  readonly sunHours: Twelve<number>
}

/** A zone as the strips know it. */
export interface StripZone {
  readonly id: string
  readonly letter: string
  readonly name: string
  readonly spans: readonly Stretch[]
  readonly slopeDegMean: number
  /** Nine tenths of the zone are no steeper [°]. */
  readonly slopeDegSteep: number
  /** Direction the zone faces, clockwise from true north [°]; undefined on level ground. */
  readonly aspectDeg: number | undefined
  readonly planAreaM2: number
  readonly slopeAreaM2: number
  readonly soil: {
    readonly texture: TextureClass
    readonly depthM: number
    readonly stonesPercent: number
    readonly availableMm: number
  }
  readonly scores: Scores
  readonly mowing: MowingVerdict
  readonly suggested: CoverKind
  readonly chosen: CoverKind
  readonly chosenByPerson: boolean
  readonly sunHours: Twelve<number>
  /** Part of them before noon, and hours in which the sun comes through leaves [h]. */
  readonly morningHours: Twelve<number>
  readonly dappledHours: Twelve<number>
  /** Water plants can take over what the soil can hold, mean of each month [ratio]. */
  readonly fullness: Twelve<number>
  readonly dryDays: Twelve<number>
  readonly wetDays: Twelve<number>
  readonly passing: Passing
  readonly planting: readonly PlantedLine[]
  readonly care: CareHours
}

/** Water that crosses a zone's upper and lower edge in a usual year [m³ a year]. */
export interface Passing {
  readonly overInM3: number
  readonly overOutM3: number
  readonly throughInM3: number
  readonly throughOutM3: number
}

export interface PlantedLine {
  readonly plantId: string
  readonly latin: string
  readonly name: string
  readonly layer: MixLine['layer']
  readonly count: number
  readonly seedG: number | undefined
}

/** Hours of an established year [h a year]. */
export interface CareHours {
  readonly hours: number
  /** Part that the slope adds. */
  readonly slopeHours: number
  /** The same zone as mown grass; undefined when mowing is refused. */
  readonly mownHours: number | undefined
  readonly mownRefusal: string | undefined
}
