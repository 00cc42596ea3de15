import {
  prepareCircuit, seekStanding, solveSetting, STILL_NOTE, type Circuit, type Condition, type Network, type PhaseResult, type Setting, type Solution, type SolvedSetting, type StandingState,
} from '../circuit/index.ts'
import { drawPaths, drawWhole, lampText, renderGroups, sayAmps, type DrawnGroup, type Scene, type Sheet } from '../draw/index.ts'
import { partKinds } from '../parts/index.ts'
import {
  innerId, sayAssumed as groupAssumed, titleOf, type AssumedLine, type AxisSpec, type Vehicle, type Wiring, type WiringRecord,
} from '../record/index.ts'
import { findFlashing } from './flashing.ts'
import { openVehicle } from './open-vehicle.ts'
import { upperFirst } from './say-point.ts'
import { firstVehicle, readChoices, type VehicleChoices } from './vehicle-choices.ts'

/** A vehicle held open for the page: its circuit, and its drawing laid out. */
export interface LiveVehicle {
  readonly record: WiringRecord
  readonly vehicle: Vehicle
  readonly choices: VehicleChoices
  readonly wiring: Wiring
  readonly circuit: Circuit
  readonly scene: Scene
  /** All controls, as the drawing of the whole vehicle orders them. */
  readonly axes: readonly PanelAxis[]
}

export type OpenedLive =
  | { readonly ok: true; readonly live: LiveVehicle }
  | { readonly ok: false; readonly title: string; readonly said: string; readonly sentences: readonly string[]; readonly vehicle: Vehicle; readonly choices: VehicleChoices | null }

/** Opens a record's text for one vehicle; without one, for the first that the record knows. */
export function openLive(text: string, asked: Vehicle | null, sheet: Sheet): OpenedLive {
  let choices: VehicleChoices | null = null
  let vehicle: Vehicle = asked ?? {}
  const opened = openVehicle(text, (record) => {
    choices = readChoices(record)
    return vehicle = asked ?? firstVehicle(choices)
  })
  if (!opened.ok) {
    const problems = opened.problems.map(({ sentence }) => sentence)
    if (opened.stage === 'record') return { ok: false, title: '', said: `This record cannot be read: ${opened.count} ${opened.count === 1 ? 'thing is' : 'things are'} wrong.`, sentences: problems, vehicle, choices: null }
    const clashes = [...opened.conflicts, ...opened.cannotTell].map(({ sentence }) => sentence)
    return { ok: false, title: opened.record.title, said: 'The record does not give one wiring for this vehicle.', sentences: [...problems, ...clashes], vehicle, choices }
  }
  const { record, wiring } = opened
  const circuit = prepareCircuit(wiring, partKinds)
  const models = new Map(circuit.network.parts.map(({ id, model }) => [id, model]))
  const scene = drawPaths(wiring, models, sheet)
  return { ok: true, live: { record, vehicle, choices: choices ?? readChoices(record), wiring, circuit, scene, axes: orderAxes(circuit, scene) } }
}

/** The same vehicle drawn for a sheet of another size, or one circuit of it, to be read or to be seen as a whole. */
export function redrawLive(live: LiveVehicle, sheet: Sheet, circuit: string | null, whole = false): LiveVehicle {
  const models = new Map(live.circuit.network.parts.map(({ id, model }) => [id, model]))
  return { ...live, scene: whole ? drawWhole(live.wiring, models, sheet, circuit) : drawPaths(live.wiring, models, sheet, circuit) }
}

/** One axis of one control, as the page lays it out. */
export interface PanelAxis {
  readonly key: string
  readonly part: string
  readonly title: string
  readonly spec: AxisSpec
}

/** All controls of the vehicle, those of the parts that are drawn first. */
export function panelAxes({ axes, scene }: LiveVehicle): PanelAxis[] {
  const drawn = new Set(scene.pieces.map(({ part }) => part.id))
  return [...axes.filter(({ part }) => drawn.has(part)), ...axes.filter(({ part }) => !drawn.has(part))]
}

/** Controls moved by hand first, then those that the vehicle itself moves; nearest the supply first. */
function orderAxes(circuit: Circuit, scene: Scene): PanelAxis[] {
  const height = new Map(scene.pieces.map(({ part, box, cores }) => [part.id, box?.y ?? cores[0]?.top ?? 0]))
  const byHeight = [...circuit.network.parts].sort((a, b) => (height.get(a.id) ?? 0) - (height.get(b.id) ?? 0))
  const all = byHeight.flatMap(({ id, part, model }) => (model.axes ?? []).map((spec): PanelAxis => ({
    key: `${id}.${spec.id}`, part: id, spec,
    title: (model.axes?.length ?? 0) > 1 && spec.title !== part.title ? `${part.title}, ${spec.title.toLowerCase()}` : spec.title,
  })))
  const byHand = ({ spec }: PanelAxis) => spec.movedBy === 'driver' || spec.movedBy === 'passenger'
  return [...all.filter(byHand), ...all.filter((axis) => !byHand(axis))]
}

/** Where the controls stood before, and what that left made: a relay that holds itself stays pulled. */
export interface Before { readonly setting: Setting; readonly condition: Condition }

export interface LiveSolved { readonly solved: SolvedSetting; readonly after: Before }

/** What holds in one setting, from what was before it; of parts that flash or sweep, the moment in which most light is shown. Other standing states are sought apart. */
export function solveLive({ circuit }: LiveVehicle, setting: Setting, before: Before | null = null): LiveSolved {
  const { solved, condition } = solveSetting(circuit, setting, { skipStanding: true, ...before ? { from: before.condition, fromSetting: before.setting } : {} })
  const moments = Object.values(solved.phases).flatMap(({ solutions }) => solutions ?? [])
  const brightest = moments.reduce<Solution>((best, one) => lightOf(one) > lightOf(best) + 1e-9 ? one : best, solved)
  return { solved: { ...solved, ...brightest }, after: { setting, condition } }
}

/** Other standing states of the setting last solved, step by step: it may be left at any step, and must be before the next setting is solved. */
export function* seekLive({ circuit }: LiveVehicle, { solved, after }: LiveSolved): Generator<unknown, SolvedSetting, undefined> {
  const standing = yield* seekStanding(circuit, after.setting, { outcome: solved.outcome, condition: after.condition })
  return { ...solved, standing }
}

function lightOf({ lamps }: Solution): number {
  return Object.values(lamps).reduce((sum, { light }) => sum + Math.min(1, light), 0)
}

export function drawLive({ scene }: LiveVehicle, solved: SolvedSetting): DrawnGroup[] {
  return renderGroups(scene, solved)
}

/** What is lit and what flashes, in a sentence each for someone who does not see the drawing. */
export function sayLit(live: LiveVehicle, solved: SolvedSetting): string {
  const { lamps, wiring } = live.circuit.network
  const flashing = findFlashing(solved)
  const steady: string[] = []
  const byRate = new Map<string, string[]>()
  for (const { id, spec } of lamps) {
    const flash = flashing.get(id)
    const lamp = flash?.lit ?? solved.lamps[id]
    if (!lamp || lamp.class === 'off') continue
    const said = `${titleOf(id, wiring)}${spec.id === '' ? '' : ` (${spec.title ?? spec.id})`} ${lampText(lamp).text}`
    if (flash) byRate.set(flash.rate, [...byRate.get(flash.rate) ?? [], said])
    else steady.push(said)
  }
  return [
    ...steady.length > 0 ? [`Lit, in per cent of rated volts: ${steady.join(', ')}.`] : [],
    ...[...byRate].map(([rate, said]) => `Flashing${rate === '' ? '' : `, ${rate}`}: ${said.join(', ')}.`),
  ].join(' ') || 'Nothing is lit.'
}

/** Sentences on a setting as a whole: those that must be seen at once, and those that can wait until they are asked for. */
export interface SettingNotes { readonly told: readonly string[]; readonly more: readonly string[] }

export function sayOfSetting({ circuit }: LiveVehicle, solved: SolvedSetting): SettingNotes {
  const { phases, parts } = circuit.network
  const { notes } = solved
  const warning = new Set(phases.filter(({ spec }) => spec.warns).map(({ part }) => parts[part].id))
  const cycles = Object.entries(solved.phases).map(([part, phase]) => ({ warns: warning.has(part) && phase.cycle !== undefined, said: sayPhase(circuit, solved, part, phase) })).filter(({ said }) => said !== '')
  return {
    told: [
      ...solved.outcome === 'chatters' ? [sayChatter(circuit, solved)] : [],
      ...cycles.filter(({ warns }) => warns).map(({ said }) => said), ...notes.filter((note) => note !== STILL_NOTE).map(sentence),
    ],
    more: [...notes.filter((note) => note === STILL_NOTE).map(sentence), ...cycles.filter(({ warns }) => !warns).map(({ said }) => said), ...solved.standing.map((state) => sayStanding(circuit, solved, state))],
  }
}

function sayPhase({ network: { wiring } }: Circuit, { at }: SolvedSetting, part: string, { cycle, rate }: PhaseResult): string {
  const title = titleOf(part, wiring)
  if (cycle && cycle.length > 1) return `${title}: goes through ${cycle.join(', ')}${rate ? `, ${rate}` : ''}; the moment shown is “${at[part] ?? cycle[0]}”.`
  return rate ? `${title}: ${rate}.` : ''
}

const sentence = (note: string) => `${upperFirst(note)}.`

function sayChatter({ network }: Circuit, solved: SolvedSetting): string {
  const steps = solved.cycle ?? []
  const moving = Object.keys(solved.states).filter((key) => new Set(steps.map(({ states }) => states[key])).size > 1)
  const names = [...new Set(moving.map((key) => titleOf(key, network.wiring)))]
  return `This setting does not come to rest: ${names.join(' and ') || 'a contact'} chatters between ${steps.length} states. One of them is shown.`
}

function sayStanding({ network }: Circuit, solved: SolvedSetting, state: StandingState): string {
  const title = (key: string) => titleOf(key, network.wiring)
  const moved = Object.keys(state.states).filter((key) => state.states[key] !== solved.states[key]).map((key) => `${title(key)} ${state.states[key]}`)
  const lit = Object.keys(state.lamps).filter((key) => state.lamps[key].class !== solved.lamps[key]?.class).map((key) => `${title(key)} ${state.lamps[key].class}`)
  const said = [...moved, ...sourcesApart(network, solved, state), ...lit].slice(0, 4)
  return `This setting can also stand otherwise: ${state.said}${said.length > 0 ? ` (${said.join(', ')})` : ''}.`
}

/** Batteries and generators that give or take another current than in the state shown, by more than half an ampere. */
function sourcesApart({ parts }: Network, solved: Solution, state: Solution): string[] {
  return parts.flatMap(({ id, part, model }) => model.elements.filter(({ does }) => does === 'source').flatMap((element) => {
    const key = innerId(id, element.id)
    const amps = state.elements[key]?.amps
    const shown = solved.elements[key]?.amps
    return typeof amps === 'number' && typeof shown === 'number' && Math.abs(amps - shown) > 0.5 ? [`${part.title} at ${sayAmps(Math.abs(amps))}`] : []
  }))
}

/** Values that nobody stated and the answer rests on, alike ones together. */
export function sayAssumed({ circuit }: LiveVehicle): AssumedLine[] {
  return groupAssumed(circuit.network.assumed)
}
