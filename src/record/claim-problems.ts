import type { Census } from './census.ts'
import { COLLECTIONS, isCollection } from './collections.ts'
import { inIdOrder } from './compare-ids.ts'
import { nearest } from './nearest.ts'
import { valueAt, type Path } from './path.ts'
import { makeProblem, showValue, type Problem } from './problem.ts'
import { findItemProblem } from './reference-problems.ts'
import { definitionOf, keysOf, schemaFor, schemaUnder, type Schema } from './schema-walk.ts'

/**
 * Claims about something that the record has no place for. A claim may be about a value that is absent, and about
 * whether an item is there at all; so an item named alone need not exist.
 */
export function findClaimProblems(census: Census, schema: Schema): Problem[] {
  return inIdOrder(census.sound.claims).flatMap(([id, { about }]) => findAboutProblem(census, schema, ['claims', id, 'about'], about))
}

function findAboutProblem(census: Census, schema: Schema, at: Path, about: Path): Problem[] {
  const [collection, id] = about
  if (isCollection(collection) && about.length > 2) {
    const missing = findItemProblem(census, [...at, '1'], id, [collection])
    if (missing.length > 0 || !census.isSound(id)) return missing
  }
  let shape: Schema | undefined = schema
  for (let i = 0; i < about.length; i++) {
    const names: readonly string[] = i === 0 ? [...COLLECTIONS, ...keysOf(schema)] : keysOf(shape)
    const isObject: boolean = definitionOf(shape).type === 'object' && names.length > 0
    if (isObject && !names.includes(about[i])) return [makeProblem([...at, String(i)], `one of ${[...new Set(names)].join(', ')}`, showValue(about[i]), () => nearest(about[i], names))]
    const under: Schema | undefined = schemaUnder(shape, about[i])
    if (!under) return []
    shape = schemaFor(under, valueAt(census.sound, about.slice(0, i + 1)))
  }
  return []
}
