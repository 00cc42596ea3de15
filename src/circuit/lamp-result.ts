import { partDefaults } from '../standards/index.ts'
import type { LampClass, LampResult } from './solved.ts'

/** Light follows the voltage to this power. */
const LIGHT_POWER = partDefaults.lampFluxExponent.value

/** Classes by per cent of rated volts: off < 10, faint to 40, dim to 85, normal to 108, over. Common practice, no source. */
export function lampClass(percent: number): LampClass {
  return percent < 10 ? 'off' : percent < 40 ? 'faint' : percent < 85 ? 'dim' : percent <= 108 ? 'normal' : 'over'
}

/**
 * A lamp at `volts` (a magnitude) that is rated at `ratedV`; light to the rated light. A lamp whose light
 * is given (an LED, a burnt-out filament) has the class of the filament lamp that would be as bright.
 */
export function lampResult(volts: number, ratedV: number, givenLight?: number): LampResult {
  const ratio = volts / ratedV
  const light = givenLight ?? ratio ** LIGHT_POWER
  return { volts, ratedV, percent: round(ratio * 100, 4), light: round(light, 6), class: lampClass(100 * light ** (1 / LIGHT_POWER)) }
}

const round = (value: number, digits: number) => Number(value.toFixed(digits))
