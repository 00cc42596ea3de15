import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const PROGRAM = 'ngspice'

/** What one input asks: the amps of these devices beside the volts of every node. */
export interface Input { readonly text: string; readonly devices: readonly string[] }

/** The simulator's name and version, or null where it is not installed. */
export function simulatorVersion(): string | null {
  const { stdout, error } = spawnSync(PROGRAM, ['--version'], { encoding: 'utf8' })
  return error ? null : /ngspice-\S+/.exec(stdout)?.[0] ?? null
}

/** Volts by node and amps by device, in lower case, of each input; all inputs in one process. Throws where the simulator failed on one. */
export function runSimulator(inputs: readonly Input[]): ReadonlyMap<string, number>[] {
  const folder = mkdtempSync(join(tmpdir(), 'second-opinion-'))
  try {
    inputs.forEach(({ text }, i) => { writeFileSync(join(folder, `${i}.cir`), `${text}\n`) })
    const commands = inputs.flatMap(({ devices }, i) => [`source ${i}.cir`, 'op', `echo == ${i}`, 'print all', ...devices.map((device) => `print @${device}[${device.startsWith('d') ? 'id' : 'i'}]`), 'destroy all', 'remcirc'])
    writeFileSync(join(folder, 'all.cir'), ['second opinion', '.control', 'set numdgt=15', 'set nomoremode', ...commands, 'quit 0', '.endc', '.end', ''].join('\n'))
    const printed = execFileSync(PROGRAM, ['-b', 'all.cir'], { cwd: folder, encoding: 'utf8', maxBuffer: 1 << 30, stdio: ['ignore', 'pipe', 'pipe'] })
    return readAnswers(printed, inputs.length)
  } finally {
    rmSync(folder, { recursive: true })
  }
}

/** Its exit code is 0 even where it failed: every input must have come back with its nodes. */
function readAnswers(printed: string, count: number): ReadonlyMap<string, number>[] {
  const parts = printed.split(/^== (?=\d+$)/m)
  const byNumber = new Map(parts.slice(1).map((part) => [Number.parseInt(part), part]))
  return Array.from({ length: count }, (_, i) => {
    const lines = (byNumber.get(i) ?? '').matchAll(/^(n\d+|@([rbdv]\d+)\[\w+\]) = (\S+)$/gm)
    const answer = new Map([...lines].map(([, name, device, value]) => [device ?? name, Number(value)]))
    if (![...answer.keys()].some((name) => name.startsWith('n'))) throw new Error(`the simulator failed on input ${i}:\n${(parts[i] ?? '').slice(-3000)}`)
    return answer
  })
}

/**
 * The time of one operating point in µs, over `rounds` of them on one input in one process, and its answer at the end. Between two
 * points one resistor is opened or closed, as a switch is: the same point twice would be no work.
 */
export function timeSimulator(text: string, rounds: number, resistor: string): { readonly us: number; readonly volts: ReadonlyMap<string, number> } {
  const folder = mkdtempSync(join(tmpdir(), 'second-opinion-'))
  try {
    writeFileSync(join(folder, '0.cir'), `${text}\n`)
    // What starting, reading and printing take is taken off by a run of one point.
    const ohm = new RegExp(`^${resistor} \\S+ \\S+ (\\S+)$`, 'm').exec(text)?.[1] ?? ''
    const points = (count: number) => Array.from({ length: count }, (_, i) => [`alter ${resistor} = ${i % 2 === 0 ? '1e9' : ohm}`, 'op']).flat()
    const run = (count: number): { ms: number; printed: string } => {
      writeFileSync(join(folder, 'all.cir'), ['second opinion', '.control', 'set numdgt=12', 'set nomoremode', 'source 0.cir', ...points(count), `alter ${resistor} = ${ohm}`, 'op', 'echo == 0', 'print all', 'quit 0', '.endc', '.end', ''].join('\n'))
      const started = performance.now()
      const printed = execFileSync(PROGRAM, ['-b', 'all.cir'], { cwd: folder, encoding: 'utf8', maxBuffer: 1 << 30, stdio: ['ignore', 'pipe', 'pipe'] })
      return { ms: performance.now() - started, printed }
    }
    const few = Math.min(...[0, 1, 2].map(() => run(1).ms)), many = [0, 1, 2].map(() => run(rounds)).sort((a, b) => a.ms - b.ms)[0]
    return { us: (many.ms - few) / (rounds - 1) * 1000, volts: readAnswers(many.printed, 1)[0] }
  } finally {
    rmSync(folder, { recursive: true })
  }
}
