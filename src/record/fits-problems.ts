import type { Census } from './census.ts'
import { isCollection } from './collections.ts'
import { findFits } from './find-fits.ts'
import { valueAt, type Path } from './path.ts'
import { saidProblem, showNames, showValue, underPath, type Problem } from './problem.ts'
import { findItemProblem } from './reference-problems.ts'
import { fitsSchema, type Condition } from './schema.ts'
import { compareSerials, placeSerial, type SerialSeries } from './serial-order.ts'
import { checkShape } from './shape-problems.ts'

/** What is wrong with the conditions of a record: options, markets and series that are not there, spans that hold nothing. */
export function findFitsProblems(census: Census): Problem[] {
  return findFits(census.sound).flatMap(({ at, fits }) => {
    const shape = isInParameters(at) ? checkShape(fits, fitsSchema).problems : []
    if (shape.length > 0) return shape.map((problem) => underPath(at, problem))
    return fits.flatMap((condition, i) => findConditionProblems(census, [...at, String(i)], condition))
  })
}

/** A kind's own schema need not check the conditions inside its parameters. */
export function isInParameters([collection, , field, , inner]: Path): boolean {
  return isCollection(collection) && (field === 'params' || field === 'paramSets' && inner === 'params')
}

function findConditionProblems(census: Census, at: Path, condition: Condition): Problem[] {
  const { years, serials } = condition
  return [
    ...(['with', 'without'] as const).flatMap((key) => (condition[key] ?? []).flatMap((option, i) =>
      findItemProblem(census, [...at, key, String(i)], option, ['options']))),
    ...(condition.markets ?? []).flatMap((market, i) => findItemProblem(census, [...at, 'markets', String(i)], market, ['markets'])),
    ...years?.from !== undefined && years.to !== undefined && years.from > years.to ? [backwards([...at, 'years'], years.from, years.to)] : [],
    ...serials ? findSerialProblems(census, [...at, 'serials'], serials) : [],
  ]
}

function findSerialProblems(census: Census, at: Path, serials: NonNullable<Condition['serials']>): Problem[] {
  const missing = findItemProblem(census, [...at, 'series'], serials.series, ['serials'])
  const series = valueAt(census.sound.serials, [serials.series]) as unknown as SerialSeries | undefined
  if (missing.length > 0 || !series) return missing
  const problems = (['from', 'to'] as const).flatMap((end) => findSerialProblem([...at, end], serials[end], series))
  const [from, to] = [serials.from, serials.to].map((serial) => serial === undefined ? undefined : placeSerial(serial, series))
  return from && to && compareSerials(from, to) > 0 ? [...problems, backwards(at, serials.from, serials.to)] : problems
}

function findSerialProblem(at: Path, serial: string | undefined, series: SerialSeries): Problem[] {
  if (serial === undefined || placeSerial(serial, series)) return []
  const prefixes = series.prefixes ? `${showNames(series.prefixes)} and a number` : 'a number'
  return [saidProblem(at, prefixes, showValue(serial), `${serial} is no number of the series, which has ${prefixes}`)]
}

function backwards(at: Path, from: unknown, to: unknown): Problem {
  return saidProblem(at, 'from before to', `${from} to ${to}`, `${from} comes after ${to}, so this holds for nothing`)
}
