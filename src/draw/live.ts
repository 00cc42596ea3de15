import { innerId, type ElementSpec, type Now, type PartModel } from '../record/index.ts'
import type { DialResult, LampResult, Solution, SolvedSetting } from '../circuit/index.ts'
import type { LiveLine, ScenePiece, SceneWire } from './scene.ts'
import type { CoreLive } from './symbols/symbol.ts'

/** How a wire is shown: dead, at supply volts without current, or carrying current. */
export interface WireLive { readonly state: 'dead' | 'volts' | 'current'; readonly edge: number }

/** Volts below which a wire counts as dead, and amps above which it counts as carrying. */
const LIVE_V = 1
const LIVE_A = 0.005

/** A wire as it is now. */
export function wireLive(wire: SceneWire, solved: Solution | null): WireLive {
  if (!solved || wire.kind !== 'wire' || wire.ends.some((end) => end !== null && isStray(end, solved))) return DEAD
  return liveAt(solved.wires[wire.id]?.amps ?? 0, wire.ends.map((end) => end === null ? null : solved.voltages[end]))
}

const DEAD: WireLive = { state: 'dead', edge: 0 }

/** Whether what is there is only the earth side's drop, through loads that stay dark. */
export function isStray(point: string, { stray }: Solution): boolean {
  return stray.includes(point)
}

/** The amber edge: narrow at volts alone, and wider with the root of the current up to a battery's. */
export function liveAt(amps: number, volts: readonly (number | null | undefined)[]): WireLive {
  if (Math.abs(amps) >= LIVE_A) return { state: 'current', edge: Math.min(4.5, 1.5 + 0.6 * Math.sqrt(Math.abs(amps))) }
  return Math.max(0, ...volts.map((one) => Math.abs(one ?? 0))) >= LIVE_V ? { state: 'volts', edge: 0.9 } : DEAD
}

/** The share of full colour in which a dead wire is drawn. */
export const PALE = 0.5

/** What the symbol of one element may show. */
export function coreLive(piece: ScenePiece, element: ElementSpec | undefined, solved: SolvedSetting | null): CoreLive {
  const { part, model } = piece
  const result = element && solved ? solved.elements[innerId(part.id, element.id)] : undefined
  return {
    closed: element !== undefined && isClosed(piece, element, solved),
    fed: Math.abs(result?.amps ?? 0) > 0.02,
    lamp: element ? lampOf(piece, element.id, solved) : null,
    broken: solved !== null && (model?.states ?? []).some(({ id }) => solved.states[`${part.id}.${id}`] === 'blown'),
  }
}

function lampOf({ part, model }: ScenePiece, element: string, solved: Solution | null): LampResult | null {
  const lamp = model?.lamps?.find((one) => one.element === element)
  return lamp && solved ? solved.lamps[innerId(part.id, lamp.id)] ?? null : null
}

/** Whether a contact is made, by its own law at the part's states and positions. */
export function isClosed({ part, model }: ScenePiece, element: ElementSpec, solved: SolvedSetting | null): boolean {
  const law = typeof element.law === 'function' ? element.law(nowOf(part.id, model, solved)) : element.law
  return law.kind === 'resistor' ? law.ohm < 1e4 : law.kind !== 'open'
}

/** What a law of a contact may ask, from the solved setting; at rest where there is none. */
function nowOf(part: string, model: PartModel | undefined, solved: SolvedSetting | null): Now {
  const stateOf = (id: string) => solved?.states[`${part}.${id}`] ?? model?.states?.find((state) => state.id === id)?.rest ?? ''
  return {
    state: stateOf,
    phase: solved?.at[part] ?? model?.phase?.start ?? '',
    position: (axis) => positionOf(part, model, axis, solved),
    engineRpm: 0, pointsOpen: solved?.setting.engine === 'stopped-open', battery: solved?.setting.battery ?? 'full',
    emf: () => 0, regulatorOhm: () => 0, kept: () => 0,
  }
}

/** Where an axis stands; at rest where nothing is solved. */
export function positionOf(part: string, model: PartModel | undefined, axis: string, solved: SolvedSetting | null): string | number {
  return solved?.positions[`${part}.${axis}`] ?? model?.axes?.find(({ id }) => id === axis)?.rest ?? ''
}

// --- live lines beside the symbols ---

export interface LiveText { readonly text: string; readonly tone: 'ink' | 'soft' | 'bad' | 'doubtful' }

/** What a live line says now; empty before anything is solved. */
export function liveText(piece: ScenePiece, live: LiveLine, solved: SolvedSetting | null): LiveText {
  if (live.says === 'axis') return axisText(piece, live, solved)
  if (!solved) return { text: '', tone: 'soft' }
  if (live.says === 'lamp') return lampText(solved.lamps[live.key ?? ''])
  if (live.says === 'dial') return { text: sayDial(solved.dials[live.key ?? '']), tone: 'ink' }
  if (live.says === 'state') return stateText(piece, live, solved)
  if (live.says === 'fuse') return fuseText(piece, live, solved)
  if (live.says === 'phase') return phaseText(piece, solved)
  return live.says === 'battery' ? batteryVolts(piece, solved) : batteryAmps(piece, solved)
}

function axisText({ part, model }: ScenePiece, live: LiveLine, solved: SolvedSetting | null): LiveText {
  const axis = model?.axes?.find(({ id }) => id === live.key)
  const position = positionOf(part.id, model, live.key ?? '', solved)
  const said = typeof position === 'number' ? `${Math.round(position * 10) / 10} ${axis?.range?.unit ?? ''}`.trim() : position
  return { text: `${live.prefix ?? ''}${said}`, tone: position === axis?.rest ? 'soft' : 'ink' }
}

/** Per cent of rated volts, with the class in words wherever it is not simply normal. */
export function lampText(lamp: LampResult | undefined): LiveText {
  if (!lamp || lamp.percent < 0.5) return { text: 'off', tone: 'soft' }
  const percent = `${Math.round(Math.min(999, lamp.percent))} %`
  if (lamp.class === 'normal') return { text: percent, tone: 'ink' }
  return { text: `${percent} ${lamp.class}`, tone: lamp.class === 'off' ? 'soft' : lamp.class === 'over' ? 'bad' : 'doubtful' }
}

/** What a needle shows, to a tenth: nobody reads one finer; a question mark where it cannot be told. */
export function sayDial(dial: DialResult | undefined): string {
  if (!dial) return ''
  if (dial.shows === null) return `? ${dial.unit}`
  const tenths = Math.round(Math.abs(dial.shows) * 10) / 10
  return `${dial.shows < 0 && tenths > 0 ? '−' : ''}${tenths} ${dial.unit}`
}

/** A fuse of a box by its name and rating, and each that has blown. */
function fuseText({ part }: ScenePiece, live: LiveLine, solved: SolvedSetting): LiveText {
  const isBlown = solved.states[`${part.id}.${live.key ?? ''}`] === 'blown'
  return isBlown ? { text: `${live.prefix ?? ''}blown`, tone: 'bad' } : { text: live.rest ?? '', tone: 'soft' }
}

function stateText({ part }: ScenePiece, live: LiveLine, solved: SolvedSetting): LiveText {
  const value = solved.states[`${part.id}.${live.key ?? ''}`] ?? ''
  const silent = part.kind === 'motor' && value === live.rest
  return { text: silent ? '' : `${live.prefix ?? ''}${value}`, tone: value === live.rest ? 'soft' : 'ink' }
}

function phaseText({ part }: ScenePiece, solved: SolvedSetting): LiveText {
  const phase = solved.phases[part.id]
  const now = solved.at[part.id] ?? ''
  if (phase?.cycle) return { text: now, tone: 'ink' }
  return { text: phase?.rate === 'stays lit' ? phase.rate : now, tone: 'soft' }
}

function batteryVolts({ part, model }: ScenePiece, solved: SolvedSetting): LiveText {
  const source = model?.elements.find(({ does }) => does === 'source')
  const volts = solved.elements[innerId(part.id, source?.id ?? '')]?.volts
  return { text: typeof volts === 'number' ? `${Math.abs(volts).toFixed(2)} V` : '', tone: 'ink' }
}

function batteryAmps({ part, model }: ScenePiece, solved: SolvedSetting): LiveText {
  const source = model?.elements.find(({ does }) => does === 'source')
  const amps = solved.elements[innerId(part.id, source?.id ?? '')]?.amps
  if (typeof amps !== 'number' || Math.abs(amps) < 0.005) return { text: 'no current', tone: 'soft' }
  return { text: `${sayAmps(Math.abs(amps))} ${amps < 0 ? 'out' : 'in'}`, tone: 'ink' }
}

export function sayAmps(amps: number): string {
  return amps >= 100 ? `${Math.round(amps)} A` : amps >= 10 ? `${amps.toFixed(1)} A` : `${amps.toFixed(2)} A`
}
