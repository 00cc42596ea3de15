import type { Circuit } from './circuit.ts'
import type { Network } from './network.ts'
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
  const named = keysOf(circuit.network)
  for (let e = 0; e < elements.length; e++) {
    const { from, to, does, spec } = elements[e]
    const amps = Math.abs(circuit.elementAmps(e))
    if (Number.isFinite(amps)) yield [named[e].amps, amps]
    if (does !== 'load' || circuit.isFloating(from) || circuit.isFloating(to)) continue
    const volts = Math.abs(circuit.pointVolts(from) - circuit.pointVolts(to))
    yield [named[e].most, volts]
    const fed = (spec?.ratedV ?? circuit.network.wiring.systemV) * (spec?.fedFrom ?? 50) / 100
    if (volts >= fed) yield [named[e].least, -volts]
  }
}

interface Keys { readonly amps: string; readonly most: string; readonly least: string }

const knownKeys = new WeakMap<Network, readonly Keys[]>()

/** The keys of every element, written once a network. */
function keysOf(network: Network): readonly Keys[] {
  const known = knownKeys.get(network)
  if (known) return known
  const keys = network.elements.map(({ id }): Keys => ({ amps: `amps ${id}`, most: `most ${id}`, least: `least ${id}` }))
  knownKeys.set(network, keys)
  return keys
}
