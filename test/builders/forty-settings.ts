import { isPossible } from '../../src/circuit/positions.ts'
import type { Circuit, EngineState, Setting } from '../../src/circuit/index.ts'
import { seededChance } from './random-vehicle.ts'

/** Share of the controls that a setting made by chance moves. */
const MOVED = 0.35
const ENGINES: readonly EngineState[] = ['stopped', 'stopped', 'stopped-open', 'cranking', 'idle', 'cruise', 'cruise']

/**
 * Forty settings of a vehicle, always the same: at rest; the key on, with the engine in every state; the key on with each control
 * moved alone, as far as half of the forty goes; the rest by chance from a seed, a third of the controls moved.
 */
export function fortySettings(circuit: Circuit, key: Setting['controls'], seed: number): Setting[] {
  const { axes } = circuit.network
  const at = (controls: Setting['controls'], engine: EngineState = 'stopped', battery: Setting['battery'] = 'full'): Setting => ({ controls, engine, battery, phases: {} })
  const alone = axes.filter(({ id }) => !(id in key)).flatMap(({ id, spec }) => (spec.range ? [spec.range.to] : spec.positions.filter((one) => one !== spec.rest).slice(-1))
    .map((position) => at({ ...key, [id]: position })))
  const settings = [at({}), ...(['stopped', 'stopped-open', 'cranking', 'idle', 'cruise'] as const).map((engine) => at(key, engine)), at(key, 'cruise', 'low'), ...alone].slice(0, 20)
  const chance = seededChance(seed)
  const pick = <T>(items: readonly T[]): T => items[Math.floor(chance() * items.length)]
  while (settings.length < 40) {
    const moved = axes.filter(() => chance() < MOVED).map(({ id, spec }) =>
      [id, spec.range ? Math.round(spec.range.from + chance() * (spec.range.to - spec.range.from)) : pick(spec.positions)])
    const setting = at({ ...key, ...Object.fromEntries(moved) }, pick(ENGINES), chance() < 0.2 ? 'low' : 'full')
    if (isPossible(circuit.network, setting)) settings.push(setting)
  }
  return settings
}
