import type { AxisSpec, EngineSpeeds } from '../record/index.ts'
import type { NetPart, Network } from './network.ts'
import type { EngineState, Setting } from './solved.ts'

/** Engine speed of a setting, 1/min. */
export function engineRpm(engine: EngineState, speeds: EngineSpeeds): number {
  if (typeof engine === 'number') return engine
  return { 'stopped': 0, 'stopped-open': 0, 'cranking': speeds.crankingRpm, 'idle': speeds.idleRpm, 'cruise': speeds.cruiseRpm }[engine]
}

/** Stopped, cranking or running: what an axis that follows the engine goes by. */
export function engineMode(engine: EngineState, speeds: EngineSpeeds): 'stopped' | 'cranking' | 'running' {
  const rpm = engineRpm(engine, speeds)
  return rpm === 0 ? 'stopped' : rpm <= speeds.crankingRpm ? 'cranking' : 'running'
}

/** The position of every axis of a part: as set, else as the engine moves it, else at rest. */
export function positionsOf(part: NetPart, setting: Setting, speeds: EngineSpeeds): ReadonlyMap<string, string | number> {
  return new Map((part.model.axes ?? []).map((axis) => [axis.id, positionOf(`${part.id}.${axis.id}`, axis, setting, speeds)]))
}

export function positionOf(key: string, { follows, rest }: Pick<AxisSpec, 'follows' | 'rest'>, setting: Setting, speeds: EngineSpeeds): string | number {
  return setting.controls[key] ?? follows?.[engineMode(setting.engine, speeds)] ?? rest
}

/** The position of every axis of every part, by `control.axis`. */
export function allPositions({ parts, wiring }: Network, setting: Setting): ReadonlyMap<string, string | number> {
  return new Map(parts.flatMap((part) => [...positionsOf(part, setting, wiring.engine)].map(([axis, position]) => [`${part.id}.${axis}`, position] as const)))
}

/** The limits of the record that a setting breaks: combinations of positions that cannot occur. */
export function brokenLimits(network: Network, setting: Setting): string[] {
  const { wiring, axes } = network
  if (wiring.limits.size === 0) return []
  const at = allPositions(network, setting)
  const positionAt = (key: string) => String(at.get(key) ?? at.get(axes.find(({ id }) => id.startsWith(`${key}.`))?.id ?? '') ?? '')
  const engine = [String(setting.engine), engineMode(setting.engine, wiring.engine)]
  const isAt = (key: string, positions: readonly string[]) => (key === 'engine' ? engine : [positionAt(key)]).some((one) => positions.includes(one))
  return [...wiring.limits].filter(([, { never }]) => Object.entries(never).every(([key, positions]) => isAt(key, positions))).map(([id]) => id)
}

export function isPossible(network: Network, setting: Setting): boolean {
  return brokenLimits(network, setting).length === 0
}
