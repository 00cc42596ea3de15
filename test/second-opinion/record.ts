import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import type { Case, Found } from './cases.ts'
import { runSimulator } from './run-simulator.ts'

/** One answer of the simulator: to which input, with which EMFs and regulated resistances; the volts of every point and the amps of every device, in the netlist's order. */
export interface Answer { readonly name: string; readonly digest: string; readonly found: Found; readonly volts: readonly number[]; readonly amps: readonly number[] }

/** What one file under recorded/ holds; only the simulator writes it. */
export interface Recorded { readonly simulator: string; readonly answers: readonly Answer[] }

export const FILES = {
  demo: new URL('recorded/demo.json', import.meta.url), warden: new URL('recorded/warden.json', import.meta.url), random: new URL('recorded/random.json', import.meta.url),
} as const
export const RANDOM_NETWORKS = 300
const MOST_V = 1e-3, MOST_A = 1e-3

export function readRecorded(file: URL): Recorded {
  return JSON.parse(readFileSync(file, 'utf8')) as Recorded
}

export function foundIn({ answers }: Recorded): ReadonlyMap<string, Found> {
  return new Map(answers.map(({ name, found }) => [name, found]))
}

export function digestOf({ netlist }: Case): string {
  return createHash('sha256').update(netlist.text).digest('hex')
}

/** The simulator's answers to these cases, volts to a tenth of a microvolt and amps to a microampere. */
export function askSimulator(cases: readonly Case[], given?: ReadonlyMap<string, Found>): Answer[] {
  const answers = runSimulator(cases.map(({ netlist }) => ({ text: netlist.text, devices: [...netlist.deviceOf.values()] })))
  return cases.map((one, i) => ({
    name: one.name, digest: digestOf(one), found: given?.get(one.name) ?? one.found,
    volts: [...one.netlist.nodeOf.values()].map((node) => figure(answers[i], node, 7)),
    amps: [...one.netlist.deviceOf.values()].map((device) => figure(answers[i], device, 6)),
  }))
}

function figure(answer: ReadonlyMap<string, number>, name: string, decimals: number): number {
  const value = answer.get(name)
  if (value === undefined || !Number.isFinite(value)) throw new Error(`the simulator gives no figure for ${name}`)
  return Number(value.toFixed(decimals))
}

/** One answer a line, so that a change can be read. */
export function writeRecorded({ simulator, answers }: Recorded): string {
  return `{ "simulator": ${JSON.stringify(simulator)}, "answers": [\n${answers.map((answer) => JSON.stringify(answer)).join(',\n')}\n] }\n`
}

/** How far apart the product and the simulator are, V and A, and a line for each place where that is too far or where they disagree on what floats or is undetermined. */
export interface Comparison { readonly worstV: number; readonly worstA: number; readonly differences: readonly string[] }

export function compare(one: Case, answer: Answer): Comparison {
  const parts = [compareVolts(one, answer), compareAmps(one, answer)]
  return { worstV: parts[0].worst, worstA: parts[1].worst, differences: parts.flatMap(({ lines }) => lines).map((line) => `${one.name}: ${line}`) }
}

interface Compared { worst: number; readonly lines: string[] }

function compareVolts({ solved, netlist }: Case, { volts }: Answer): Compared {
  const at = new Map([...netlist.nodeOf.keys()].map((point, i) => [point, volts[i]]))
  const compared: Compared = { worst: 0, lines: [] }
  for (const [point, own] of Object.entries(solved.voltages)) {
    const floats = !at.has(point) || netlist.floating.has(point)
    if ((own === null) !== floats) compared.lines.push(`${point} ${floats ? 'is joined' : 'floats'} in the product only`)
    else if (own !== null) note(compared, own, at.get(point), MOST_V, `${point}, V`)
  }
  return compared
}

/** What the netlist does not hold is open, and carries nothing. */
function compareAmps({ solved, netlist }: Case, { amps }: Answer): Compared {
  const through = new Map([...netlist.deviceOf.keys()].map((id, i) => [id, amps[i]]))
  const compared: Compared = { worst: 0, lines: [] }
  for (const [id, { amps: own }] of [...Object.entries(solved.wires), ...Object.entries(solved.elements)]) {
    const isLoop = netlist.loops.has(id)
    if ((own === null) !== isLoop) compared.lines.push(`${id} is undetermined ${isLoop ? 'but for' : 'in'} the product`)
    else if (own !== null) note(compared, own, through.get(id) ?? 0, MOST_A, `${id}, A`)
  }
  for (const id of through.keys()) if (!(id in solved.wires) && !(id in solved.elements)) compared.lines.push(`${id} is unknown to the product`)
  return compared
}

function note(compared: Compared, own: number, other: number | undefined, most: number, what: string): void {
  const apart = Math.abs(own - (other ?? NaN))
  if (!(apart <= most)) compared.lines.push(`${what}: ${own}, the simulator says ${other}`)
  compared.worst = Math.max(compared.worst, apart)
}
