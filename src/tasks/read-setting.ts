import type { Circuit, EngineState, NetAxis, Setting } from '../circuit/index.ts'
import { ENGINE_STATES, nameOf } from '../record/index.ts'
import { given, refuseForm, refuseName, type Read } from './refusal.ts'

/** A setting in words, as the command line or the page gives it. */
export interface SettingWords {
  /** `control=position` or `control.axis=position`. */
  readonly set: readonly string[]
  readonly engine?: string
  readonly battery?: string
  /** `part=phase`. */
  readonly phase: readonly string[]
}

/** The setting that the words mean in this circuit, or the first that means nothing with the valid names. */
export function readSetting(words: SettingWords, circuit: Circuit): Read<Setting> {
  const engine = readEngine(words.engine ?? 'stopped')
  if (!engine.ok) return engine
  const battery = words.battery ?? 'full'
  if (battery !== 'full' && battery !== 'low') return refuseName('state of the battery', battery, ['full', 'low'])
  const controls: Record<string, string | number> = {}
  for (const word of words.set) {
    const one = readPosition(word, circuit.network)
    if (!one.ok) return one
    const { axis, position } = one.value
    if (Object.hasOwn(controls, axis) && controls[axis] !== position) return refuseForm(`${nameOf(axis, circuit.network.wiring)} is set twice, to ${controls[axis]} and to ${position}`)
    controls[axis] = position
  }
  const phases: Record<string, string> = {}
  for (const word of words.phase) {
    const one = readPhase(word, circuit)
    if (!one.ok) return one
    phases[one.value.part] = one.value.phase
  }
  return given({ controls, engine: engine.value, battery, phases })
}

function readEngine(word: string): Read<EngineState> {
  const named = ENGINE_STATES.find((state) => state === word)
  if (named) return given(named)
  const rpm = Number(word)
  if (word.trim() !== '' && rpm >= 0 && rpm <= 20_000) return given(rpm)
  return refuseName('engine state', word, [...ENGINE_STATES, 'a speed from 0 to 20000 rpm'])
}

/** The two sides of the first `=`. */
export function splitPair(word: string): [string, string] | null {
  const at = word.indexOf('=')
  return at < 1 ? null : [word.slice(0, at), word.slice(at + 1)]
}

function readPosition(word: string, network: Circuit['network']): Read<{ axis: string; position: string | number }> {
  const pair = splitPair(word)
  if (!pair) return refuseForm(`"${word}" is not of the form control=position`)
  const axis = findAxis(pair[0], network)
  if (!axis.ok) return axis
  const { id, spec } = axis.value
  if (spec.range) {
    const value = Number(pair[1])
    const { from, to } = spec.range
    if (pair[1].trim() !== '' && value >= Math.min(from, to) && value <= Math.max(from, to)) return given({ axis: id, position: value })
    return refuseForm(`${nameOf(id, network.wiring)} takes a number from ${from} to ${to}, not "${pair[1]}"`)
  }
  if (spec.positions.includes(pair[1])) return given({ axis: id, position: pair[1] })
  return refuseName(`position of ${nameOf(id, network.wiring)}`, pair[1], spec.positions)
}

function findAxis(name: string, { axes, wiring }: Circuit['network']): Read<NetAxis> {
  const exact = axes.filter(({ id }) => id === name)
  const found = exact.length ? exact : axes.filter(({ id }) => id.startsWith(`${name}.`))
  if (found.length === 1) return given(found[0])
  if (found.length > 1) return refuseForm(`${nameOf(name, wiring)} has several controls: name one`, found.map(({ id }) => id))
  return refuseName('control', name, axes.map(({ id }) => id), wiring.leftOut)
}

function readPhase(word: string, circuit: Circuit): Read<{ part: string; phase: string }> {
  const pair = splitPair(word)
  if (!pair) return refuseForm(`"${word}" is not of the form part=phase`)
  const { phases, parts } = circuit.network
  const found = phases.find(({ part }) => parts[part].id === pair[0])
  if (!found) return refuseName('part with phases', pair[0], phases.map(({ part }) => parts[part].id))
  if (!found.spec.names.includes(pair[1])) return refuseName(`phase of ${nameOf(pair[0], circuit.network.wiring)}`, pair[1], found.spec.names)
  return given({ part: pair[0], phase: pair[1] })
}
