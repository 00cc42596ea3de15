import { batteryRules, hydrometerRows, internalResistance, restVoltsRows, type RestVoltsRow } from './battery-rows.ts'
import { interpolate } from './interpolate.ts'
import type { SourceId, Status } from './sources.ts'

const tableCells = 6

/** Internal resistance in milliohms at room temperature, with the band of healthy batteries. Always an assumption. */
export interface InternalMohm {
  readonly mohm: number
  readonly lowMohm: number
  readonly highMohm: number
  readonly source: SourceId
  readonly status: Status
  readonly assumed: true
  readonly why: string
}

/** How long a battery feeds a load. Always an assumption. */
export interface RunDown {
  readonly hours: number
  readonly source: SourceId
  readonly status: Status
  readonly assumed: true
  readonly why: string
}

/**
 * Rest volts of a lead-acid battery of `cells` cells at this state of charge in per cent, about 27 C, between the rows of a
 * published table of rest volts.
 */
export function restVolts(cells: number, socPct: number, rows: readonly RestVoltsRow[] = restVoltsRows): number {
  if (!(socPct >= 0 && socPct <= 100)) throw new RangeError(`state of charge is 0 to 100 %, not ${socPct}`)
  const points = rows.map((row) => ({ x: row.socPct, y: row.restV })).reverse()
  return (interpolate(points, socPct) * checkedCells(cells)) / tableCells
}

/** State of charge in per cent from rest volts, the way back of `restVolts`; 0 and 100 beyond the ends of the table. */
export function chargeAtRestVolts(cells: number, volts: number, rows: readonly RestVoltsRow[] = restVoltsRows): number {
  const points = rows.map((row) => ({ x: row.restV, y: row.socPct })).reverse()
  return Math.min(100, Math.max(0, interpolate(points, (volts * tableCells) / checkedCells(cells))))
}

/** Rest volts by the rule of thumb: each cell has its specific gravity + 0.84 V. */
export function restVoltsByGravity(cells: number, gravity: number): number {
  return checkedCells(cells) * (gravity + batteryRules.cellVOverGravity.value)
}

/** A hydrometer reading corrected to acid of 80 F (26.7 C), between the rows of the published table. */
export function correctedGravity(reading: number, acidC: number): number {
  return reading + interpolate(hydrometerRows.map((row) => ({ x: row.acidC, y: row.addGravity })), acidC)
}

/**
 * Internal resistance of a healthy battery by cells and ampere-hours: the middle of the usual band at the middle of its
 * capacities, in proportion to cells and inversely to capacity (common practice). Worn or half-charged is
 * `internalResistance.wornFactor` times that.
 */
export function internalMohm(cells: number, capacityAh: number): InternalMohm {
  if (!(capacityAh > 0)) throw new RangeError(`a battery holds more than 0 Ah, not ${capacityAh}`)
  const isSmall = checkedCells(cells) <= 3
  const band = isSmall ? internalResistance.healthy6V : internalResistance.healthy12V
  const scale = ((cells / (isSmall ? 3 : 6)) * ((band.minAh + band.maxAh) / 2)) / capacityAh
  return {
    mohm: ((band.minMohm + band.maxMohm) / 2) * scale, lowMohm: band.minMohm * scale, highMohm: band.maxMohm * scale,
    source: band.source, status: band.status, assumed: true, why: `${band.item}, by size`,
  }
}

/**
 * The most internal resistance, in milliohms at -18 C, with which a battery meets its cold-cranking rating in amps: from
 * its rest volts to the volts at which the rating ends, 7.2 V for six cells and in proportion for others.
 */
export function crankingBoundMohm(ratingA: number, restV: number, cells = tableCells): number {
  const endV = (batteryRules.crankingRatingEndV.value * checkedCells(cells)) / tableCells
  if (!(ratingA > 0)) throw new RangeError(`a cold-cranking rating is more than 0 A, not ${ratingA}`)
  if (!(restV > endV)) throw new RangeError(`${cells} cells rest above ${endV} V, not at ${restV} V`)
  return (1000 * (restV - endV)) / ratingA
}

/**
 * Hours until a full battery that feeds this current is empty: ampere-hours over amps. That holds near the current its
 * capacity is stated at; a larger one empties it sooner.
 */
export function runDown(capacityAh: number, currentA: number): RunDown {
  if (!(capacityAh > 0)) throw new RangeError(`a battery holds more than 0 Ah, not ${capacityAh}`)
  if (!(currentA > 0)) throw new RangeError(`a load that empties a battery takes more than 0 A, not ${currentA}`)
  const why = 'ampere-hours over amps, from full; a large current empties it sooner'
  return { hours: capacityAh / currentA, source: 'tm-9-8000-lighting', status: 'read', assumed: true, why }
}

function checkedCells(cells: number): number {
  if (!(Number.isInteger(cells) && cells > 0)) throw new RangeError(`a battery has a whole number of cells, not ${cells}`)
  return cells
}
