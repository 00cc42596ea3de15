import type { Circuit } from './circuit.ts'
import type { Setting } from './solved.ts'

/** The largest figure of one kind at one thing, and the setting in which it stands. */
export interface Extreme { readonly value: number; readonly setting: Setting }

/** Keys are `amps ID` (any wire or element), `most ID` and `least ID` (volts of a load: at most, and at least while it is fed). */
export type Extremes = Map<string, Extreme>

/** Take the present solution of a circuit into account. Answers the keys that it has raised. */
export function noteExtremes(circuit: Circuit, setting: Setting, extremes: Extremes): string[] {
  const raised: string[] = []
  for (const [key, value] of figuresOf(circuit)) {
    const before = extremes.get(key)
    if (before && value <= before.value + MARGIN * Math.abs(before.value) + 1e-9) continue
    extremes.set(key, { value, setting })
    raised.push(key)
  }
  return raised
}

/** Rises smaller than this share are not worth a new setting. */
const MARGIN = 1e-6

/** Every figure of which the extreme counts; the least volts of a load are negative, so that more is always further out. */
export function* figuresOf(circuit: Circuit): Generator<readonly [string, number]> {
  const { elements } = circuit.network
  for (let e = 0; e < elements.length; e++) {
    const { id, from, to, does, spec } = elements[e]
    const amps = Math.abs(circuit.elementAmps(e))
    if (Number.isFinite(amps)) yield [`amps ${id}`, amps]
    if (does !== 'load') continue
    const volts = Math.abs(circuit.pointVolts(from) - circuit.pointVolts(to))
    yield [`most ${id}`, volts]
    const fed = (spec?.ratedV ?? circuit.network.wiring.systemV) * (spec?.fedFrom ?? 50) / 100
    if (volts >= fed) yield [`least ${id}`, -volts]
  }
}
