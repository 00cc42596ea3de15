import { copper } from './copper-rows.ts'
import { meltingLaws, preeceRows, type PreeceRow } from './melting-rows.ts'
import { notFound, type NotFound } from './refusal.ts'

export type MeltingFound = { readonly ok: true; readonly amps: number; readonly row: PreeceRow } | NotFound

/** Amps that melt a wire of this metal in still air, Preece: I = C x d^1.5 with d in mm. The metals are those of his table. */
export function preeceAmps(metal: string, diameterMm: number): MeltingFound {
  const row = preeceRows.find((row) => row.metal === metal)
  if (!row) return notFound(metal, "a metal of Preece's table", preeceRows.map((row) => row.metal))
  return { ok: true, amps: row.ampsPerMm15 * diameterMm ** 1.5, row }
}

/** Amps that melt copper in `seconds`, Onderdonk: I = A sqrt(log10(1 + (Tm - Ta)/(234 + Ta)) / (33 t)), A in circular mils. */
export function onderdonkAmps(circularMils: number, ambientC: number, seconds: number): number {
  const { constant, meltingC } = meltingLaws.onderdonk
  return circularMils * Math.sqrt(Math.log10(1 + (meltingC - ambientC) / (234 + ambientC)) / (constant * seconds))
}

/**
 * k of I2 t = k2 S2 for copper between two temperatures, A s^0.5 / mm2: k = 226 sqrt(ln(1 + (Tf - Ti)/(234.5 + Ti))), with
 * 226 = sqrt(Qc (beta + 20) / rho20). For five seconds at most, while no heat leaves the wire.
 */
export function shortTimeK(startC: number, endC: number): number {
  return copperK() * Math.sqrt(Math.log(1 + (endC - startC) / (copper.betaC.value + startC)))
}

/** sqrt(Qc (beta + 20) / rho20), 226 A s^0.5 / mm2; the resistivity is in ohm mm2/m, hence the 1000. */
function copperK(): number {
  const ohmMm = copper.resistivityOhmMm2PerM.value / 1000
  return Math.sqrt((copper.heatCapacityJPerKMm3.value * (copper.betaC.value + 20)) / ohmMm)
}
