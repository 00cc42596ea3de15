import { findContradiction, isSameFault, layFaults, prepareCircuit, setIn, solveSetting, withoutRepeats, type Circuit, type Condition, type Fault, type Setting, type SolvedSetting } from '../circuit/index.ts'
import { partKinds } from '../parts/index.ts'
import { checkShape, listOutside, type Params, type Wiring } from '../record/index.ts'
import { readFault } from './read-fault.ts'
import { readAll, refuseForm, type NameRefusal, type Read } from './refusal.ts'
import { readSetting, type SettingWords } from './read-setting.ts'
import { sayFault, type LaidFault } from './say-fault.ts'

/** Settings that follow one another, with the faults that are laid on the vehicle throughout. */
export interface SolveWords { readonly steps: readonly SettingWords[]; readonly faults: readonly string[] }

/** One solved setting, with what it rests on beside the setting. */
export interface SolvedStep extends SolvedSetting {
  readonly faults: readonly LaidFault[]
  /** Controls that the engine moved from where they rest, by `control.axis`. */
  readonly followed: Readonly<Record<string, string | number>>
}

export interface SolvedSteps { readonly circuit: Circuit; readonly settings: readonly Setting[]; readonly steps: readonly SolvedStep[]; readonly condition: Condition }

/** Solves each setting in turn; states made in one are there when the next begins. */
export function solveVehicle(wiring: Wiring, words: SolveWords, onProgress?: (said: string) => void): Read<SolvedSteps> {
  const ready = readyCircuit(wiring, words)
  if (!ready.ok) return ready
  const { circuit, settings, faults } = ready.value
  const steps: SolvedStep[] = []
  let condition: Condition | undefined
  settings.forEach((setting, i) => {
    const say = (said: string) => onProgress?.(`setting ${i + 1} of ${settings.length}: ${said}`)
    say('solving')
    const one = solveSetting(circuit, setting, { onProgress: say, ...(condition ? { from: condition, fromSetting: settings[i - 1] } : {}) })
    condition = one.condition
    const { setting: of, ...rest } = one.solved
    steps.push({ setting: of, faults, followed: findFollowed(circuit, one.solved), ...rest })
  })
  if (!condition) return refuseForm('there is no setting to solve')
  return { ok: true, value: { circuit, settings, steps, condition } }
}

function findFollowed({ network: { axes } }: Circuit, { positions, setting: { controls } }: SolvedSetting): Record<string, string | number> {
  const followed = axes.filter(({ id, spec }) => !Object.hasOwn(controls, id) && positions[id] !== spec.rest)
  return Object.fromEntries(followed.map(({ id }) => [id, positions[id]]))
}

/** The circuit with its faults laid on, and the settings in its own names. */
function readyCircuit(wiring: Wiring, { steps, faults }: SolveWords): Read<{ circuit: Circuit; settings: Setting[]; faults: LaidFault[] }> {
  const sound = prepareCircuit(wiring, partKinds)
  const read = readAll(faults, (word) => readFault(word, sound))
  if (!read.ok) return read
  const contradiction = findContradiction(read.value)
  if (contradiction) return refuseBoth(contradiction, read.value, faults, wiring)
  const faulty = layFaultsOn(sound, withoutRepeats(read.value))
  if ('sentence' in faulty) return { ok: false, refusal: faulty }
  const settings = readAll(steps, (step) => readSetting(step, faulty))
  if (!settings.ok) return settings
  return { ok: true, value: { circuit: faulty, settings: settings.value, faults: listLaid(read.value, faults, wiring) } }
}

function refuseBoth(both: readonly [Fault, Fault], read: readonly Fault[], words: readonly string[], wiring: Wiring) {
  const [first, second] = both.map((fault) => `${words[read.indexOf(fault)]} (${sayFault(fault, wiring)})`)
  return refuseForm(`${first} and ${second} cannot both be: leave one of them out`)
}

/** Each fault once, in the words in which it was first written. */
function listLaid(read: readonly Fault[], words: readonly string[], wiring: Wiring): LaidFault[] {
  return withoutRepeats(read).map((fault) => {
    const times = read.filter((one) => isSameFault(one, fault)).length
    return { fault: words[read.indexOf(fault)], said: `${sayFault(fault, wiring)}${times === 1 ? '' : ', given more than once and laid once'}` }
  })
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
  const problems = [...checkShape(params, kind.params.strict()).problems, ...listOutside(params, [])]
  const inner = problems.length > 0 ? [] : kind.check?.(params) ?? []
  const said = [...problems.map(({ sentence }) => sentence.slice(0, -1)), ...inner.map(({ path, expected, received }) => `${path.join('.')}: expected ${expected}, found ${received}`)]
  return said.length ? { sentence: `${id} cannot have ${param.join('.')} = ${value}: ${said.join('; ')}`, valid: Object.keys(kind.params.shape) } : null
}
