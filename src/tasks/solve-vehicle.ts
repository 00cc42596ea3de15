import { layFaults, prepareCircuit, solveSetting, type Circuit, type Condition, type Setting, type SolvedSetting } from '../circuit/index.ts'
import { partKinds } from '../parts/index.ts'
import type { Wiring } from '../record/index.ts'
import { readFault } from './read-fault.ts'
import { readAll, refuseForm, type NameRefusal, type Read } from './refusal.ts'
import { readSetting, type SettingWords } from './read-setting.ts'

/** Settings that follow one another, with the faults that are laid on the vehicle throughout. */
export interface SolveWords { readonly steps: readonly SettingWords[]; readonly faults: readonly string[] }

export interface SolvedSteps { readonly circuit: Circuit; readonly settings: readonly Setting[]; readonly steps: readonly SolvedSetting[]; readonly condition: Condition }

/** Solves each setting in turn; states made in one are there when the next begins. */
export function solveVehicle(wiring: Wiring, words: SolveWords, onStep?: (done: number, of: number) => void): Read<SolvedSteps> {
  const ready = readyCircuit(wiring, words)
  if (!ready.ok) return ready
  const { circuit, settings } = ready.value
  const steps: SolvedSetting[] = []
  let condition: Condition | undefined
  settings.forEach((setting, i) => {
    onStep?.(i, settings.length)
    const one = solveSetting(circuit, setting, condition ? { from: condition, fromSetting: settings[i - 1] } : {})
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

/** A changed parameter may make no sense for its part: the kind's own schema says so. */
function layFaultsOn(circuit: Circuit, faults: Parameters<typeof layFaults>[2]): Circuit | NameRefusal {
  const laid = layFaults(circuit, partKinds, faults)
  for (const fault of faults) {
    if (fault.kind !== 'set') continue
    const part = laid.network.wiring.parts.get(fault.part)
    const kind = partKinds.find(({ kind }) => kind === part?.kind)
    const checked = kind?.params.safeParse(part?.params)
    if (checked?.success === false) {
      const said = checked.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`).join('; ')
      return { sentence: `${fault.part} cannot have ${fault.param.join('.')} = ${fault.value} (${said})`, valid: Object.keys(kind?.params.shape ?? {}) }
    }
  }
  return laid
}
