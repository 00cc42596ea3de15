import { copper } from './copper-rows.ts'

/** Ohms at `tempC` from ohms at 20 C: R = R20 (1 + a (T - 20)), a = 0.00393 / K for copper unless given. */
export function ohmAtTemperature(ohm20: number, tempC: number, perKelvin: number = copper.perKelvin20.value): number {
  return ohm20 * (1 + perKelvin * (tempC - 20))
}

/** Ohms a metre at 20 C of solid annealed copper of this area, 1/58 ohm mm2/m (IEC 60028). */
export function copperOhmPerM(areaMm2: number): number {
  return copper.resistivityOhmMm2PerM.value / areaMm2
}
