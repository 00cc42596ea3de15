import { valueAt } from './path.ts'
import type { Condition, Edition, Fits, WiringRecord } from './schema.ts'
import { compareSerials, placeSerial, type SerialSeries } from './serial-order.ts'
import type { Assumption } from './wiring.ts'

/**
 * Whether something applies to a vehicle of this edition. Where that cannot be told, `ask` says what to find out. What
 * had to be taken as usual for the answer to hold is in `assumed`.
 */
export interface Judgement {
  readonly answer: 'yes' | 'no' | 'cannot tell'
  readonly ask: readonly string[]
  readonly assumed: readonly Assumption[]
}

type Answer = Judgement['answer']

/** Judges by any of (all of …) in three-valued logic; what has no `fits` applies to every vehicle. */
export function judgeFits(fits: Fits | undefined, edition: Edition, record: WiringRecord): Judgement {
  if (!fits) return YES
  return anyOf(fits.map((condition) => judgeCondition(condition, edition, record)))
}

const YES: Judgement = { answer: 'yes', ask: [], assumed: [] }
const NO: Judgement = { answer: 'no', ask: [], assumed: [] }

function judgeCondition(condition: Condition, edition: Edition, record: WiringRecord): Judgement {
  const { years, serials, markets, with: wanted = [], without = [] } = condition
  return allOf([
    ...years ? [judgeYears(years, edition)] : [],
    ...serials ? [judgeSerials(serials, edition, record)] : [],
    ...markets ? [judgeMarkets(markets, edition)] : [],
    ...wanted.map((option) => judgeOption(option, true, edition, record)),
    ...without.map((option) => judgeOption(option, false, edition, record)),
  ])
}

function judgeYears({ from = -Infinity, to = Infinity }: NonNullable<Condition['years']>, { year }: Edition): Judgement {
  if (year === undefined) return cannotTell('find out the year')
  return answer(year >= from && year <= to)
}

function judgeMarkets(markets: readonly string[], { market }: Edition): Judgement {
  return market === undefined ? cannotTell('find out for which market the vehicle was made') : answer(markets.includes(market))
}

function judgeSerials(span: NonNullable<Condition['serials']>, edition: Edition, record: WiringRecord): Judgement {
  const series = valueAt(record.serials, [span.series]) as SerialSeries | undefined
  if (!series) throw new RangeError(`no serial series ${span.series} in record ${record.id}`)
  const serial = valueAt(edition.serials, [span.series]) as string | undefined
  if (serial === undefined) return cannotTell(`find out the number of the series "${series.title}"`)
  const placed = placeSerial(serial, series)
  if (!placed) return cannotTell(`check the number ${serial}: it is none of the series "${series.title}"`)
  const limit = (text: string | undefined) => text === undefined ? undefined : placeSerial(text, series)
  const [from, to] = [limit(span.from), limit(span.to)]
  return answer((!from || compareSerials(from, placed) <= 0) && (!to || compareSerials(placed, to) <= 0))
}

/** An option that the vehicle does not state is taken as the record says is usual, if it does. */
function judgeOption(id: string, wanted: boolean, edition: Edition, record: WiringRecord): Judgement {
  const option = valueAt(record.options, [id]) as { title: string, usual?: boolean } | undefined
  if (!option) throw new RangeError(`no option ${id} in record ${record.id}`)
  const stated = valueAt(edition.options, [id]) as boolean | undefined
  if (stated !== undefined) return answer(stated === wanted)
  if (option.usual === undefined) return cannotTell(`is the option "${option.title}" fitted?`)
  const why = `the vehicle does not state the option "${option.title}", which is usually ${option.usual ? 'fitted' : 'not fitted'}`
  const assumption: Assumption = { path: `options.${id}`, value: option.usual, why, source: 'the record' }
  return { ...answer(option.usual === wanted), assumed: [assumption] }
}

function answer(holds: boolean): Judgement {
  return holds ? YES : NO
}

function cannotTell(ask: string): Judgement {
  return { answer: 'cannot tell', ask: [ask], assumed: [] }
}

function allOf(parts: readonly Judgement[]): Judgement {
  return combine(parts, 'no', 'yes')
}

function anyOf(parts: readonly Judgement[]): Judgement {
  return combine(parts, 'yes', 'no')
}

/** One part that decides is enough, one without assumptions for choice; if none does, one that cannot be told leaves all open. */
function combine(parts: readonly Judgement[], decides: Answer, otherwise: Answer): Judgement {
  const deciding = parts.filter((part) => part.answer === decides)
  if (deciding.length > 0) return deciding.find(({ assumed }) => assumed.length === 0) ?? deciding[0]
  const open = parts.some((part) => part.answer === 'cannot tell')
  return {
    answer: open ? 'cannot tell' : otherwise,
    ask: [...new Set(parts.flatMap(({ ask }) => ask))],
    assumed: open ? [] : parts.flatMap(({ assumed }) => assumed),
  }
}

/** A condition in a few words, for sentences: `1950 to 1962, with tow bar`. */
export function showFits(fits: Fits | undefined): string {
  return fits ? fits.map(showCondition).join('; or ') : 'every vehicle'
}

function showCondition({ years, serials, markets, with: wanted, without }: Condition): string {
  const words = [
    ...years ? [showSpan(years.from, years.to)] : [],
    ...serials ? [`${serials.series} ${showSpan(serials.from, serials.to)}`] : [],
    ...markets ? [`market ${markets.join(' or ')}`] : [],
    ...wanted ? [`with ${wanted.join(' and ')}`] : [],
    ...without ? [`without ${without.join(' and ')}`] : [],
  ]
  return words.length === 0 ? 'every vehicle' : words.join(', ')
}

function showSpan(from: number | string | undefined, to: number | string | undefined): string {
  if (from === undefined) return to === undefined ? 'all' : `up to ${to}`
  if (to === undefined) return `${from} and later`
  return from === to ? String(from) : `${from} to ${to}`
}
