import { titleOf, type Wiring, type WiringWire } from '../record/index.ts'
import type { Solution, SolvedSetting, SolvedStep } from '../tasks/index.ts'
import { showAssumed } from './show-assumed.ts'
import { showLit } from './show-lit.ts'
import { showNotes, showSetting } from './show-setting.ts'
import { figure, formatTable } from './table.ts'

/** One solved setting as readable text. */
export function showSolved(solved: SolvedStep, wiring: Wiring, { isChained = false, allAssumed = false } = {}): string {
  const sections = [
    showSetting(solved, isChained), showNotes(solved.notes), showOutcome(solved),
    showLamps(solved, wiring), showWires(solved, wiring),
    showStates(solved), showPhases(solved), showDials(solved), showStanding(solved), showFloating(solved), showBalance(solved), showAssumed(solved.assumed, allAssumed),
  ]
  return sections.filter((section) => section !== '').join('\n\n')
}

function showOutcome({ outcome, cycle }: SolvedSetting): string {
  return outcome === 'rests' ? '' : `It chatters: the contacts come back to where they were after ${cycle?.length ?? 0} moves. Shown is the first of them.`
}

function showLamps({ lamps }: Solution, wiring: Wiring): string {
  const rows = Object.entries(lamps).map(([id, lamp]) =>
    [id, lampTitle(id, wiring), figure(lamp.volts, 2), figure(lamp.percent, 0), figure(lamp.light * 100, 0), lamp.class])
  return rows.length ? formatTable(['lamp', '', 'volts', '% of rated V', '% light', 'by volts'], rows, ['volts', '% of rated V', '% light']) : ''
}

function lampTitle(id: string, wiring: Wiring): string {
  return [titleOf(id, wiring), ...id.split('.').slice(1)].join(', ')
}

function showWires({ wires, voltages, faults }: SolvedStep, wiring: Wiring): string {
  const open = new Set(faults.map(({ fault }) => fault))
  const rows = Object.entries(wires).map(([id, { amps, dropV }]) => {
    const wire = wiring.wires.get(id) as WiringWire
    const ends = wire.ends.map(({ at, place }) => at ?? place ?? '?')
    const flow = ['', '.1', '.2'].some((end) => open.has(`open:${id}${end}`)) ? 'open' : amps === null ? 'undetermined' : figure(amps, 3)
    return [id, ends.join(' – '), ...wire.ends.map(({ at }) => endVolts(at, voltages)), flow, figure(dropV, 3)]
  })
  return rows.length ? formatTable(['wire', 'ends', 'volts', 'volts ', 'amps', 'drop'], rows, ['volts', 'volts ', 'amps', 'drop']) : ''
}

function endVolts(at: string | null, voltages: Solution['voltages']): string {
  if (at === null) return 'loose'
  const volts = voltages[at]
  return volts === null ? 'floating' : figure(volts, 2)
}

function showStates({ states }: Solution): string {
  const rows = Object.entries(states)
  return rows.length ? `States: ${rows.map(([id, value]) => `${id} ${value}`).join(', ')}.` : ''
}

function showPhases({ phases }: SolvedSetting): string {
  return Object.entries(phases).map(([part, { rests, cycle = [], rate, solutions = [] }]) => {
    if (rests !== undefined) return `${part} rests, ${rests}.`
    const lit = solutions.map(({ at, lamps }) => `  ${at[part]}: ${showLit(lamps) || 'no lamp lit'}`)
    return [`${part} goes round ${cycle.join(', ')}${rate ? `: ${rate}` : ''}.`, ...lit].join('\n')
  }).join('\n')
}

function showDials({ dials }: SolvedSetting): string {
  const rows = Object.entries(dials).map(([id, { shows, unit }]) => `${id} shows ${shows === null ? 'nothing that can be told' : `${figure(shows, 2)} ${unit}`}`)
  return rows.length ? `Dials: ${rows.join(', ')}.` : ''
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
