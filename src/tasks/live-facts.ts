import { describeConductor, type SolvedSetting } from '../circuit/index.ts'
import { positionOf, sayAmps, sayDial, wireColour, type WireColour } from '../draw/index.ts'
import { partKinds } from '../parts/index.ts'
import { innerId, wireSize, type PartModel, type WiringPart, type WiringWire } from '../record/index.ts'
import { judgePart } from './judge-part.ts'
import type { LiveVehicle } from './live-vehicle.ts'
import { sayPoint, upperFirst } from './say-point.ts'

/** What has been clicked: a wire, a part or a splice, by id. */
export interface Picked { readonly kind: 'wire' | 'part' | 'splice'; readonly id: string }

/** The few facts of one thing in one setting, ready to be shown. */
export interface Facts {
  readonly pick: Picked
  readonly kicker: string
  readonly title: string
  readonly under: string
  readonly colour: WireColour | null
  readonly rows: readonly FactRow[]
  readonly judgement: string
  /** What a person does not know who has never opened one. */
  readonly plain: string
}
/** `source` says where a figure comes from that the record does not give. */
export interface FactRow { readonly name: string; readonly said: string; readonly source?: string }

/** Whether the vehicle has what was picked. */
export function hasPicked({ wiring }: LiveVehicle, { kind, id }: Picked): boolean {
  return kind === 'wire' ? wiring.wires.has(id) : kind === 'part' ? wiring.parts.has(id.split('/')[0]) : wiring.splices.has(id) || wiring.matings.has(id)
}

/** Facts of a wire, a part or a splice; null where the vehicle has none of that id. */
export function factsOf(live: LiveVehicle, solved: SolvedSetting, pick: Picked): Facts | null {
  if (pick.kind === 'wire') {
    const wire = live.wiring.wires.get(pick.id)
    return wire ? wireFacts(live, solved, wire) : null
  }
  if (pick.kind === 'part') {
    const part = live.wiring.parts.get(pick.id.split('/')[0])
    return part ? partFacts(live, solved, part) : null
  }
  return junctionFacts(live, solved, pick.id)
}

// --- wires ---

function wireFacts(live: LiveVehicle, solved: SolvedSetting, wire: WiringWire): Facts {
  const colour = wireColour(wire)
  const size = wireSize(wire)
  const [from, to] = wire.ends.map(({ at, state }) => at === null ? state === 'loose' ? 'loose end' : 'end not known' : sayPoint(live.wiring, at))
  const result = solved.wires[wire.id], conductor = describeConductor(live.wiring, wire)
  const ends = wire.ends.flatMap(({ at }, i): FactRow[] => at === null ? [] : [{ name: `At ${i === 0 ? from : to}`, said: sayVolts(solved.voltages[at]) }])
  return {
    pick: { kind: 'wire', id: wire.id }, kicker: `Wire ${wire.id}${wire.tag === undefined || wire.tag === wire.id ? '' : `, tagged ${wire.tag}`}`, colour,
    title: [colour.words, size === '' ? 'size not known' : typeof wire.sizeMm2 === 'number' ? `${size} mm²` : size].join(', '),
    under: `${from} to ${to}${conductor.lengthMm === null ? '' : ` · ${Math.round(conductor.lengthMm).toLocaleString('en')} mm`}`,
    rows: [
      ...ends,
      { name: 'Current', said: result?.amps === null ? 'undetermined: a loop without resistance' : sayFlow(result?.amps ?? 0) },
      { name: 'Lost in it', said: sayDrop(result?.dropV) },
      ...ohmRows(conductor, [from, to]),
      ...wire.loom === undefined ? [] : [{ name: 'Loom', said: wire.loom === 'separate' ? 'separate' : live.wiring.looms.get(wire.loom)?.title ?? wire.loom }],
    ],
    judgement: judgeWire(solved, wire, result?.amps ?? null, from, to), plain: '',
  }
}

/** Its copper, the joint at each end, and all of it together, which is what a meter reads. */
function ohmRows({ ohm, joints, source }: ReturnType<typeof describeConductor>, ends: readonly string[]): FactRow[] {
  const all = joints.reduce((sum, joint) => sum + (joint?.ohm ?? 0), ohm)
  return [
    { name: 'Copper', said: sayOhm(ohm), source },
    ...joints.flatMap((joint, i): FactRow[] => joint ? [{ name: `Joint at ${ends[i]}`, said: sayOhm(joint.ohm), source: joint.source }] : []),
    { name: 'Together', said: sayOhm(all) },
  ]
}

const sayOhm = (ohm: number) => `${Number((ohm * 1000).toFixed(2))} mΩ`

function judgeWire(solved: SolvedSetting, wire: WiringWire, amps: number | null, from: string, to: string): string {
  if (amps !== null && Math.abs(amps) >= 0.005) return `Carries ${sayAmps(Math.abs(amps))} from ${amps > 0 ? from : to} to ${amps > 0 ? to : from}.`
  const volts = wire.ends.map(({ at }) => at === null ? null : solved.voltages[at] ?? null)
  if (volts.every((one) => one === null)) return 'No path leads here in this setting: a meter shows nothing steady.'
  const most = Math.max(...volts.map((one) => Math.abs(one ?? 0)))
  return most >= 1 ? 'Live, but nothing draws through it.' : 'Dead in this setting.'
}

// --- parts ---

function partFacts(live: LiveVehicle, solved: SolvedSetting, part: WiringPart): Facts {
  const netPart = live.circuit.network.parts.find(({ id }) => id === part.id)
  const model = netPart?.model
  return {
    pick: { kind: 'part', id: part.id }, kicker: part.tag ? `Part ${part.tag}` : 'Part', title: part.title, colour: null,
    under: [kindWords(part.kind), placeOf(live, part)].filter((word) => word !== '').join(' · '),
    rows: [
      ...axisRows(part, model, solved), ...dialRows(part, model, solved), ...lampRows(part, model, solved), ...elementRows(part, model, solved),
      ...stateRows(part, model, solved), ...terminalRows(live, solved, part),
    ],
    judgement: judgePart(part, model, solved),
    plain: partKinds.find(({ kind }) => kind === part.kind)?.plain ?? '',
  }
}

/** A part kind as a person would say it. */
export function kindWords(kind: string): string {
  return KIND_WORDS[kind] ?? kind.replace('-', ' ')
}

const KIND_WORDS: Readonly<Record<string, string>> = { electromagnet: 'relay or solenoid', control: 'switch', coil: 'ignition coil', led: 'LED lamp' }

/** Where it sits, unless the place is named after the part. */
function placeOf({ wiring }: LiveVehicle, { place, title }: WiringPart): string {
  const said = place === undefined ? '' : wiring.places.get(place)?.title ?? ''
  return said.toLowerCase() === title.toLowerCase() ? '' : said
}

function axisRows(part: WiringPart, model: PartModel | undefined, solved: SolvedSetting): FactRow[] {
  return (model?.axes ?? []).map((axis) => ({
    name: axis.title === part.title ? 'Position' : axis.title, said: `${positionOf(part.id, model, axis.id, solved)}${axis.range?.unit ? ` ${axis.range.unit}` : ''}`,
  }))
}

function lampRows(part: WiringPart, model: PartModel | undefined, solved: SolvedSetting): FactRow[] {
  return (model?.lamps ?? []).flatMap((lamp) => {
    const result = solved.lamps[innerId(part.id, lamp.id)]
    const name = lamp.id === '' ? '' : `${lamp.title ?? lamp.id}: `
    if (!result) return []
    return [
      { name: `${name}volts across`, said: `${result.volts.toFixed(2)} V of ${lamp.ratedV} V, ${Math.round(result.percent)} %` },
      { name: `${name}light`, said: `${result.class}${result.class === 'off' ? '' : `, ${Math.round(result.light * 100)} % of its rated light`}` },
    ].map((row) => ({ ...row, name: upperFirst(row.name) }))
  })
}

function dialRows(part: WiringPart, model: PartModel | undefined, { dials }: SolvedSetting): FactRow[] {
  return (model?.dials ?? []).map(({ id }) => ({ name: upperFirst(`${sayId(id)} shows`.trim()), said: sayDial(dials[innerId(part.id, id)]) }))
}

function elementRows(part: WiringPart, model: PartModel | undefined, solved: SolvedSetting): FactRow[] {
  const all = model?.elements ?? [], working = all.filter(({ does }) => does !== 'joint')
  const shown = working.length > 0 ? working : all
  return shown.flatMap(({ id, does, from, to }) => {
    const result = solved.elements[innerId(part.id, id)]
    if (!result) return []
    const amps = result.amps === null ? 'amps undetermined' : Math.abs(result.amps) < 0.0005 ? 'no current' : sayAmps(Math.abs(result.amps))
    if (does === 'contact') return [{ name: `${markingOf(part, from)} to ${markingOf(part, to)}`, said: amps }]
    return [does === 'joint' ? { name: 'Through it', said: amps } : { name: id === '' ? 'Now' : upperFirst(sayId(id)), said: `${sayVolts(result.volts)} · ${amps}` }]
  })
}

/** The marking on an end that the part's kind knows by a name of its own. */
function markingOf({ terminals }: WiringPart, is: string): string {
  return [...terminals.values()].find((terminal) => terminal.is === is)?.marking ?? is
}

/** An inner name in words. */
const sayId = (id: string) => id.replaceAll('-', ' ')

function stateRows(part: WiringPart, model: PartModel | undefined, solved: SolvedSetting): FactRow[] {
  const states = (model?.states ?? []).map(({ id, element }) => ({
    name: element === undefined ? STATE_WORDS[id] ?? upperFirst(sayId(id)) : `Fuse ${element}`.trim(), said: solved.states[innerId(part.id, id)] ?? '',
  }))
  const phase = solved.phases[part.id]
  if (!phase) return states
  return [...states, { name: 'Goes through', said: phase.cycle ? `${phase.cycle.join(', ')}${phase.rate ? ` · ${phase.rate}` : ''}` : phase.rate ?? `rests: ${phase.rests ?? ''}` }]
}

const STATE_WORDS: Readonly<Record<string, string>> = { telltale: 'Tell-tale contact', cutout: 'Cut-out', armature: 'Armature' }

function terminalRows(live: LiveVehicle, solved: SolvedSetting, part: WiringPart): FactRow[] {
  return [...part.terminals.values()].map(({ id, marking }) => {
    const point = `${part.id}:${id}`
    const wires = [...live.wiring.wires.values()].filter(({ ends }) => ends.some(({ at }) => at === point)).map((wire) => `wire ${wire.id} ${wireColour(wire).letters}`)
    const seat = [...live.wiring.fixings.values()].find(({ joins }) => joins.includes(point))?.joins.find((other) => other !== point)
    const joined = [...wires, ...seat === undefined ? [] : [`on ${sayPoint(live.wiring, seat)}`]].join(', ')
    return { name: `Terminal ${marking}`, said: [sayVolts(solved.voltages[point]), joined === '' ? 'no wire' : joined].join(' · ') }
  })
}

// --- splices and connectors ---

function junctionFacts(live: LiveVehicle, solved: SolvedSetting, id: string): Facts | null {
  const mating = live.wiring.matings.get(id)
  const points = mating ? mating.joins : [id]
  if (!mating && !live.wiring.splices.has(id)) return null
  const wires = [...live.wiring.wires.values()].filter(({ ends }) => ends.some(({ at }) => at !== null && points.includes(at)))
  return {
    pick: { kind: 'splice', id }, kicker: mating ? 'Connector' : 'Splice', title: mating?.title ?? id, under: `${wires.length} wires`, colour: null,
    rows: [
      ...points.map((point) => ({ name: points.length > 1 ? point : 'Now', said: sayVolts(solved.voltages[point]) })),
      ...wires.map((wire) => ({ name: `Wire ${wire.id}`, said: `${wireColour(wire).words} · ${sayAmps(Math.abs(solved.wires[wire.id]?.amps ?? 0))}` })),
    ],
    judgement: '', plain: '',
  }
}

// --- words ---

export function sayVolts(volts: number | null | undefined): string {
  if (volts === null || volts === undefined) return 'floating, no path'
  const rounded = Math.round(volts * 100) / 100
  return `${rounded < 0 ? '−' : ''}${Math.abs(rounded).toFixed(2)} V`
}

function sayFlow(amps: number): string {
  return Math.abs(amps) < 0.0005 ? 'none' : sayAmps(Math.abs(amps))
}

function sayDrop(volts: number | null | undefined): string {
  if (volts === null || volts === undefined) return 'undetermined'
  return `${Math.abs(volts) < 0.01 ? `${(Math.abs(volts) * 1000).toFixed(1)} mV` : `${Math.abs(volts).toFixed(2)} V`}`
}
