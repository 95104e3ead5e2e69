export { zoneSchema, type Zone } from './zone.schema'
export type { SlopeBand, ZoneFacts, Zoning } from './zone.types'
