import { groupUnmatched, showFits, type WiringRecord } from '../record/index.ts'
import type { CheckedEdition, CheckedEditions, CheckedWiring } from '../tasks/index.ts'
import { showAssumed } from './show-assumed.ts'

type Sound = { readonly ok: true } & CheckedWiring

/** Whether a vehicle must be mended before it is wired: it has no wiring, its battery is short-circuited, or a source is joined to nothing. */
function isBroken(checked: Sound | CheckedEdition): boolean {
  return !checked.ok || checked.shorted.length > 0 || checked.cutOff.length > 0
}

/** What was found in one vehicle, as text; what it assumes in short, or at every place. */
export function showChecked({ title }: WiringRecord, checked: Sound, allAssumed: boolean): string {
  const lines = [`${title}: read, and resolved without conflict; ${stateOf(checked)}.`, sayContents(checked), ...sayFindings(checked)]
  return [lines.join('\n'), showAssumed(checked.assumed, allAssumed)].filter((section) => section !== '').join('\n\n')
}

function sayContents({ supply, counts }: CheckedWiring): string {
  const { parts, wires, splices, looms } = counts
  return `${supply}; ${[count(parts, 'part'), count(wires, 'wire'), count(splices, 'splice'), count(looms, 'loom')].join(', ')}.`
}

const count = (n: number, noun: string) => `${n} ${noun}${n === 1 ? '' : 's'}`

/** A line for everything that a person should look at. */
function sayFindings({ shorted, overlapping, unjoined, cutOff, unmatched }: CheckedWiring): string[] {
  const others = unjoined.filter((point) => !cutOff.includes(point))
  return [
    ...cutOff.length ? [`Look at this: nothing is joined to ${cutOff.join(', ')}, an end of a battery or a generator: without its lead or its earth nothing works.`] : [],
    ...[...shorted, ...overlapping].map(({ sentence }) => `Look at this: ${sentence}.`),
    ...others.length ? [`Nothing is joined to ${others.join(', ')}: unused, or a wire or an earth is missing.`] : [],
    ...groupUnmatched(unmatched).map(({ half, title, ways, wires, why }) =>
      `${title} (${half}): ${ways.length === 1 ? 'way' : 'ways'} ${ways.join(', ')} ${ways.length === 1 ? 'meets' : 'meet'} nothing: ${why}${wires.length ? ` (wires ${wires.join(', ')})` : ''}.`),
  ]
}

// --- every edition ---

/** What was found in every edition, as text: each thing once, under the editions of which it is true. */
export function showEditions({ title }: WiringRecord, { editions, outside, rule, leftOut }: CheckedEditions, isDescribed: boolean): string {
  const sections = [
    [
      `${title}: ${count(editions.length, 'edition')}, ${sayStates(editions)}.`, rule,
      ...outside.length > 0 ? [`No supply is stated for other years, so that the record has no vehicle of them: ${outside.map(saySpan).join('; ')}.`] : [],
      ...leftOut > 0 ? [`${leftOut} more are not checked: describe the vehicle with --year, --market, --option or --serial.`] : [],
    ],
    gather(editions, (one) => [sayState(one)]).flatMap(({ of, lines }) => lines.map((line) => `${sayWhich(of, editions)}: ${line}`)),
    ...gather(editions, sayAll).map(({ of, lines }) => [`${sayWhich(of, editions)}:`, ...lines.map((line) => `  ${line}`)]),
    ...isDescribed ? [['Which of these the vehicle is cannot be told: describe it further, by --year and so on.']]
    : editions.some((one) => one.ok && one.assumed.length > 0) ? [['What the record does not say would be assumed: check one of these vehicles by itself to read each value.']] : [],
  ]
  return sections.map((lines) => lines.join('\n')).join('\n\n')
}

const STATES = ['not sound', 'to be looked at', 'sound'] as const

function stateOf(one: Sound | CheckedEdition): typeof STATES[number] {
  return !one.ok || isBroken(one) ? 'not sound' : one.overlapping.length > 0 || one.unjoined.length > 0 ? 'to be looked at' : 'sound'
}

function sayStates(editions: readonly CheckedEdition[]): string {
  const numbers = STATES.map((state) => ({ state, n: editions.filter((one) => stateOf(one) === state).length })).filter(({ n }) => n > 0)
  return numbers.length === 1 ? `${editions.length === 1 ? '' : 'all '}${numbers[0].state}` : numbers.map(({ state, n }) => `${n} ${state}`).join(', ')
}

function sayState(one: CheckedEdition): string {
  if (one.ok) return `${stateOf(one)}. ${sayContents(one)}`
  const why = [...one.conflicts.length ? [`${one.conflicts.length} in conflict`] : [], ...one.cannotTell.length ? [`${one.cannotTell.length} cannot be told`] : []]
  return `not sound, no wiring: ${why.join(', ')}.`
}

function sayAll(one: CheckedEdition): string[] {
  return one.ok ? sayFindings(one) : [...one.conflicts, ...one.cannotTell].map(({ sentence }) => sentence)
}

interface Told { readonly of: readonly CheckedEdition[]; readonly lines: string[] }

/** Each line once, together with the others that are said of the same editions. */
function gather(editions: readonly CheckedEdition[], say: (one: CheckedEdition) => readonly string[]): Told[] {
  const byLine = new Map<string, Set<CheckedEdition>>()
  for (const one of editions) for (const line of say(one)) byLine.set(line, (byLine.get(line) ?? new Set()).add(one))
  const told = new Map<string, Told>()
  for (const [line, of] of byLine) {
    const key = editions.map((one) => of.has(one) ? 'x' : ' ').join('')
    told.set(key, { of: [...of], lines: [...told.get(key)?.lines ?? [], line] })
  }
  return [...told.values()]
}

/** Some of the editions in words: neighbouring spans of years as one, and what is so in all of a span by its years alone. */
function sayWhich(of: readonly CheckedEdition[], all: readonly CheckedEdition[]): string {
  if (of.length === all.length) return 'Every edition'
  const spans = [...new Set(of.map(({ span }) => span))].map((span) => ({ ...span, variant: sayVariants(span, of, all) }))
  const merged = spans.reduce<(typeof spans)[number][]>((list, { from, to, variant }) => {
    const last = list.at(-1)
    const follows = last?.to !== undefined && last.to + 1 === from && last.variant === variant
    const begin = follows ? last.from : from
    return [...follows ? list.slice(0, -1) : list, { ...begin !== undefined && { from: begin }, ...to !== undefined && { to }, variant }]
  }, [])
  return merged.map((one) => [saySpan(one), one.variant].filter((word) => word !== '').join(', ')).join('; ')
}

/** What of a span is meant; empty where all of it is. Numbers are named only where they make a difference. */
function sayVariants(span: CheckedEdition['span'], of: readonly CheckedEdition[], all: readonly CheckedEdition[]): string {
  const own = of.filter((one) => one.span === span), whole = all.filter((one) => one.span === span)
  if (own.length === whole.length) return ''
  return [...new Set(own.map(({ variant }) => variant))].map((variant) => {
    const numbers = own.filter((one) => one.variant === variant).map((one) => one.numbers)
    const isAll = numbers.length === whole.filter((one) => one.variant === variant).length
    return [variant, isAll ? '' : numbers.join(' or ')].filter((word) => word !== '').join(', ')
  }).join(' or ')
}

function saySpan({ from, to }: CheckedEdition['span']): string {
  return from === undefined && to === undefined ? '' : showFits([{ years: { ...from !== undefined && { from }, ...to !== undefined && { to } } }])
}
