import { listEditions, type Editions, type Vehicle, type WiringRecord, type YearSpan } from '../record/index.ts'

/** A vehicle that stands for one edition of a record. */
export interface Specimen {
  readonly vehicle: Vehicle
  /** Its span of years; both open where no year makes a difference. */
  readonly span: Pick<YearSpan, 'from' | 'to'>
  /** Its market and options in words; empty where neither makes a difference. */
  readonly variant: string
  /** The numbers that stand for its spans of serial numbers, in words. */
  readonly numbers: string
}

export interface Specimens {
  readonly specimens: readonly Specimen[]
  /** How they were chosen, in sentences. */
  readonly rule: string
  /** Left out, because there would be too many. */
  readonly leftOut: number
}

/** Checking this many vehicles of a large record takes seconds. */
const MOST_SPECIMENS = 200

/**
 * One vehicle for each edition that agrees with what is stated: every span of years in every market, without options and with
 * each option alone, each with a number from every span of serial numbers.
 */
export function listSpecimens(record: WiringRecord, stated: Vehicle): Specimens {
  const editions = listEditions(record)
  const years = (stated.year === undefined ? editions.years : [{ year: stated.year }]).map((one) => ({ vehicle: yearOf(one), span: spanOf(one) }))
  const variants = listVariants(record, editions, stated), series = listSeries(editions, stated), numbers = listNumbers(series, stated)
  const total = years.length * variants.length * series.reduce((product, one) => product * one.numbers.length, 1)
  const specimens = Array.from({ length: Math.min(total, MOST_SPECIMENS) }, (_, i): Specimen => {
    const number = numbers[i % numbers.length], row = Math.floor(i / numbers.length)
    const variant = variants[row % variants.length], { vehicle, span } = years[Math.floor(row / variants.length)]
    return { vehicle: { ...stated, ...vehicle, ...variant.vehicle, ...number.vehicle }, span, variant: variant.said, numbers: number.said }
  })
  return { specimens, rule: sayRule(editions, stated), leftOut: total - specimens.length }
}

type Span = YearSpan | { readonly year: number }
type Choice = { readonly vehicle: Vehicle; readonly said: string }

function yearOf(span: Span): Vehicle {
  const year = 'year' in span ? span.year : span.from ?? span.to
  return year === undefined ? {} : { year }
}

function spanOf(span: Span): Specimen['span'] {
  if ('year' in span) return { from: span.year, to: span.year }
  return { ...span.from !== undefined && { from: span.from }, ...span.to !== undefined && { to: span.to } }
}

/** Every market without options, and with each of them alone. */
function listVariants(record: WiringRecord, editions: Editions, stated: Vehicle): Choice[] {
  const open = openOptions(editions, stated)
  const fitted = [{ id: '', said: open.length > 0 ? 'no options' : '' }, ...open.map((id) => ({ id, said: `with ${id}` }))]
  return listMarkets(record, editions, stated).flatMap((market) => fitted.map(({ id, said }) => ({
    vehicle: { ...market.vehicle, options: { ...stated.options, ...Object.fromEntries(open.map((option) => [option, option === id])) } },
    said: [market.said, said].filter((word) => word !== '').join(', '),
  })))
}

function openOptions({ options }: Editions, stated: Vehicle): string[] {
  return options.filter((id) => stated.options?.[id] === undefined)
}

/** The markets that make a difference, after one of those that make none. */
function listMarkets({ markets = {} }: WiringRecord, { markets: named }: Editions, stated: Vehicle): Choice[] {
  if (stated.market !== undefined || named.length === 0) return [{ vehicle: {}, said: '' }]
  const other = Object.keys(markets).find((id) => !named.includes(id))
  return [...other === undefined ? [] : [other], ...named].map((id) => ({ vehicle: { market: id }, said: `market ${id}` }))
}

interface Series { readonly id: string; readonly numbers: readonly string[] }

function listSeries({ serials }: Editions, stated: Vehicle): Series[] {
  const ids = [...new Set(serials.map((border) => border.series))].filter((id) => stated.serials?.[id] === undefined)
  return ids.map((id) => ({ id, numbers: numbersOf(serials, id) }))
}

/** The combinations of one number from each span of each series: as many as can be checked. */
function listNumbers(series: readonly Series[], stated: Vehicle): Choice[] {
  const none: Choice = { vehicle: {}, said: '' }
  return series.reduce((choices, { id, numbers }) => choices.flatMap(({ vehicle, said }) => numbers.map((number) => ({
    vehicle: { serials: { ...stated.serials, ...vehicle.serials, [id]: number } }, said: [...said === '' ? [] : [said], `${id} ${number}`].join(', '),
  }))).slice(0, MOST_SPECIMENS), [none])
}

/** A number before the first border, and the first number behind each. */
function numbersOf(serials: Editions['serials'], series: string): string[] {
  const starts = serials.filter((border) => border.series === series).map(({ serial, side }) => side === 'from' ? serial : stepNumber(serial, 1))
  return [...new Set([stepNumber(starts[0], -1), ...starts])]
}

/** The number before or after, its prefix and its leading zeros kept; itself where it has no digits or is the first. */
function stepNumber(serial: string, step: 1 | -1): string {
  return serial.replace(/\d+(?=\D*$)/, (digits) => {
    const next = BigInt(digits) + BigInt(step)
    return next < 0n ? digits : String(next).padStart(digits.length, '0')
  })
}

function sayRule(editions: Editions, stated: Vehicle): string {
  const varied = [
    ...stated.year === undefined && editions.years.length > 1 ? ['every span of years over which the record stays the same'] : [],
    ...stated.market === undefined && editions.markets.length > 0 ? ['every market'] : [],
  ]
  return [
    `Checked is one vehicle for ${varied.length > 0 ? varied.join(' and ') : 'every edition'}`, openOptions(editions, stated).length > 0 ? ', without options and with each option alone' : '', '.',
    listSeries(editions, stated).length > 0 ? ' One serial number stands for each span of them; a year and a number that give a wiring with others, but not together, are taken to be of no vehicle.' : '',
  ].join('')
}
