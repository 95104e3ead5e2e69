import L from 'leaflet'
import type { PlanPoint } from '#core/geometry'

/** A place of the plot on the map: metres north are its latitude, metres east its longitude. */
export const onMap = ({ eastM, northM }: PlanPoint): L.LatLng => L.latLng(northM, eastM)

/** A place of the map in the plot, to the centimetre. */
export function inPlot({ lat, lng }: L.LatLng): PlanPoint {
  return { eastM: Math.round(lng * 100) / 100, northM: Math.round(lat * 100) / 100 }
}

export const lineOnMap = (line: readonly PlanPoint[]): L.LatLng[] => line.map(onMap)

/** How many metres of the plot a number of pixels cover now. */
export const metresOf = (map: L.Map, px: number): number => px / map.getZoomScale(map.getZoom(), 0)
