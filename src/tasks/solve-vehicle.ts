import { layFaults, prepareCircuit, setIn, solveSetting, type Circuit, type Condition, type Fault, type Setting, type SolvedSetting } from '../circuit/index.ts'
import { partKinds } from '../parts/index.ts'
import type { Params, Wiring } from '../record/index.ts'
import { readFault } from './read-fault.ts'
import { readAll, refuseForm, type NameRefusal, type Read } from './refusal.ts'
import { readSetting, type SettingWords } from './read-setting.ts'

/** Settings that follow one another, with the faults that are laid on the vehicle throughout. */
export interface SolveWords { readonly steps: readonly SettingWords[]; readonly faults: readonly string[] }

export interface SolvedSteps { readonly circuit: Circuit; readonly settings: readonly Setting[]; readonly steps: readonly SolvedSetting[]; readonly condition: Condition }

/** Solves each setting in turn; states made in one are there when the next begins. */
export function solveVehicle(wiring: Wiring, words: SolveWords, onProgress?: (said: string) => void): Read<SolvedSteps> {
  const ready = readyCircuit(wiring, words)
  if (!ready.ok) return ready
  const { circuit, settings } = ready.value
  const steps: SolvedSetting[] = []
  let condition: Condition | undefined
  settings.forEach((setting, i) => {
    const say = (said: string) => onProgress?.(`setting ${i + 1} of ${settings.length}: ${said}`)
    say('solving')
    const one = solveSetting(circuit, setting, { onProgress: say, ...(condition ? { from: condition, fromSetting: settings[i - 1] } : {}) })
    condition = one.condition
    steps.push(one.solved)
  })
  if (!condition) return refuseForm('there is no setting to solve')
  return { ok: true, value: { circuit, settings, steps, condition } }
}

/** The circuit with its faults laid on, and the settings in its own names. */
function readyCircuit(wiring: Wiring, { steps, faults }: SolveWords): Read<{ circuit: Circuit; settings: Setting[] }> {
  const sound = prepareCircuit(wiring, partKinds)
  const read = readAll(faults, (word) => readFault(word, sound))
  if (!read.ok) return read
  const faulty = layFaultsOn(sound, read.value)
  if ('sentence' in faulty) return { ok: false, refusal: faulty }
  const settings = readAll(steps, (step) => readSetting(step, faulty))
  return settings.ok ? { ok: true, value: { circuit: faulty, settings: settings.value } } : settings
}

/** A changed parameter may make no sense for its part: the kind's own schema says so, before any law is built from it. */
function layFaultsOn(circuit: Circuit, faults: readonly Fault[]): Circuit | NameRefusal {
  for (const fault of faults) {
    const refusal = fault.kind === 'set' ? refuseParameter(circuit.network.wiring, fault) : null
    if (refusal) return refusal
  }
  return layFaults(circuit, partKinds, faults)
}

function refuseParameter(wiring: Wiring, { part: id, param, value }: Extract<Fault, { kind: 'set' }>): NameRefusal | null {
  const part = wiring.parts.get(id)
  const kind = partKinds.find((one) => one.kind === part?.kind)
  if (!part || !kind) return null
  const params = setIn(part.params, param, value) as Params
  const checked = kind.params.strict().safeParse(params)
  const said = checked.success ? (kind.check?.(params) ?? []).map(({ path, expected, received }) => `${path.join('.')}: expected ${expected}, found ${received}`)
    : checked.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`)
  return said.length ? { sentence: `${id} cannot have ${param.join('.')} = ${value} (${said.join('; ')})`, valid: Object.keys(kind.params.shape) } : null
}
