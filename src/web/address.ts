import type { Vehicle } from '../record/index.ts'
import type { PanelAxis, Picked, Setting, VehicleChoices } from '../tasks/index.ts'

/** What the address says after its #, entry by entry: `year=1954&switch-box.lights=head&engine=idle&picked=wire+w2`. */
export type AddressWords = readonly (readonly [name: string, value: string])[]

/** What a person has set and looks at: with the vehicle it is all that the address keeps. */
export interface Stand {
  readonly setting: Setting
  /** The circuit that is drawn alone; null for the whole vehicle. */
  readonly circuit: string | null
  /** Drawn to be seen at once, and not to be read. */
  readonly whole: boolean
  readonly pick: Picked | null
  /** The connection card of the picked part lies on the drawing. */
  readonly card: boolean
}

export const AT_REST: Setting = { controls: {}, engine: 'stopped', battery: 'full', phases: {} }
export const AT_START: Stand = { setting: AT_REST, circuit: null, whole: false, pick: null, card: false }

export function splitAddress(hash: string): AddressWords {
  return [...new URLSearchParams(hash.replace(/^#/, ''))]
}

/** The vehicle and what is looked at as an address; what is usual is left out. */
export function writeAddress(vehicle: Vehicle, first: Vehicle, { setting: { controls, engine, battery }, circuit, whole, pick, card }: Stand): string {
  const words: (readonly [string, string])[] = [
    ...vehicle.year !== undefined && vehicle.year !== first.year ? [['year', String(vehicle.year)] as const] : [],
    ...vehicle.market !== undefined && vehicle.market !== first.market ? [['market', vehicle.market] as const] : [],
    ...Object.entries(vehicle.options ?? {}).filter(([id, on]) => on !== (first.options?.[id] ?? false)).map(([id, on]) => [`option*${id}`, on ? 'yes' : 'no'] as const),
    ...Object.entries(vehicle.serials ?? {}).filter(([, said]) => said !== '').map(([id, said]) => [`serial*${id}`, String(said)] as const),
    ...Object.entries(controls).map(([key, position]) => [key, String(position)] as const),
    ...engine !== AT_REST.engine ? [['engine', String(engine)] as const] : [],
    ...battery !== AT_REST.battery ? [['battery', battery] as const] : [],
    ...circuit === null ? [] : [['circuit', circuit] as const],
    ...whole ? [['whole', 'yes'] as const] : [],
    ...pick ? [['picked', `${pick.kind} ${pick.id}`] as const] : [],
    ...pick && card ? [['card', 'yes'] as const] : [],
  ]
  return words.length === 0 ? '' : `#${new URLSearchParams(words.map((pair) => [...pair])).toString()}`
}

/** What an address gives, and a sentence for each entry that this vehicle does not know. */
export interface ReadVehicle { readonly vehicle: Vehicle; readonly ignored: readonly string[]; readonly rest: AddressWords }
export interface ReadStand { readonly stand: Stand; readonly ignored: readonly string[] }

/** The vehicle that an address means, laid over the one shown first. */
export function readVehicle(words: AddressWords, first: Vehicle, choices: VehicleChoices): ReadVehicle {
  let vehicle = first
  const ignored: string[] = []
  const rest: (readonly [string, string])[] = []
  for (const [name, value] of words) {
    const said = readEntry(name, value, choices)
    if (said === null) rest.push([name, value])
    else if (typeof said === 'string') ignored.push(said)
    else vehicle = { ...vehicle, ...said, options: { ...vehicle.options, ...said.options }, serials: { ...vehicle.serials, ...said.serials } }
  }
  return { vehicle, ignored, rest }
}

/** Part of a vehicle, a sentence where the record has no such thing, or null where the entry is not about the vehicle. */
function readEntry(name: string, value: string, { years, markets, options, serials }: VehicleChoices): Partial<Vehicle> | string | null {
  const [kind, id] = [name.split('*')[0], name.slice(name.indexOf('*') + 1)]
  const unknown = sayIgnored(name, value)
  if (name === 'year') return years.length > 0 && /^\d{4}$/.test(value) ? { year: Number(value) } : unknown
  if (name === 'market') return markets.some((market) => market.id === value) ? { market: value } : unknown
  if (kind === 'option') return options.some((option) => option.id === id) && (value === 'yes' || value === 'no') ? { options: { [id]: value === 'yes' } } : unknown
  if (kind === 'serial') return serials.some((serial) => serial.id === id) ? { serials: { [id]: value } } : unknown
  return null
}

/** What an address may speak of in one vehicle. */
export interface Known {
  readonly axes: readonly PanelAxis[]
  readonly circuits: readonly string[]
  has(pick: Picked): boolean
}

/** What is set and looked at by an address. */
export function readStand(words: AddressWords, known: Known): ReadStand {
  let stand = AT_START
  const ignored: string[] = []
  for (const [name, value] of words) {
    const said = readSetting(name, value, stand.setting, known) ?? readSight(name, value, known)
    if (typeof said === 'string') ignored.push(said)
    else stand = { ...stand, ...said }
  }
  return { stand, ignored }
}

const ENGINES = ['stopped', 'stopped-open', 'cranking', 'idle', 'cruise']

/** The setting with one entry more, a sentence where its control has no such position, or null where the entry is not about the setting. */
function readSetting(name: string, value: string, setting: Setting, { axes }: Known): Partial<Stand> | string | null {
  if (name === 'engine' && ENGINES.includes(value)) return { setting: { ...setting, engine: value as Setting['engine'] } }
  if (name === 'battery' && (value === 'full' || value === 'low')) return { setting: { ...setting, battery: value } }
  const axis = axes.find(({ key }) => key === name)
  if (!axis) return null
  const position = readPosition(axis, value)
  return position === null ? `${axis.title} has no position “${value}”: left at rest.` : { setting: { ...setting, controls: { ...setting.controls, [name]: position } } }
}

function readPosition({ spec }: PanelAxis, value: string): string | number | null {
  if (!spec.range) return spec.positions.includes(value) ? value : null
  const [least, most] = [Math.min(spec.range.from, spec.range.to), Math.max(spec.range.from, spec.range.to)]
  const number = Number(value)
  return value !== '' && number >= least && number <= most ? number : null
}

/** What is looked at by one entry, or a sentence where there is no such thing. */
function readSight(name: string, value: string, known: Known): Partial<Stand> | string {
  if (name === 'circuit' && known.circuits.includes(value)) return { circuit: value }
  if (name === 'whole' && value === 'yes') return { whole: true }
  if (name === 'card' && value === 'yes') return { card: true }
  const [, kind, id] = name === 'picked' ? /^(wire|part|splice) (.+)$/.exec(value) ?? [] : []
  const pick = kind === undefined ? null : { kind: kind as Picked['kind'], id }
  return pick && known.has(pick) ? { pick } : sayIgnored(name, value)
}

/** What another vehicle has too stays as it was. */
export function keepKnown({ setting, circuit, whole, pick, card }: Stand, known: Known): Stand {
  const controls = Object.entries(setting.controls).filter(([key]) => known.axes.some((axis) => axis.key === key))
  return {
    setting: { ...setting, controls: Object.fromEntries(controls) }, whole,
    circuit: circuit !== null && known.circuits.includes(circuit) ? circuit : null, pick: pick && known.has(pick) ? pick : null, card,
  }
}

function sayIgnored(name: string, value: string): string {
  return `This vehicle has no “${name}” that can be “${value}”: ignored.`
}
