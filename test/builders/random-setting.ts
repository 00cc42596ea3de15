import type { Circuit, Setting } from '../../src/circuit/index.ts'
import { ENGINE_STATES } from '../../src/record/index.ts'

/** A whole setting by chance: every axis at one of its positions, or anywhere in its range; engine and battery too. */
export function randomSetting({ network }: Circuit, chance: () => number): Setting {
  const pick = <T>(items: readonly T[]): T => items[Math.floor(chance() * items.length)]
  return {
    controls: Object.fromEntries(network.axes.map(({ id, spec }) =>
      [id, spec.range ? spec.range.from + chance() * (spec.range.to - spec.range.from) : pick(spec.positions)])),
    engine: pick(ENGINE_STATES), battery: pick(['full', 'low'] as const), phases: {},
  }
}
