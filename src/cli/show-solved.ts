import { nameOf, titleOf, wireHue, wireSize, type Wiring, type WiringWire } from '../record/index.ts'
import type { Solution, SolvedSetting, SolvedStep } from '../tasks/index.ts'
import { showAssumed } from './show-assumed.ts'
import { showLit } from './show-lit.ts'
import { showNotes, showSetting } from './show-setting.ts'
import { figure, formatTable } from './table.ts'

/** One solved setting as readable text. */
export function showSolved(solved: SolvedStep, wiring: Wiring, { isChained = false, allAssumed = false } = {}): string {
  const sections = [
    showSetting(solved, wiring, isChained), showNotes(solved.notes), showOutcome(solved, wiring),
    showLamps(solved, wiring), showLoads(solved, wiring), showWires(solved, wiring),
    showStates(solved, wiring), showPhases(solved, wiring), showDials(solved, wiring), showStanding(solved, wiring), showFloating(solved), showPower(solved),
    showAssumed(solved.assumed, allAssumed),
  ]
  return sections.filter((section) => section !== '').join('\n\n')
}

function showOutcome({ outcome, cycle = [], states }: SolvedSetting, wiring: Wiring): string {
  if (outcome === 'rests') return ''
  const moving = Object.keys(states).filter((id) => new Set(cycle.map((step) => step.states[id])).size > 1)
  const names = [...new Set(moving.map((id) => lampTitle(id, wiring)))].join('; ') || 'a contact'
  return `It does not come to rest: ${names} chatters, and all is as it was after ${cycle.length} moves. Shown is the first of them.`
}

const RATED = [
  '% of the rated volts beside it: for a lamp of a standard category, the volts that it is tested at.',
  'Off is below 10 %, faint below 40, dim below 85, normal to 108, over above.',
]

function showLamps({ lamps }: Solution, wiring: Wiring): string {
  const rows = Object.entries(lamps).map(([id, lamp]) =>
    [id, lampTitle(id, wiring), figure(lamp.volts, 2), String(lamp.ratedV), figure(lamp.percent, 0), figure(lamp.light * 100, 0), lamp.class])
  const heads = ['lamp', '', 'volts', 'rated V', '% of rated V', '% light', 'glow']
  return rows.length ? [formatTable(heads, rows, heads.slice(2, -1)), ...RATED].join('\n') : ''
}

function lampTitle(id: string, wiring: Wiring): string {
  return [titleOf(id, wiring), ...id.split('.').slice(1)].join(', ')
}

/** Less than this is nobody's current, A. */
const NOTHING_A = 0.0005

/** Motors, coils, horns and the like that take current; the others in a line. */
function showLoads({ loads, elements }: SolvedStep, wiring: Wiring): string {
  const fed = loads.filter((id) => Math.abs(elements[id].amps ?? 0) >= NOTHING_A), dead = loads.filter((id) => !fed.includes(id))
  const rows = fed.map((id) => [id, lampTitle(id, wiring), figure(elements[id].volts, 2), figure(elements[id].amps, 3)])
  const heads = ['other load', '', 'volts', 'amps']
  return [...rows.length ? [formatTable(heads, rows, heads.slice(2))] : [], ...dead.length ? [`No current: ${dead.join(', ')}.`] : []].join('\n')
}

function showWires({ wires, faults, reference }: SolvedStep, wiring: Wiring): string {
  const open = new Set(faults.map(({ fault }) => fault))
  const rows = Object.entries(wires).map(([id, { amps, dropV, volts }]) => {
    const wire = wiring.wires.get(id) as WiringWire
    const ends = wire.ends.map(({ at, place }) => at ?? place ?? '?')
    const flow = ['', '.1', '.2'].some((end) => open.has(`open:${id}${end}`)) ? 'open' : amps === null ? 'undetermined' : figure(amps, 3)
    return [id, wireHue(wire) || '?', wireSize(wire) || '?', ends.join(' – '), ...wire.ends.map(({ at }, end) => endVolts(at, volts[end])), flow, figure(dropV, 3)]
  })
  const heads = ['wire', 'colour', 'size', 'first end – second end', 'V at first', 'V at second', 'amps', 'V drop']
  return rows.length ? `${sayAgainst(reference, wiring)}\n\n${formatTable(heads, rows, heads.slice(4))}` : ''
}

/** What the signs of the table of wires mean. */
function sayAgainst(reference: string, wiring: Wiring): string {
  const metal = wiring.metals.get(reference)
  const against = metal ? `${metal.title === reference ? reference : `${metal.title} (${reference})`}, which carries the battery's earth lead` : reference
  const live = metal && wiring.earth === 'positive' ? ' Positive earth: what is live reads negative.' : ''
  return `Volts are against ${against}.${live} Amps are positive from a wire's first end to its second. Sizes are mm² where no other unit stands.`
}

function endVolts(at: string | null, volts: number | null): string {
  if (at === null) return 'loose'
  return volts === null ? 'floating' : figure(volts, 2)
}

function showStates({ states }: Solution, wiring: Wiring): string {
  const rows = Object.entries(states)
  return rows.length ? `States: ${rows.map(([id, value]) => `${nameOf(id, wiring)} ${value}`).join(', ')}.` : ''
}

function showPhases({ phases }: SolvedSetting, wiring: Wiring): string {
  return Object.entries(phases).map(([part, { rests, cycle = [], rate, solutions = [] }]) => {
    if (rests !== undefined) return `${nameOf(part, wiring)} rests, ${rests}.`
    const lit = solutions.map(({ at, lamps }) => `  ${at[part]}: ${showLit(lamps) || 'no lamp lit'}`)
    return [`${nameOf(part, wiring)} goes round ${cycle.join(', ')}${rate ? `: ${rate}` : ''}.`, ...lit].join('\n')
  }).join('\n')
}

function showDials({ dials }: SolvedSetting, wiring: Wiring): string {
  const rows = Object.entries(dials).map(([id, { shows, unit }]) => `${nameOf(id, wiring)} shows ${shows === null ? 'nothing that can be told' : `${figure(shows, 2)} ${unit}`}`)
  return rows.length ? `Dials: ${rows.join(', ')}.` : ''
}

function showStanding({ standing, states, sources, elements }: SolvedStep, wiring: Wiring): string {
  return standing.map((other) => {
    const changed = Object.entries(other.states).filter(([id, value]) => states[id] !== value).map(([id, value]) => `${nameOf(id, wiring)} ${value}`)
    const apart = (id: string) => Math.abs((other.elements[id].amps ?? 0) - (elements[id].amps ?? 0)) > APART_A
    const given = sources.filter(apart).map((id) => `${lampTitle(id, wiring)} at ${figure(other.elements[id].amps, 1)} A in place of ${figure(elements[id].amps, 1)}`)
    const lit = Object.entries(other.lamps).filter(([, lamp]) => lamp.class !== 'off').map(([id]) => id)
    return `This setting can also stand otherwise: ${other.said} (begun from ${other.from}). Then ${[...changed, ...given, lit.length ? `lit: ${lit.join(', ')}` : 'no lamp lit'].join('; ')}.`
  }).join('\n')
}

/** Sources that differ by less are told as alike, A. */
const APART_A = 0.5

function showFloating({ floating }: Solution): string {
  return floating.length ? `Floating (no path leads there): ${floating.join(', ')}.` : ''
}

/** Where the power goes; nothing where there is none. */
function showPower({ balance: { sourceW, loadW, wiresW, insideW, chargeW } }: Solution): string {
  const shares = [
    [loadW, 'in what it drives'], [chargeW, 'into the battery'], [insideW, 'lost inside the generator'], [wiresW, 'lost in wires, joints and contacts'],
  ] as const
  const said = shares.filter(([watts]) => watts >= 0.05).map(([watts, where]) => `${figure(watts, 1)} W ${where}`)
  return said.length ? `Power given: ${figure(sourceW, 1)} W, of it ${said.join(', ')}.` : ''
}
