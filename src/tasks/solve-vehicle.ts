import {
  bearsOn, findContradiction, isSameFault, layFaults, listCarrying, prepareCircuit, setIn, solveSetting, withoutRepeats,
  type Circuit, type Condition, type Fault, type Setting, type Solution, type SolvedSetting,
} from '../circuit/index.ts'
import { partKinds } from '../parts/index.ts'
import { checkShape, listOutside, type Assumption, type Params, type Wiring } from '../record/index.ts'
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
  /** The point that reads 0 V: the metal that carries the battery's earth lead, else its earthed post. */
  readonly reference: string
  /** Elements that take current to do something and are no lamps: motors, coils, horns, heaters, gauges. */
  readonly loads: readonly string[]
  /** Elements that give current, or take charge: batteries and generators. */
  readonly sources: readonly string[]
  readonly assumed: readonly WeighedAssumption[]
}

/** `bears`: what it was assumed of carries current in this answer, or it is assumed of the vehicle as a whole. */
export interface WeighedAssumption extends Assumption { readonly bears: boolean }

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
    const assumed = weighAssumed(circuit, listCarrying(circuit, listSolutions(one.solved)))
    const { points, reference, elements } = circuit.network
    const loads = elements.filter(({ id, does }) => (does === 'load' || does === 'winding') && !(id in one.solved.lamps)).map(({ id }) => id)
    const sources = elements.filter(({ does }) => does === 'source').map(({ id }) => id)
    steps.push({ setting: of, faults, followed: findFollowed(circuit, one.solved), reference: points[reference], loads, sources, ...rest, assumed })
  })
  if (!condition) return refuseForm('there is no setting to solve')
  return { ok: true, value: { circuit, settings, steps, condition } }
}

/** Whatever the setting shows in turn: a flasher's dark phase carries other currents than its lit one. */
function listSolutions(solved: SolvedSetting): Solution[] {
  return [solved, ...solved.cycle ?? [], ...Object.values(solved.phases).flatMap(({ solutions = [] }) => solutions), ...solved.standing]
}

/** All assumptions of a circuit, each with whether it bears on an answer in which these carry current. */
export function weighAssumed({ network: { assumed } }: Circuit, carrying: ReadonlySet<string>): WeighedAssumption[] {
  return assumed.map((one) => ({ ...one, bears: bearsOn(one, carrying) }))
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
