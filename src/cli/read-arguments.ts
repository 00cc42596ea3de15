import { parseArgs, type ParseArgsConfig } from 'node:util'
import type { Vehicle } from '../record/index.ts'
import type { MeterWords, SettingWords } from '../tasks/index.ts'

/** What one command was asked to do. */
export interface Arguments {
  readonly file: string
  readonly vehicle: VehicleWords
  readonly steps: readonly SettingWords[]
  readonly faults: readonly string[]
  readonly meter: MeterWords | null
  readonly json: boolean
  /** Everything that was assumed, and every place. */
  readonly allAssumed: boolean
}

/** The vehicle as given: options `id` or `id=no`, serials `series=number` or a bare number. */
export interface VehicleWords { readonly year?: number; readonly serials: readonly string[]; readonly market?: string; readonly options: readonly string[] }

/** The arguments were wrong: a sentence for a person, and the valid names where there is a list of them. */
export class ArgumentError extends Error {
  constructor(message: string, readonly valid: readonly string[] = []) {
    super(message)
  }
}

const vehicleOptions = {
  year: { type: 'string' }, serial: { type: 'string', multiple: true }, market: { type: 'string' }, option: { type: 'string', multiple: true },
  'json': { type: 'boolean' }, 'all-assumed': { type: 'boolean' },
} as const
const settingOptions = {
  set: { type: 'string', multiple: true }, engine: { type: 'string', multiple: true }, battery: { type: 'string', multiple: true },
  phase: { type: 'string', multiple: true }, fault: { type: 'string', multiple: true }, then: { type: 'boolean', multiple: true },
} as const
const meterOptions = {
  volts: { type: 'string' }, ohms: { type: 'string' }, meter: { type: 'string' }, amps: { type: 'string' }, 'series-lamp': { type: 'string' },
} as const

const OPTIONS: Readonly<Record<string, NonNullable<ParseArgsConfig['options']>>> = {
  check: vehicleOptions,
  solve: { ...vehicleOptions, ...settingOptions },
  meter: { ...vehicleOptions, ...settingOptions, ...meterOptions },
}

interface Token { readonly kind: string; readonly name?: string; readonly value?: string }

/** Reads the arguments of `check`, `solve` or `meter`; throws an ArgumentError that says what is wrong with them. */
export function readArguments(command: string, args: readonly string[]): Arguments {
  const tokens = tokenise(command, args)
  const words = tokens.filter(({ kind }) => kind === 'positional').map(({ value }) => value as string)
  const last = (name: string) => tokens.findLast((token) => token.name === name)?.value
  const all = (name: string) => tokens.filter((token) => token.name === name).map(({ value }) => value as string)
  const has = (name: string) => tokens.some((token) => token.name === name)
  const meter = command === 'meter' ? readMeter(tokens, last) : null
  const file = fileAmong(tokens, words, meter)
  const year = last('year'), market = last('market')
  if (year !== undefined && !/^\d{4}$/.test(year)) throw new ArgumentError(`--year takes a year of four digits, not "${year}"`)
  return {
    file, meter, faults: all('fault'), steps: readSteps(tokens), json: has('json'), allAssumed: has('all-assumed'),
    vehicle: { serials: all('serial'), options: all('option'), ...(year ? { year: Number(year) } : {}), ...(market ? { market } : {}) },
  }
}

function tokenise(command: string, args: readonly string[]): Token[] {
  try {
    const { tokens } = parseArgs({ args: joinSigned(args), options: OPTIONS[command], allowPositionals: true, strict: true, tokens: true })
    return tokens.map((token) => ({
      kind: token.kind, ...('name' in token ? { name: token.name } : {}), ...(token.kind !== 'option-terminator' && token.value !== undefined ? { value: token.value } : {}),
    }))
  } catch (error) {
    if (!(error instanceof TypeError)) throw error
    throw new ArgumentError(error.message.split('. ')[0], Object.keys(OPTIONS[command]).map((name) => `--${name}`))
  }
}

/** A number below zero belongs to the option before it, and is judged there. */
function joinSigned(args: readonly string[]): string[] {
  return args.reduce<string[]>((joined, arg) => (/^-\.?\d/.test(arg) && joined.at(-1)?.startsWith('--') ? [...joined.slice(0, -1), `${joined.at(-1)}=${arg}`] : [...joined, arg]), [])
}

/** `--then` begins a new setting; options before it belong to the one that ends there. */
function readSteps(tokens: readonly Token[]): SettingWords[] {
  const steps: Token[][] = [[]]
  for (const token of tokens) {
    if (token.name === 'then') steps.push([])
    else steps[steps.length - 1].push(token)
  }
  return steps.map((own) => {
    const all = (name: string) => own.filter((token) => token.name === name).map(({ value }) => value as string)
    const [engine, battery] = [all('engine').at(-1), all('battery').at(-1)]
    return { set: all('set'), phase: all('phase'), ...(engine ? { engine } : {}), ...(battery ? { battery } : {}) }
  })
}

const METERS = ['volts', 'amps', 'ohms', 'series-lamp'] as const

function readMeter(tokens: readonly Token[], last: (name: string) => string | undefined): MeterWords {
  const asked = METERS.filter((name) => last(name) !== undefined)
  if (asked.length !== 1) throw new ArgumentError('meter takes exactly one of these', METERS.map((name) => `--${name}`))
  const value = last(asked[0]) as string
  switch (asked[0]) {
    case 'amps': return { kind: 'amps', wire: value }
    case 'series-lamp': return { kind: 'series-lamp', watts: Number(value) }
    case 'ohms': return { kind: 'ohms', from: value, to: secondPoint(tokens, 'ohms') }
    case 'volts': {
      const meter = last('meter')
      return { kind: 'volts', from: value, to: secondPoint(tokens, 'volts'), ...(meter === undefined ? {} : { meterOhm: Number(meter) }) }
    }
  }
}

/** The word right behind `--volts A` or `--ohms A`. */
function secondPoint(tokens: readonly Token[], name: string): string {
  const after = tokens[tokens.findLastIndex((token) => token.name === name) + 1]
  if (after?.kind !== 'positional') throw new ArgumentError(`--${name} takes two points: --${name} A B`)
  return after.value as string
}

function fileAmong(tokens: readonly Token[], words: readonly string[], meter: MeterWords | null): string {
  const taken = meter && 'to' in meter ? tokens[tokens.findLastIndex(({ name }) => name === meter.kind) + 1] : undefined
  const files = tokens.filter((token) => token.kind === 'positional' && token !== taken).map(({ value }) => value as string)
  if (files.length === 1) return files[0]
  throw new ArgumentError(files.length === 0 ? 'name the file of a record' : `one record at a time, not ${files.length}: ${files.join(', ')}`)
}

/** The vehicle that the words describe. A bare serial number belongs to the record's only series. */
export function readVehicle({ year, serials, market, options }: VehicleWords, seriesNames: readonly string[]): Vehicle {
  return {
    ...(year === undefined ? {} : { year }), ...(market === undefined ? {} : { market }),
    ...(serials.length ? { serials: Object.fromEntries(serials.map((word) => readSerial(word, seriesNames))) } : {}),
    ...(options.length ? { options: Object.fromEntries(options.map(readOption)) } : {}),
  }
}

function readSerial(word: string, seriesNames: readonly string[]): [string, string] {
  const at = word.indexOf('=')
  if (at > 0) return [word.slice(0, at), word.slice(at + 1)]
  if (seriesNames.length === 1) return [seriesNames[0], word]
  throw new ArgumentError(`--serial takes series=number in this record`, seriesNames)
}

function readOption(word: string): [string, boolean] {
  const [id, value = 'yes'] = word.split('=')
  if (value !== 'yes' && value !== 'no') throw new ArgumentError(`--option takes ${id}, ${id}=yes or ${id}=no`)
  return [id, value === 'yes']
}
