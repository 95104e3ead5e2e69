import { computed } from 'vue'
import type { PlanPoint } from '#core/geometry'
import { darkSpell, lightClassOf, placeDay, placeSky, type PlaceDay } from '#core/shade'
import { shadingOf, type Findings, type Plan } from '#plan'
import { namedDays } from '../drawing/year-days'
import { useSheetStore } from '../stores/sheet'
import { useSunMomentStore } from '../stores/sun-moment'
import { useTables } from '../stores/tables'
import { useLookedPlace } from './useLookedPlace'

/** A place on the line of the section [m from the top edge]. */
export function placeOnSection({ terrain }: Findings, atM: number): PlanPoint | undefined {
  const { from, to, lengthM } = terrain.section
  if (lengthM === 0) return undefined
  const share = Math.min(1, Math.max(0, atM / lengthM))
  const tidy = (metres: number) => Math.round(metres * 100) / 100
  return {
    eastM: tidy(from.eastM + share * (to.eastM - from.eastM)),
    northM: tidy(from.northM + share * (to.northM - from.northM)),
  }
}

/** The place whose sky is looked at, and the sun that reaches it. */
export function useSunPlace(plan: () => Plan, findings: () => Findings) {
  const store = useSunMomentStore()
  const sheet = useSheetStore()
  const { lightClasses } = useTables().shade
  const { place, name, zone } = useLookedPlace(findings)
  const latitudeDeg = computed(() => plan().site.latitudeDeg)

  const shading = computed(() => shadingOf(plan(), findings()))
  const sky = computed(() => place.value && placeSky(shading.value, findings().terrain, place.value))
  const day = computed(() => sky.value && placeDay(sky.value, latitudeDeg.value, store.dayOfYear))
  const lightClass = computed(() => {
    const midsummer = namedDays(latitudeDeg.value)[0]
    if (!sky.value || !midsummer) return undefined
    const id = lightClassOf(
      lightHours(placeDay(sky.value, latitudeDeg.value, midsummer.dayOfYear)),
      lightClasses,
    )
    return lightClasses.find((row) => row.id === id)
  })
  const dark = computed(() => sky.value && darkSpell(sky.value, latitudeDeg.value))

  /** Looks at the sky where the rod stands. */
  function toRod(): void {
    if (sheet.rodM !== undefined) store.place = placeOnSection(findings(), sheet.rodM)
  }

  /** Looks at the sky from the middle of the zone that is drawn. */
  function toMiddle(): void {
    store.place = undefined
  }

  return { store, place, name, zone, sky, day, lightClass, dark, toRod, toMiddle }
}

/** Light counts from a tenth of it up, as the class of a zone counts it, 0 to 1; without anything before it, it is clear. */
const LEAST_LIGHT = 0.1
const CLEAR_LIGHT = 0.995

/** Hours of a day in full sun and through leaves. */
function lightHours({ spells, sunHours }: PlaceDay) {
  const hours = (of: (through: number) => boolean) =>
    spells.filter(({ through }) => of(through)).reduce((sum, { fromH, toH }) => sum + toH - fromH, 0)
  return {
    sunHours,
    clearHours: hours((through) => through >= CLEAR_LIGHT),
    leafyHours: hours((through) => through >= LEAST_LIGHT && through < CLEAR_LIGHT),
  }
}
