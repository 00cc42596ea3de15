import { inIdOrder } from './compare-ids.ts'
import type { Edit } from './edit.ts'
import { isSameJson, valueAt, type Json, type Path } from './path.ts'
import type { Claim, WiringRecord } from './schema.ts'

/** What one source says of a fact, and whether the accepted value is the same. */
export interface Saying extends Claim { readonly id: string; readonly agrees: boolean }

/** A fact with its accepted value (undefined where the record states none) and every claim about it. */
export interface ClaimedFact {
  readonly path: Path
  readonly accepted: Json | undefined
  readonly sayings: readonly Saying[]
  /** A source says something else than the accepted value. */
  readonly isDisputed: boolean
}

/** What the sources say of the fact at this path. */
export function listClaims(record: WiringRecord, path: Path): ClaimedFact {
  return factOf(record, path, inIdOrder(record.claims).filter(([, { about }]) => isSameJson(about, path)))
}

/** Every fact of which any source says anything, in the order of its first claim. */
export function listClaimedFacts(record: WiringRecord): ClaimedFact[] {
  const byPath = new Map<string, [string, Claim][]>()
  for (const [id, claim] of inIdOrder(record.claims)) {
    const key = JSON.stringify(claim.about)
    byPath.set(key, [...byPath.get(key) ?? [], [id, claim]])
  }
  return [...byPath.values()].map((claims) => factOf(record, claims[0][1].about, claims))
}

/** The edit that makes what a claim says the accepted value, or undefined where it is that already. The claim stays. */
export function acceptClaim(record: WiringRecord, claimId: string): Edit | undefined {
  const claim = new Map(Object.entries(record.claims ?? {})).get(claimId)
  if (!claim) throw new RangeError(`no claim ${claimId} in record ${record.id}`)
  const { about: path, says } = claim
  const from = valueAt(record, path)
  if (agreesWith(from, says)) return undefined
  if (from === undefined) return { kind: 'put', path, value: says }
  return says === null ? { kind: 'remove', path } : { kind: 'set', path, from, to: says }
}

function factOf(record: WiringRecord, path: Path, claims: readonly (readonly [string, Claim])[]): ClaimedFact {
  const accepted = valueAt(record, path)
  const sayings = claims.map(([id, claim]): Saying => ({ id, ...claim, agrees: agreesWith(accepted, claim.says) }))
  return { path, accepted, sayings, isDisputed: sayings.some(({ agrees }) => !agrees) }
}

/** A claim that says null says that there is none. */
function agreesWith(accepted: Json | undefined, says: Json): boolean {
  return isSameJson(accepted ?? null, says)
}
