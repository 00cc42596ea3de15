import { checkPresence } from './check-presence.ts'
import { mapIn, type Collection } from './collections.ts'
import { compareIds, inIdOrder } from './compare-ids.ts'
import { findExceptions } from './find-exceptions.ts'
import { findOverlaps } from './find-overlaps.ts'
import { showFits } from './fits.ts'
import { followPosts } from './follow-posts.ts'
import { matchHalves } from './match-halves.ts'
import type { PartKind } from './part-kind.ts'
import { showPath, type JsonObject, type Path } from './path.ts'
import type { Problem } from './problem.ts'
import { resolveDuties } from './resolve-duties.ts'
import { keepFittingLies, resolveLooms } from './resolve-looms.ts'
import { resolvePart } from './resolve-part.ts'
import { assume, clash, editionOf, holds, keepFitting, party, type CannotTell, type Conflict, type Resolving } from './resolving.ts'
import type { Fits, Unknown, Vehicle, WiringRecord } from './schema.ts'
import { findVehicleProblems } from './vehicle-problems.ts'
import type { EngineSpeeds, Wiring, WiringPart } from './wiring.ts'

/**
 * The wiring, or everything at once that keeps the record from giving one: what is wrong with the description of the
 * vehicle, what conflicts, and what cannot be told before more is found out.
 */
export type Resolved =
  | { readonly ok: true; readonly wiring: Wiring }
  | {
    readonly ok: false
    readonly problems: readonly Problem[]
    readonly conflicts: readonly Conflict[]
    readonly cannotTell: readonly CannotTell[]
  }

/** The record resolved for one vehicle: only what fits it, with nothing conditional left. Kinds are those it was read with. */
export function resolveVehicle(record: WiringRecord, vehicle: Vehicle, kinds: readonly PartKind[]): Resolved {
  const problems = findVehicleProblems(vehicle, record)
  if (problems.length > 0) return { ok: false, problems, conflicts: [], cannotTell: [] }
  const resolving: Resolving = { record, vehicle, exceptions: findExceptions(record, vehicle), conflicts: [], cannotTell: [], assumed: [] }
  const kept = keepItems(resolving)
  const wiring = buildWiring(resolving, vehicle, kept, kinds)
  const { cannotTell } = resolving
  // A vehicle that no supply is meant for is none of the record's: what else does not fit together follows from that.
  const noSupply = resolving.conflicts.find(({ what }) => what === 'no supply')
  const conflicts = noSupply ? [noSupply] : resolving.conflicts
  return conflicts.length + cannotTell.length > 0 ? { ok: false, problems, conflicts, cannotTell } : { ok: true, wiring }
}

const CONDITIONAL = [
  'metals', 'parts', 'splices', 'connectors', 'halves', 'wires', 'fixings', 'looms', 'places', 'passages', 'runs', 'duties', 'limits',
] as const satisfies readonly Collection[]

/** The record with only the items that fit; two of one role in a collection are a conflict. */
function keepItems(resolving: Resolving): WiringRecord {
  const kept: { [key: string]: unknown } = { ...resolving.record }
  for (const collection of CONDITIONAL) {
    const map = keepFitting(resolving, mapIn(resolving.record, collection) as Readonly<Record<string, { fits?: Fits }>>, [collection])
    findSharedRoles(resolving, collection, map as unknown as Readonly<Record<string, JsonObject>>)
    kept[collection] = map
  }
  const items = kept as unknown as WiringRecord
  return { ...items, looms: keepFittingLies(resolving, items.looms) }
}

function findSharedRoles(resolving: Resolving, collection: Collection, map: Readonly<Record<string, JsonObject>>): void {
  const byRole = new Map<unknown, string[]>()
  for (const [id, { role }] of inIdOrder(map)) if (role !== undefined) byRole.set(role, [...byRole.get(role) ?? [], id])
  for (const [role, ids] of byRole) {
    if (ids.length < 2) continue
    const parties = ids.map((id) => party([collection, id], map[id].fits as unknown as Fits | undefined))
    clash(resolving, [collection, ids[1]], 'same role', `${ids.join(' and ')} both are "${String(role)}" in this vehicle`, parties)
  }
}

function resolveParts(resolving: Resolving, kept: WiringRecord, kinds: readonly PartKind[]): ReadonlyMap<string, WiringPart> {
  const byName = new Map(kinds.map((kind) => [kind.kind, kind]))
  return new Map(inIdOrder(kept.parts).flatMap(([id, part]) => {
    const kind = byName.get(part.kind)
    if (!kind) throw new RangeError(`no part kind ${part.kind} for part ${id} of record ${resolving.record.id}`)
    const resolved = resolvePart(resolving, id, part, kind)
    return resolved ? [[id, resolved] as const] : []
  }))
}

function buildWiring(resolving: Resolving, vehicle: Vehicle, kept: WiringRecord, kinds: readonly PartKind[]): Wiring {
  const { record } = resolving
  // First, since a vehicle of a year that the record does not cover gets no supply, and then much else is missing.
  const { supply, systemV, earth } = resolveSupply(resolving)
  const parts = resolveParts(resolving, kept, kinds)
  const engine = resolveEngine(resolving)
  const { wires, fixings } = checkPresence(resolving, kept, parts)
  const metals = mapItems(kept.metals, (id, { title }) => ({ id, title }))
  const { matings, unmatched } = matchHalves(resolving, kept, wires)
  const joined = { supply, earth, metals, parts, wires, fixings, matings }
  return {
    recordId: record.id, title: record.title, vehicle, systemV, earth, engine, assume: record.assume ?? {},
    metals, parts,
    splices: mapItems(kept.splices, (id, { place, loom }) => ({ id, ...place !== undefined && { place }, ...loom !== undefined && { loom } })),
    wires, fixings, matings, unmatched, unjoined: listUnjoined(joined), shorted: followPosts(resolving, joined, kinds), overlapping: findOverlaps(resolving, joined),
    looms: resolveLooms(resolving, kept),
    places: mapItems(kept.places, withoutFits), passages: mapItems(kept.passages, withoutFits), runs: mapItems(kept.runs, withoutFits),
    ...resolveDuties(resolving, kept, parts),
    leftOut: listLeftOut(record, kept),
    assumed: [...resolving.assumed].sort((a, b) => compareIds(a.path, b.path)),
    layout: { ...record.layout?.order && { order: record.layout.order }, ...record.layout?.circuits && { circuits: record.layout.circuits } },
  }
}

function listLeftOut(record: WiringRecord, kept: WiringRecord): Map<string, string> {
  return new Map(CONDITIONAL.flatMap((collection) => inIdOrder(mapIn(record, collection))
    .filter(([id]) => !Object.hasOwn(mapIn(kept, collection), id))
    .map(([id, item]) => [id, showFits((item as { readonly fits?: Fits }).fits)] as const)))
}

/** The ends of parts that no wire, fixing or connector joins to anything. */
function listUnjoined({ parts, wires, fixings, matings }: Pick<Wiring, 'parts' | 'wires' | 'fixings' | 'matings'>): string[] {
  const joined = new Set([
    ...[...wires.values()].flatMap(({ ends }) => ends.map(({ at }) => at)),
    ...[...fixings.values(), ...matings.values()].flatMap(({ joins }) => joins),
  ])
  return [...parts.values()].flatMap(({ id, terminals }) => [...terminals.keys()].map((terminal) => `${id}:${terminal}`)).filter((point) => !joined.has(point))
}

function mapItems<T, R>(map: Readonly<Record<string, T>> | undefined, make: (id: string, entry: T) => R): ReadonlyMap<string, R> {
  return new Map(inIdOrder(map).map(([id, entry]) => [id, make(id, entry)]))
}

function withoutFits<T extends { readonly fits?: Fits }>(_id: string, { fits: _fits, ...rest }: T): Omit<T, 'fits'> {
  return rest
}

/** Where the vehicle is older or newer than any of the supplies, that is what is wrong. */
function sayNoSupply({ record, vehicle: { year } }: Resolving): string {
  const years = Object.values(record.supply).flatMap(({ fits = [{}] }) => fits.map((condition) => condition.years ?? {}))
  const from = Math.min(...years.map((span) => span.from ?? -Infinity)), to = Math.max(...years.map((span) => span.to ?? Infinity))
  if (year === undefined || (year >= from && year <= to)) return 'no supply is meant for this vehicle'
  const covered = showFits([{ years: { ...Number.isFinite(from) && { from }, ...Number.isFinite(to) && { to } } }])
  return `the record covers ${covered}, and this vehicle is of ${year}`
}

/** Exactly one supply must be left. What is given back beside a conflict is never shown. */
function resolveSupply(resolving: Resolving): Pick<Wiring, 'systemV' | 'earth'> & { readonly supply: string } {
  const left = listFitting(resolving, resolving.record.supply, 'supply')
  const parties = inIdOrder(left.length > 1 ? Object.fromEntries(left) : resolving.record.supply).map(([id, { fits }]) => party(['supply', id], fits))
  if (left.length > 1) clash(resolving, ['supply'], 'several supplies', `this vehicle has ${left.length} supplies`, parties)
  const isOpen = resolving.cannotTell.some(({ at }) => at[0] === 'supply')
  if (left.length === 0 && !isOpen) clash(resolving, ['supply'], 'no supply', sayNoSupply(resolving), parties)
  const [id, { systemV, earth }] = left[0] ?? ['', USUAL_SUPPLY]
  return { supply: id, systemV: knownOr(resolving, ['supply', id, 'systemV'], systemV, 12, 'find out the volts of the system'), earth: knownOr(resolving, ['supply', id, 'earth'], earth, 'negative', 'find out which pole is earthed') }
}

const USUAL_SUPPLY = { systemV: 12, earth: 'negative' } as const

/** Nothing can be said of a vehicle whose supply is not known: what to find out is asked for. */
function knownOr<T>(resolving: Resolving, at: Path, value: T | Unknown, usual: T, ask: string): T {
  if (value !== 'unknown') return value as T
  resolving.cannotTell.push({ at, ask: [ask], sentence: `${showPath(at)}: it is stated as unknown; ${ask}.` })
  return usual
}

const USUAL_ENGINE: EngineSpeeds = { crankingRpm: 150, idleRpm: 700, cruiseRpm: 2500 }

function resolveEngine(resolving: Resolving): EngineSpeeds {
  const left = listFitting(resolving, resolving.record.engine, 'engine')
  if (left.length > 1) {
    const parties = left.map(([id, { fits }]) => party(['engine', id], fits))
    clash(resolving, ['engine'], 'several engine rows', `this vehicle has ${left.length} rows of engine speeds`, parties)
  }
  if (left.length > 0) {
    return readSpeeds(resolving, left[0][1], 'stated as unknown')
  }
  return readSpeeds(resolving, {}, 'the record states no engine speeds for this vehicle')
}

function readSpeeds(resolving: Resolving, stated: { readonly [K in keyof EngineSpeeds]?: number | Unknown }, why: string): EngineSpeeds {
  const speed = (key: keyof EngineSpeeds): number => {
    const value = stated[key]
    if (typeof value === 'number') return value
    assume(resolving, { path: `engine.${key}`, value: USUAL_ENGINE[key], why, source: 'common practice, no source' })
    return USUAL_ENGINE[key]
  }
  return { crankingRpm: speed('crankingRpm'), idleRpm: speed('idleRpm'), cruiseRpm: speed('cruiseRpm') }
}

function listFitting<T extends { readonly fits?: Fits }>(
  resolving: Resolving, map: Readonly<Record<string, T>> | undefined, collection: Collection,
): [string, T][] {
  return inIdOrder(map).filter(([id, { fits }]) => holds(resolving, fits, [collection, id], editionOf(resolving, id)))
}
