export type { OpenLevelDay, SunOnGround } from './sun.types'
