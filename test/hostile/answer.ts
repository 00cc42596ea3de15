// What may be said of any record whatever: an answer or a refusal in sentences, never a stack trace, never NaN.
import { prepareCircuit, solveSetting, type Circuit, type SolvedSetting } from '../../src/circuit/index.ts'
import { partKinds } from '../../src/parts/index.ts'
import { readRecord, resolveVehicle, type Resolved, type Vehicle, type WiringRecord } from '../../src/record/index.ts'
import { firstVehicle, readChoices } from '../../src/tasks/vehicle-choices.ts'
import { randomSetting } from '../builders/random-setting.ts'
import type { Chance } from './damage.ts'

/** How far a record came: to a refusal of its text, to a refusal of its vehicle, or to a solved setting. */
export type Stage = 'refused' | 'not resolved' | 'solved'

export interface Answered { readonly stage: Stage; readonly faults: readonly string[] }

/** Reads a text, resolves it for a vehicle and solves a setting, as far as it goes; `faults` says what no answer may hold. */
export function answerText(text: string, chance: Chance): Answered {
  const read = readRecord(text, partKinds)
  if (!read.ok) return { stage: 'refused', faults: judgeProblems(read.problems, read.count) }
  const resolved = resolveVehicle(read.record, pickVehicle(read.record, chance), partKinds)
  if (!resolved.ok) return { stage: 'not resolved', faults: judgeRefusal(resolved) }
  const circuit = prepareCircuit(resolved.wiring, partKinds)
  const { solved } = solveSetting(circuit, randomSetting(circuit, chance.share), { skipStanding: chance.share() < 0.5 })
  return { stage: 'solved', faults: judgeSolved(circuit, solved) }
}

/** The vehicle that is shown first, or one of some year and of whatever options, as chance will have it. */
function pickVehicle(record: WiringRecord, chance: Chance): Vehicle {
  if (chance.share() < 0.6) return firstVehicle(readChoices(record))
  return {
    ...chance.share() < 0.9 && { year: 1930 + chance.below(56) },
    ...record.options && { options: Object.fromEntries(Object.keys(record.options).map((id) => [id, chance.share() < 0.5])) },
    ...record.markets && Object.keys(record.markets).length > 0 && { market: chance.pick(Object.keys(record.markets)) },
    ...record.serials && { serials: Object.fromEntries(Object.keys(record.serials).map((id) => [id, chance.pick(['A 100', '17', 'X', 'B900'])])) },
  }
}

interface Said { readonly path: readonly string[]; readonly sentence: string; readonly expected: string; readonly received: string }

function judgeProblems(problems: readonly Said[], count: number): string[] {
  return [
    ...problems.length === 0 ? ['refused without a problem'] : [],
    ...problems.length > 100 || count < problems.length || (problems.length < 100 && count !== problems.length) ? [`${problems.length} problems of ${count}`] : [],
    ...problems.flatMap(({ path, sentence, expected, received }) => [
      ...path.every((key) => typeof key === 'string') ? [] : [`a path of ${JSON.stringify(path)}`],
      ...expected && received ? [] : [`nothing expected or received: ${sentence}`],
      ...judgeSentence(sentence),
    ]),
  ]
}

function judgeRefusal({ problems, conflicts, cannotTell }: Extract<Resolved, { ok: false }>): string[] {
  const all = [...problems, ...conflicts, ...cannotTell]
  return [
    ...all.length === 0 ? ['not resolved without a reason'] : [],
    ...all.flatMap(({ sentence }) => judgeSentence(sentence)),
    ...cannotTell.filter(({ ask }) => ask.length === 0).map(({ sentence }) => `nothing to find out: ${sentence}`),
  ]
}

/** A sentence begins with its path, ends with a full stop, and holds nothing of the machine. */
function judgeSentence(sentence: string): string[] {
  const isSentence = /^[^]+: [^]+\.$/.test(sentence)
  return [...isSentence ? [] : [`no sentence: ${sentence}`], ...judgeWords(sentence)]
}

/** Words that only a slip of the program puts before a person. */
export function judgeWords(said: string): string[] {
  // What a sentence quotes from a damaged text is the text's own.
  const text = said.replace(/found "(?:[^"\\]|\\.)*"/g, 'found …')
  const slip = /\bat (?:\S+ \()?(?:file:|node:|\/)\S+:\d+|\b(?:Type|Range|Reference|Syntax|Zod)Error\b|\[object |\bundefined\b|=> |\bCannot read propert/.exec(text)
  return slip ? [`"${slip[0]}" in: ${text.slice(Math.max(0, slip.index - 80), slip.index + 120)}`] : []
}

/** Every figure is a number; amps are null only in loops of zero-ohm conductors, volts only where no path leads. */
export function judgeSolved(circuit: Circuit, solved: SolvedSetting): string[] {
  const { balance, notes, wires, floating, voltages, outcome } = solved
  return [
    ...listNumbers(solved).filter(([, value]) => !Number.isFinite(value)).map(([path, value]) => `${path} is ${value}`).slice(0, 5),
    ...balance.worstA > 1e-6 && !notes.some((note) => note.includes('did not converge')) ? [`${balance.worstA} A are unaccounted for without a word`] : [],
    ...Object.entries(voltages).filter(([point, volts]) => (volts === null) !== floating.includes(point)).map(([point]) => `${point} floats or not`),
    ...outcome === 'chatters' ? [] : Object.entries(wires).filter(([id, { amps }]) => amps === null && !isInZeroLoop(circuit, id)).map(([id]) => `amps of ${id} are null outside a loop`),
    ...notes.flatMap(judgeWords),
  ]
}

function listNumbers(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => listNumbers(inner, `${path}.${key}`))
}

/** The ends of the wire are one point over other conductors that count as nothing. */
function isInZeroLoop(circuit: Circuit, wire: string): boolean {
  const { elements, elementOf } = circuit.network
  const own = elementOf.get(wire) as number
  const reached = new Set([elements[own].from])
  for (let size = -1; size !== reached.size;) {
    size = reached.size
    elements.forEach(({ from, to }, e) => {
      if (e === own || circuit.laws.plainS[e] < 1e6 * (1 - 1e-9) || Number.isNaN(circuit.laws.plainS[e])) return
      if (reached.has(from)) reached.add(to)
      else if (reached.has(to)) reached.add(from)
    })
  }
  return reached.has(elements[own].to)
}
