import { isoRows, type IsoRow } from './conductor-rows.ts'
import { interpolate, type Point } from './interpolate.ts'
import type { SourceId, Status } from './sources.ts'

/** A figure worked out between two rows of the ISO 6722 table, with the source of the less certain of the two. */
export interface BetweenRows {
  readonly value: number
  readonly source: SourceId
  readonly status: Status
  readonly why: string
}

const products: readonly Point[] = isoRows.map((row) => ({ x: row.sizeMm2, y: row.ohmPerKm * row.sizeMm2 }))

/**
 * Ohms a metre at 20 C by size: resistance x area goes in straight lines between the ISO 6722 rows and stays level
 * beyond the first and last row.
 */
export function isoOhmPerM(areaMm2: number): BetweenRows {
  const product = interpolate(products, Math.min(Math.max(areaMm2, products[0].x), products[products.length - 1].x))
  return { value: product / areaMm2 / 1000, ...neighbours(areaMm2, isoRows) }
}

/**
 * Largest outside diameter in mm of a cable of this area with a thick or thin ISO 6722 wall: straight lines between the
 * rows over the square root of the area. For a wire whose own table prints no diameter; always an assumption.
 */
export function isoDiameterMm(areaMm2: number, wall: 'thick' | 'thin'): BetweenRows {
  const column = wall === 'thick' ? 'thickMaxMm' : 'thinMaxMm'
  const rows = isoRows.filter((row) => row[column] !== null)
  const points = rows.map((row) => ({ x: Math.sqrt(row.sizeMm2), y: row[column] ?? 0 }))
  return { value: interpolate(points, Math.sqrt(areaMm2)), ...neighbours(areaMm2, rows) }
}

function neighbours(areaMm2: number, rows: readonly IsoRow[]): Omit<BetweenRows, 'value'> {
  const upper = rows.find((row) => row.sizeMm2 >= areaMm2) ?? rows[rows.length - 1]
  const lower = rows.findLast((row) => row.sizeMm2 <= areaMm2) ?? rows[0]
  const weaker = lower.status === 'read' ? upper : lower
  const names = lower === upper ? `row ${lower.sizeMm2}` : `rows ${lower.sizeMm2} and ${upper.sizeMm2}`
  return { source: weaker.source, status: weaker.status, why: `ISO 6722 by size from ${names} mm2` }
}
