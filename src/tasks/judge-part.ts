import type { LampResult, SolvedSetting } from '../circuit/index.ts'
import { sayDial } from '../draw/index.ts'
import { innerId, type PartModel, type WiringPart } from '../record/index.ts'
import { findFlashing, type Flashing } from './flashing.ts'

/** What is to be thought of a part in one setting, in a sentence; empty where there is nothing to be said. */
export function judgePart(part: WiringPart, model: PartModel | undefined, solved: SolvedSetting): string {
  return sayTold(part, model, solved) || judgeLamps(part, model, solved) || sayUnearthed(part, model, solved) || sayDials(part, model, solved)
}

/** What a person must be told of its states, such as a fuse that has blown. */
function sayTold(part: WiringPart, model: PartModel | undefined, { states }: SolvedSetting): string {
  const told = (model?.states ?? []).flatMap(({ id, tells }) => tells?.[states[innerId(part.id, id)]] ?? [])
  const more = part.kind === 'fuse' ? ' Find out why before another of the same size goes in.' : ''
  return told.length === 0 ? '' : `${part.title} ${told.join(', ')}.${more}`
}

function judgeLamps(part: WiringPart, model: PartModel | undefined, solved: SolvedSetting): string {
  const ids = (model?.lamps ?? []).map(({ id }) => innerId(part.id, id))
  const flashing = findFlashing(solved)
  const flash = ids.flatMap((id) => flashing.get(id) ?? []).at(0)
  if (flash) return sayFlash(flash)
  const lamps = ids.flatMap((id): readonly LampResult[] => solved.lamps[id] ? [solved.lamps[id]] : [])
  const odd = lamps.find((lamp) => lamp.class !== 'off' && lamp.class !== 'normal')
  if (odd) return `Gets ${Math.round(odd.percent)} % of its rated volts: ${odd.class}.`
  if (lamps.some((lamp) => lamp.class === 'normal')) return 'Burns as it should.'
  return lamps.length === 0 ? '' : sayUnearthed(part, model, solved) || 'Off in this setting.'
}

function sayFlash({ rate, lit }: Flashing): string {
  const light = lit.class === 'normal' ? 'burns as it should' : `gets ${Math.round(lit.percent)} % of its rated volts, ${lit.class},`
  return `Flashes${rate === '' ? '' : `, ${rate}`}; ${light} while it is lit.`
}

/** Volts from which an end counts as fed, and amps below which nothing flows: what leaks over points without a path is less. */
const FED_V = 1
const NOTHING_A = 1e-6

/** A load with volts on both its ends and no current: what should lead back from it does not. */
function sayUnearthed(part: WiringPart, model: PartModel | undefined, { voltages, elements }: SolvedSetting): string {
  const pointOf = new Map([...part.terminals.values()].map(({ id, is }) => [is, `${part.id}:${id}`]))
  const voltsAt = (is: string) => Math.abs(voltages[pointOf.get(is) ?? ''] ?? 0)
  const loads = (model?.elements ?? []).filter(({ does }) => does === 'load')
  const hung = loads.find(({ id, from, to }) => Math.min(voltsAt(from), voltsAt(to)) >= FED_V && Math.abs(elements[innerId(part.id, id)]?.amps ?? 1) < NOTHING_A)
  return hung ? `Fed with ${voltsAt(hung.from).toFixed(2)} V, but nothing flows: its earth side has no way to earth in this setting.` : ''
}

function sayDials(part: WiringPart, model: PartModel | undefined, { dials }: SolvedSetting): string {
  const shown = (model?.dials ?? []).flatMap(({ id }) => {
    const dial = dials[innerId(part.id, id)]
    return dial ? [dial.shows === null ? 'what it shows cannot be told' : `shows ${sayDial(dial)}`] : []
  }).join(', ')
  return shown === '' ? '' : `${shown.charAt(0).toUpperCase()}${shown.slice(1)}.`
}
