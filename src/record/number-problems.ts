import { isObject, type Path } from './path.ts'
import { makeProblem, type Problem } from './problem.ts'

/** No quantity of a vehicle is larger, in any unit of the record, and none smaller without being nothing. */
const LARGEST = 1e9
const SMALLEST = 1e-9

/**
 * Numbers so large or so small that they can only be slips, and that no circuit can be computed with: beside an ohm, sums
 * with them lose every digit. What claims and drawings hold is computed with by nobody.
 */
export function findNumberProblems(document: unknown): Problem[] {
  if (!isObject(document)) return []
  return Object.entries(document).flatMap(([key, value]) => key === 'claims' || key === 'layout' ? [] : listOutside(value, [key]))
}

/** The numbers inside a value that lie outside. */
export function listOutside(value: unknown, at: Path): Problem[] {
  if (typeof value === 'number') return isInside(value) ? [] : [makeProblem(at, `0, or a number from ${SMALLEST} to ${LARGEST} in size`, String(value))]
  if (Array.isArray(value)) return value.flatMap((entry, i) => listOutside(entry, [...at, String(i)]))
  return isObject(value) ? Object.entries(value).flatMap(([key, entry]) => listOutside(entry, [...at, key])) : []
}

/** What is no number at all is told by the shape. */
function isInside(value: number): boolean {
  const size = Math.abs(value)
  return size === 0 || !Number.isFinite(size) || (size >= SMALLEST && size <= LARGEST)
}
