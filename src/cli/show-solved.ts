import type { Assumption, Wiring, WiringWire } from '../record/index.ts'
import type { Setting, Solution, SolvedSetting } from '../tasks/index.ts'
import { figure, formatTable } from './table.ts'

/** One solved setting as readable text. */
export function showSolved(solved: SolvedSetting, wiring: Wiring): string {
  const sections = [
    showSetting(solved.setting), ...solved.notes.map((note) => `Note: ${note}.`), showOutcome(solved), showLamps(solved, wiring), showWires(solved, wiring),
    showStates(solved), showPhases(solved), showStanding(solved), showFloating(solved), showBalance(solved), showAssumed(solved.assumed),
  ]
  return sections.filter((section) => section !== '').join('\n\n')
}

function showSetting({ controls, engine, battery, phases }: Setting): string {
  const named = [...Object.entries(controls), ...Object.entries(phases)].map(([id, position]) => `${id} at ${position}`)
  const speed = typeof engine === 'number' ? `at ${engine} rpm` : engine
  return `Setting: ${[...named, `engine ${speed}`, `battery ${battery}`].join(', ')}; everything else at rest.`
}

function showOutcome({ outcome, cycle }: SolvedSetting): string {
  return outcome === 'rests' ? '' : `It chatters: the contacts come back to where they were after ${cycle?.length ?? 0} moves. Shown is the first of them.`
}

const titleOf = (id: string, wiring: Wiring): string => {
  const [part, ...filament] = id.split('.')
  return [wiring.parts.get(part)?.title ?? part, ...filament].join(', ')
}

function showLamps({ lamps }: Solution, wiring: Wiring): string {
  const rows = Object.entries(lamps).map(([id, lamp]) =>
    [id, titleOf(id, wiring), figure(lamp.volts, 2), figure(lamp.percent, 0), figure(lamp.light * 100, 0), lamp.class])
  return rows.length ? formatTable(['lamp', '', 'volts', '% of rated', '% light', 'class'], rows, ['volts', '% of rated', '% light']) : ''
}

function showWires({ wires, voltages }: Solution, wiring: Wiring): string {
  const rows = Object.entries(wires).map(([id, { amps, dropV }]) => {
    const wire = wiring.wires.get(id) as WiringWire
    const volts = wire.ends.map(({ at }) => (at === null ? 'loose' : voltages[at] === null ? 'floating' : figure(voltages[at], 2)))
    const ends = wire.ends.map(({ at, place }) => at ?? place ?? '?')
    return [id, ends.join(' – '), ...volts, amps === null ? 'undetermined' : figure(amps, 3), figure(dropV, 3)]
  })
  return rows.length ? formatTable(['wire', 'ends', 'volts', 'volts ', 'amps', 'drop'], rows, ['volts', 'volts ', 'amps', 'drop']) : ''
}

function showStates({ states }: Solution): string {
  const rows = Object.entries(states)
  return rows.length ? `States: ${rows.map(([id, value]) => `${id} ${value}`).join(', ')}.` : ''
}

function showPhases({ phases }: SolvedSetting): string {
  return Object.entries(phases).map(([part, { rests, cycle = [], rate, solutions = [] }]) => {
    if (rests !== undefined) return `${part} rests, ${rests}.`
    const lit = solutions.map(({ at, lamps }) => `  ${at[part]}: ${Object.entries(lamps).filter(([, lamp]) => lamp.class !== 'off').map(([id, lamp]) => `${id} ${figure(lamp.percent, 0)} %`).join(', ') || 'no lamp lit'}`)
    return [`${part} goes round ${cycle.join(', ')}${rate ? `: ${rate}` : ''}.`, ...lit].join('\n')
  }).join('\n')
}

function showStanding({ standing, states }: SolvedSetting): string {
  return standing.map((other) => {
    const changed = Object.entries(other.states).filter(([id, value]) => states[id] !== value).map(([id, value]) => `${id} ${value}`)
    const lit = Object.entries(other.lamps).filter(([, lamp]) => lamp.class !== 'off').map(([id]) => id)
    return `Another standing state, ${other.name} (from ${other.from}): ${[...changed, lit.length ? `lit: ${lit.join(', ')}` : 'no lamp lit'].join('; ')}.`
  }).join('\n')
}

function showFloating({ floating }: Solution): string {
  return floating.length ? `Floating (no path leads there): ${floating.join(', ')}.` : ''
}

function showBalance({ balance: { node, worstA, sourceW, lostW } }: Solution): string {
  return `Balance: sources give ${figure(sourceW, 3)} W, ${figure(lostW, 3)} W are used or lost; worst node ${node}, ${worstA.toExponential(1)} A.`
}

/** Assumptions of the same value for the same reason in one line, with how often. */
function showAssumed(assumed: readonly Assumption[]): string {
  const groups = new Map<string, { count: number; path: string }>()
  for (const { path, value, why, source } of assumed) {
    const key = `${path.split('.').at(-1)} ${typeof value === 'number' ? Number(value.toPrecision(4)) : String(value)}: ${why} (${source})`
    groups.set(key, { count: (groups.get(key)?.count ?? 0) + 1, path: groups.get(key)?.path ?? path })
  }
  if (groups.size === 0) return ''
  const lines = [...groups].map(([key, { count, path }]) => `  ${key}, ${count === 1 ? `at ${path}` : `at ${count} places, first ${path}`}`)
  return ['Assumed, because the record does not say:', ...lines].join('\n')
}
