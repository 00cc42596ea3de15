import { compareIds, inIdOrder } from './compare-ids.ts'
import { isObject, type JsonObject } from './path.ts'
import type { PartKind, TerminalSpec } from './part-kind.ts'
import type { Params, RecordPart, RecordTerminal } from './schema.ts'
import type { WiringTerminal } from './wiring.ts'

/**
 * The ends of a part: those it declares, and those of its kind that it does not rename. A declared terminal stands for
 * the end of the kind named by `is`, or else for the one of its own name; what matches no end is a terminal that leads
 * nowhere inside, such as an unused blade. A name of its own is also its marking, unless the record states another.
 */
export function joinEnds(declared: readonly (readonly [string, RecordTerminal])[], own: readonly TerminalSpec[]): Map<string, WiringTerminal> {
  const specs = new Map(own.map((spec) => [spec.is, spec]))
  const ends = new Map<string, WiringTerminal>()
  for (const [id, { is = id, marking, form, title }] of declared) {
    ends.set(id, { id, is, marking: marking ?? (id === is ? specs.get(is)?.marking : undefined) ?? id, ...form !== undefined && { form }, ...title !== undefined && { title } })
  }
  const renamed = new Set([...ends.values()].map(({ is }) => is))
  for (const { is, marking } of own) if (!renamed.has(is) && !ends.has(is)) ends.set(is, { id: is, is, marking })
  return new Map([...ends].sort(([a], [b]) => compareIds(a, b)))
}

/** The ids of all ends that a part has in some vehicle or other; undefined where its parameters are not yet enough to tell. */
export function endsInAnyVehicle(part: RecordPart, kind: PartKind): ReadonlySet<string> | undefined {
  const own = kindEndsInAnyVehicle(part, kind)
  if (!own) return undefined
  const declared = inIdOrder(part.terminals)
  // A terminal that is there in some years only leaves the kind's own name to the others.
  const always = joinEnds(declared.filter(([, terminal]) => !terminal.fits), own)
  return new Set([...declared.map(([id]) => id), ...always.keys()])
}

/** The kind's own ends over every set of parameters that the part may have. */
export function kindEndsInAnyVehicle(part: RecordPart, kind: PartKind): readonly TerminalSpec[] | undefined {
  const ends = new Map<string, TerminalSpec>()
  let told = false
  for (const params of listParamVariants(part)) {
    if (!kind.params.safeParse(params).success) continue
    told = true
    for (const spec of kind.terminals(params)) ends.set(spec.is, spec)
  }
  return told ? [...ends.values()] : undefined
}

/** The parameters alone, with each set laid over, and with all sets laid over, each once on top; conditions left out. */
export function listParamVariants(part: RecordPart): readonly Params[] {
  const base = part.params ?? {}
  const sets = inIdOrder(part.paramSets).map(([, set]) => set.params)
  const all: Params = Object.assign({}, base, ...sets)
  const variants = [base, ...sets.map((set) => ({ ...base, ...set })), ...sets.map((set) => ({ ...all, ...set }))]
  return variants.map((params) => dropFits(params as JsonObject))
}

function dropFits(params: JsonObject): JsonObject {
  return Object.fromEntries(Object.entries(params).map(([key, value]) => [key, dropInside(value)]))
}

function dropInside(value: unknown): JsonObject[string] {
  if (Array.isArray(value)) return value.map(dropInside)
  if (!isObject(value)) return value as JsonObject[string]
  return Object.fromEntries(Object.entries(value).filter(([key]) => key !== 'fits').map(([key, inner]) => [key, dropInside(inner)]))
}
