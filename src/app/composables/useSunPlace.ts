import { computed } from 'vue'
import type { PlanPoint } from '#core/geometry'
import { darkSpell, placeDay, placeSky } from '#core/shade'
import { shadingOf, type Findings, type Plan } from '#plan'
import { namedDays } from '../drawing/year-days'
import { useSheetStore } from '../stores/sheet'
import { useSunMomentStore } from '../stores/sun-moment'

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
  const latitudeDeg = computed(() => plan().site.latitudeDeg)

  const shading = computed(() => shadingOf(plan(), findings()))
  const sky = computed(() => store.place && placeSky(shading.value, findings().terrain, store.place))
  const day = computed(() => sky.value && placeDay(sky.value, latitudeDeg.value, store.dayOfYear))
  const seasons = computed(() =>
    namedDays(latitudeDeg.value).map((named) => ({
      ...named,
      sunHours: sky.value ? placeDay(sky.value, latitudeDeg.value, named.dayOfYear).sunHours : 0,
    })),
  )
  const dark = computed(() => sky.value && darkSpell(sky.value, latitudeDeg.value))

  /** Looks at the sky where the rod stands. */
  function toRod(): void {
    if (sheet.rodM !== undefined) store.place = placeOnSection(findings(), sheet.rodM)
  }

  /** Looks at the sky from the middle of a zone. */
  function toMiddle(zoneId: string): void {
    const at = findings().zoning.zones.findIndex(({ id }) => id === zoneId)
    store.place = findings().zoneSun[at]?.middle
  }

  return { store, sky, day, seasons, dark, toRod, toMiddle }
}
