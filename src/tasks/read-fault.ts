import type { Circuit, Fault, Network } from '../circuit/index.ts'
import { nameOf } from '../record/index.ts'
import { given, refuseForm, refuseName, type Read } from './refusal.ts'
import { splitPair } from './read-setting.ts'

/** The forms in which a fault is written. */
export const FAULT_FORMS = ['open:WIRE', 'ohms:ID=N', 'join:A=B', 'swap:A=B', 'set:PART.param=N', 'hold:PART=STATE']

/** A fault as written, `open:w12` and so on, or what in it names nothing in this vehicle. */
export function readFault(word: string, circuit: Circuit): Read<Fault> {
  const colon = word.indexOf(':')
  const kind = word.slice(0, Math.max(colon, 0)), rest = word.slice(colon + 1)
  const { network } = circuit
  switch (kind) {
    case 'open': return readOpen(rest, network)
    case 'ohms': return readOhms(rest, network)
    case 'join':
    case 'swap': return readTwoPoints(kind, rest, network)
    case 'set': return readSet(rest, network)
    case 'hold': return readHold(rest, network)
    default: return refuseForm(`"${word}" is not a fault`, FAULT_FORMS)
  }
}

/** Names that can be opened or given ohms: wires and their ends, fixings, matings, parts and their elements, and points. */
function faultableNames({ elements, wiring, points, partOf }: Network): string[] {
  const ends = [...wiring.wires.keys()].flatMap((id) => [`${id}.1`, `${id}.2`])
  return [...new Set([...elements.map(({ id }) => id), ...partOf.keys()]), ...ends, ...points.filter((point) => !point.includes(':~'))]
}

function readOpen(id: string, network: Network): Read<Fault> {
  const names = faultableNames(network)
  return names.includes(id) ? given({ kind: 'open', id }) : refuseName('wire, element or point', id, names, network.wiring.leftOut)
}

function readOhms(rest: string, network: Network): Read<Fault> {
  const pair = splitPair(rest)
  const ohm = Number(pair?.[1])
  if (!pair || pair[1].trim() === '' || !(ohm >= 0 && ohm <= 1e9)) return refuseForm(`"ohms:${rest}" is not of the form ohms:ID=N, N in ohms from 0 to 1e9`)
  const names = faultableNames(network)
  return names.includes(pair[0]) ? given({ kind: 'ohms', id: pair[0], ohm }) : refuseName('wire or element', pair[0], names, network.wiring.leftOut)
}

function readTwoPoints(kind: 'join' | 'swap', rest: string, { points, wiring }: Network): Read<Fault> {
  const pair = splitPair(rest)
  if (!pair) return refuseForm(`"${kind}:${rest}" is not of the form ${kind}:A=B`)
  const named = points.filter((point) => !point.includes(':~'))
  for (const name of pair) if (!named.includes(name)) return refuseName('point', name, named, wiring.leftOut)
  if (pair[0] === pair[1]) return refuseForm(`${kind}:A=B takes two different points, not ${pair[0]} twice`)
  return given({ kind, a: pair[0], b: pair[1] })
}

function readSet(rest: string, network: Network): Read<Fault> {
  const pair = splitPair(rest)
  const [part, ...param] = pair?.[0].split('.') ?? []
  if (!pair || param.length === 0) return refuseForm(`"set:${rest}" is not of the form set:PART.param=N`)
  if (!network.partOf.has(part)) return refuseName('part', part, network.partOf.keys(), network.wiring.leftOut)
  const value = pair[1].trim() !== '' && Number.isFinite(Number(pair[1])) ? Number(pair[1]) : pair[1]
  return given({ kind: 'set', part, param, value })
}

/** `hold:relay=pulled` holds the part's one state, `hold:box.cutout=closed` the named one, `hold:flasher=lit` a phase. */
function readHold(rest: string, network: Network): Read<Fault> {
  const pair = splitPair(rest)
  if (!pair) return refuseForm(`"hold:${rest}" is not of the form hold:PART=STATE`)
  const [name, value] = pair
  const { states, phases, parts, wiring } = network
  const phase = phases.find(({ part, spec }) => parts[part].id === name && spec.names.includes(value))
  if (phase) return given({ kind: 'hold', part: name, state: '', value })
  const own = states.filter(({ id }) => id === name || id.startsWith(`${name}.`))
  if (own.length === 0) return refuseName('part with a state', name, [...states.map(({ id }) => id), ...phases.map(({ part }) => parts[part].id)], wiring.leftOut)
  const found = own.find(({ spec }) => spec.values.includes(value))
  if (!found) return refuseName(`state of ${nameOf(name, wiring)}`, value, own.flatMap(({ spec }) => spec.values))
  return given({ kind: 'hold', part: parts[found.part].id, state: found.spec.id, value })
}
