import type { Vehicle } from '../record/index.ts'
import type { PanelAxis, Setting, VehicleChoices } from '../tasks/index.ts'

/** What the address says after its #, entry by entry: `year=1954&switch-box.lights=head&engine=idle`. */
export type AddressWords = readonly (readonly [name: string, value: string])[]

export const AT_REST: Setting = { controls: {}, engine: 'stopped', battery: 'full', phases: {} }

export function splitAddress(hash: string): AddressWords {
  return [...new URLSearchParams(hash.replace(/^#/, ''))]
}

/** The vehicle and the setting as an address; what is usual is left out. */
export function writeAddress(vehicle: Vehicle, { controls, engine, battery }: Setting, first: Vehicle): string {
  const words: (readonly [string, string])[] = [
    ...vehicle.year !== undefined && vehicle.year !== first.year ? [['year', String(vehicle.year)] as const] : [],
    ...vehicle.market !== undefined && vehicle.market !== first.market ? [['market', vehicle.market] as const] : [],
    ...Object.entries(vehicle.options ?? {}).filter(([id, on]) => on !== (first.options?.[id] ?? false)).map(([id, on]) => [`option*${id}`, on ? 'yes' : 'no'] as const),
    ...Object.entries(vehicle.serials ?? {}).filter(([, said]) => said !== '').map(([id, said]) => [`serial*${id}`, String(said)] as const),
    ...Object.entries(controls).map(([key, position]) => [key, String(position)] as const),
    ...engine !== AT_REST.engine ? [['engine', String(engine)] as const] : [],
    ...battery !== AT_REST.battery ? [['battery', battery] as const] : [],
  ]
  return words.length === 0 ? '' : `#${new URLSearchParams(words.map((pair) => [...pair])).toString()}`
}

/** What an address gives, and a sentence for each entry that this vehicle does not know. */
export interface ReadVehicle { readonly vehicle: Vehicle; readonly ignored: readonly string[]; readonly rest: AddressWords }
export interface ReadSetting { readonly setting: Setting; readonly ignored: readonly string[] }

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

const ENGINES = ['stopped', 'stopped-open', 'cranking', 'idle', 'cruise']

/** The setting that an address means. */
export function readSetting(words: AddressWords, axes: readonly PanelAxis[]): ReadSetting {
  let setting = AT_REST
  const ignored: string[] = []
  for (const [name, value] of words) {
    const axis = axes.find(({ key }) => key === name)
    const position = axis ? readPosition(axis, value) : null
    if (position !== null) setting = { ...setting, controls: { ...setting.controls, [name]: position } }
    else if (name === 'engine' && ENGINES.includes(value)) setting = { ...setting, engine: value as Setting['engine'] }
    else if (name === 'battery' && (value === 'full' || value === 'low')) setting = { ...setting, battery: value }
    else ignored.push(axis ? `${axis.title} has no position “${value}”: left at rest.` : sayIgnored(name, value))
  }
  return { setting, ignored }
}

function readPosition({ spec }: PanelAxis, value: string): string | number | null {
  if (!spec.range) return spec.positions.includes(value) ? value : null
  const [least, most] = [Math.min(spec.range.from, spec.range.to), Math.max(spec.range.from, spec.range.to)]
  const number = Number(value)
  return value !== '' && number >= least && number <= most ? number : null
}

function sayIgnored(name: string, value: string): string {
  return `This vehicle has no “${name}” that can be “${value}”: ignored.`
}
