import { pullForceRules } from './fitting-rule-rows.ts'
import { fillRows, jamRows, type FillRow } from './routing-rows.ts'

/** The most newtons to pull wires with, all of them tied to the cord: 50 N for each mm2 of copper (European practice). */
export function pullLimitN(areasMm2: readonly number[]): number {
  return pullForceRules.copperNPerMm2.value * areasMm2.reduce((sum, area) => sum + area, 0)
}

/** What goes on behind a bend: newtons on the wire, and newtons on its side for each metre of the bend's radius. */
export interface BendPull {
  readonly outN: number
  readonly sidewallNPerM: number
}

/** T_out = T_in exp(f angle), sidewall pressure = T_out / radius. */
export function pullThroughBend(inN: number, friction: number, angleDeg: number, radiusM: number): BendPull {
  if (!(radiusM > 0)) throw new RangeError(`a bend has a radius of more than 0 m, not ${radiusM}`)
  const outN = inN * Math.exp((friction * angleDeg * Math.PI) / 180)
  return { outN, sidewallNPerM: outN / radiusM }
}

/** Share of a round bore in per cent that wires of these outside diameters fill: 100 x sum of d2 / D2. */
export function fillPct(boreMm: number, outsidesMm: readonly number[]): number {
  return (100 * outsidesMm.reduce((sum, d) => sum + d ** 2, 0)) / boreMm ** 2
}

/** The largest share that a tube may be filled to, by how many wires lie in it (NEC chapter 9 Table 1). */
export function findFillLimit(wires: number): FillRow {
  if (!(Number.isInteger(wires) && wires > 0)) throw new RangeError(`a tube holds a whole number of wires, not ${wires}`)
  return fillRows[Math.min(wires, 3) - 1]
}

/** Whether three like wires may jam in a bore: inside diameter over wire diameter from 2.8 to 3.2. */
export function mayJam(boreMm: number, outsideMm: number): boolean {
  const { minRatio, maxRatio } = jamRows[0]
  const ratio = boreMm / outsideMm
  return ratio >= (minRatio ?? 0) && ratio <= (maxRatio ?? Infinity)
}
