import { readFileSync } from 'node:fs'
import type { Case, Found } from './cases.ts'
import { runSimulator } from './run-simulator.ts'

/** One answer of the simulator: of which input, with which EMFs and regulated resistances, and the volts of every point in order of its nodes. */
export interface Answer { readonly name: string; readonly digest: string; readonly found: Found; readonly volts: readonly number[] }

/** What one file under recorded/ holds; only the simulator writes it. */
export interface Recorded { readonly simulator: string; readonly answers: readonly Answer[] }

export const FILES = { demo: new URL('recorded/demo.json', import.meta.url), random: new URL('recorded/random.json', import.meta.url) } as const
export const RANDOM_NETWORKS = 300

export function readRecorded(file: URL): Recorded {
  return JSON.parse(readFileSync(file, 'utf8')) as Recorded
}

/** The simulator's answers to these cases, volts to a tenth of a microvolt. */
export function askSimulator(cases: readonly Case[]): Answer[] {
  const answers = runSimulator(cases.map(({ netlist }) => netlist.text))
  return cases.map(({ name, found, netlist }, i) => ({
    name, digest: netlist.digest, found, volts: [...netlist.nodeOf.values()].map((node) => Number((answers[i].get(node) ?? NaN).toFixed(7))),
  }))
}

/** One answer a line, so that a change can be read. */
export function writeRecorded({ simulator, answers }: Recorded): string {
  return `{ "simulator": ${JSON.stringify(simulator)}, "answers": [\n${answers.map((answer) => JSON.stringify(answer)).join(',\n')}\n] }\n`
}

/** Where the product and the simulator differ by more than a millivolt or a milliampere, and where they disagree on what floats. */
export function differences({ name, solved, netlist }: Case, { volts }: Answer): string[] {
  const points = [...netlist.nodeOf.keys()]
  const at = new Map(points.map((point, i) => [point, volts[i]]))
  const said = points.filter((point) => point in solved.voltages).flatMap((point) => {
    const own = solved.voltages[point]
    if ((own === null) !== netlist.floating.has(point)) return [`${name}: ${point} ${own === null ? 'floats' : 'is joined'} in the product only`]
    return own === null || Math.abs(own - (at.get(point) ?? NaN)) <= 1e-3 ? [] : [`${name}: ${point} has ${own} V, the simulator says ${at.get(point) ?? NaN}`]
  })
  const flows = [...netlist.wires].flatMap(([id, { from, to, ohm }]) => {
    const amps = solved.wires[id].amps
    if (amps === null || netlist.floating.has(from)) return []
    // The volts are kept to a tenth of a microvolt, which is this much in a short wire.
    const room = 1e-3 + 2e-7 / ohm
    const other = ((at.get(from) ?? NaN) - (at.get(to) ?? NaN)) / ohm
    return Math.abs(amps - other) <= room ? [] : [`${name}: ${id} carries ${amps} A, by the simulator's volts ${other}`]
  })
  return [...said, ...flows]
}
