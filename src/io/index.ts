export { readTextTable, type TextTable } from './text-table'
export { toNumber } from './table-numbers'
export {
  columnsOfOrder,
  guessLevelColumns,
  headedColumns,
  headingParts,
  isCodeWord,
  isLevelWord,
  isMarkWord,
  usualOrders,
  type LevelColumns,
} from './level-columns'
export { guessProfileColumns, levelsFromTable, stationsFromTable, type ProfileColumns } from './levels-table'
export { declinationAt, type Declination } from './declination'
export { readFieldBook, type FieldBookHead, type FieldBookRead } from './field-book'
export { fieldBookCsv } from './field-book-text'
export { readAsciiGrid, writeAsciiGrid } from './ascii-grid'
export { MOST_CELLS, parseAsciiGrid, type AsciiGrid } from './ascii-grid-text'
export { writeCalendar, type CalendarDay, type CalendarEntry } from './calendar-file'
export { bankFromText, riseFromText } from './bank-text'
export { toPlotOrigin } from './plot-origin'
export { loadGridSystems, type GridSystem } from './grid-systems'
export { loadTables } from './tables'
export { loadShadeTables } from './shade-tables'
export { loadSources } from './source-table'
export { demos, type Demo } from './demos'
export { findingsJson } from './findings-json'
export { drawLayer, type DrawnLayer } from './draw-layer'
export { placeSun, type AskedDate, type PlaceSunBody } from './place-sun'
export { sunBodies, type SunBodies, type ZoneSunBody } from './sun-body'
export { sunJson } from './sun-json'
export { contoursGeoJson } from './contour-lines'
export { layers } from './layers'
export type { Layer, LayerOption, LayerOptions } from './layer.types'
export { dayAsked } from './plot-light'
export { unitAsked } from './sun-layers'
export { careCalendar } from './care-calendar'
export { plantSchedule } from './plant-schedule'
export { zoneSchedule } from './zone-schedule'
export { schemaPages } from './schema-pages'
export { spotsFromText } from './spot-table'
export { spotsCsv, spotsJson } from './spots-out'
