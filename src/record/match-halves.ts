import { inIdOrder } from './compare-ids.ts'
import { clash, party, type Resolving } from './resolving.ts'
import type { WiringRecord } from './schema.ts'
import type { UnmatchedWay, WiringFixing, WiringWire } from './wiring.ts'

type Connector = NonNullable<WiringRecord['connectors']>[string]
type Half = NonNullable<WiringRecord['halves']>[string]
interface Mated { readonly id: string; readonly half: Half }

export interface Matched { readonly matings: ReadonlyMap<string, WiringFixing>; readonly unmatched: readonly UnmatchedWay[] }

/**
 * Joins the ways of the connector halves that are in this vehicle: a joint for each pair that meets, and the ways that
 * meet nothing, with the reason. Two halves on one side of a connector are a conflict.
 */
export function matchHalves(resolving: Resolving, kept: WiringRecord, wires: ReadonlyMap<string, WiringWire>): Matched {
  const matings = new Map<string, WiringFixing>()
  const mated = new Set<string>()
  for (const [id, connector] of inIdOrder(kept.connectors)) {
    const [a, b] = (['a', 'b'] as const).map((side) => findHalf(resolving, kept, id, side))
    if (!a || !b) continue
    for (const [wayA, wayB] of connector.ways ?? a.half.ways.map((way) => [way, way] as const)) {
      if (!a.half.ways.includes(wayA) || !b.half.ways.includes(wayB)) continue
      const joins = [`${a.id}:${wayA}`, `${b.id}:${wayB}`] as const
      matings.set(`${id}.${wayA}`, { id: `${id}.${wayA}`, title: connector.title, joins, ...connector.jointOhm !== undefined && { ohm: connector.jointOhm } })
      for (const point of joins) mated.add(point)
    }
  }
  return { matings, unmatched: listUnmatched(kept, wires, mated) }
}

function findHalf(resolving: Resolving, kept: WiringRecord, connector: string, side: 'a' | 'b'): Mated | undefined {
  const halves = inIdOrder(kept.halves).filter(([, half]) => half.connector === connector && half.side === side)
  if (halves.length > 1) {
    const parties = halves.map(([id, { fits }]) => party(['halves', id], fits))
    const said = `side ${side} has ${halves.length} halves in this vehicle: ${halves.map(([id]) => id).join(', ')}`
    clash(resolving, ['connectors', connector], 'two halves on one side', said, parties)
  }
  return halves.length === 0 ? undefined : { id: halves[0][0], half: halves[0][1] }
}

function listUnmatched(kept: WiringRecord, wires: ReadonlyMap<string, WiringWire>, mated: ReadonlySet<string>): UnmatchedWay[] {
  const ending = new Map<string, string[]>()
  for (const wire of wires.values()) for (const { at } of wire.ends) if (at !== null) ending.set(at, [...ending.get(at) ?? [], wire.id])
  return inIdOrder(kept.halves).flatMap(([id, half]) => half.ways.filter((way) => !mated.has(`${id}:${way}`)).map((way) =>
    ({ half: id, title: titleOfHalf(kept, id, half), way, wires: ending.get(`${id}:${way}`) ?? [], why: tellWhy(kept, half, way), ...isAlone(kept, half) && { isAlone: true as const } })))
}

function titleOfHalf({ connectors = {} }: WiringRecord, id: string, half: Half): string {
  return half.title ?? new Map(Object.entries(connectors)).get(half.connector)?.title ?? id
}

/** Ways of one half that meet nothing for one reason. */
export interface UnmatchedWays { readonly half: string; readonly title: string; readonly ways: readonly string[]; readonly wires: readonly string[]; readonly why: string; readonly isAlone: boolean }

/** The ways that meet nothing, those of one half and one reason together. */
export function groupUnmatched(unmatched: readonly UnmatchedWay[]): UnmatchedWays[] {
  const groups = new Map<string, UnmatchedWays>()
  for (const { half, title, way, wires, why, isAlone: alone = false } of unmatched) {
    const before = groups.get(`${half} ${why}`)
    groups.set(`${half} ${why}`, { half, title, ways: [...before?.ways ?? [], way], wires: [...before?.wires ?? [], ...wires], why, isAlone: alone })
  }
  return [...groups.values()]
}

function findFacing(kept: WiringRecord, { connector, side }: Half): [string, Half] | undefined {
  return inIdOrder(kept.halves).find(([, other]) => other.connector === connector && other.side !== side)
}

function isAlone(kept: WiringRecord, half: Half): boolean {
  return findFacing(kept, half) === undefined
}

function tellWhy(kept: WiringRecord, half: Half, way: string): string {
  const connector: Connector | undefined = new Map(Object.entries(kept.connectors ?? {})).get(half.connector)
  if (!connector) return `the connector ${half.connector} is not in this vehicle`
  const [mine, other] = half.side === 'a' ? [0, 1] as const : [1, 0] as const
  const facing = findFacing(kept, half)
  if (!facing) return 'the other half is absent'
  const pair = connector.ways?.find((ways) => ways[mine] === way)
  if (connector.ways && !pair) return 'the connector joins it to no way of the other half'
  return `the other half, ${facing[0]}, has no way ${pair?.[other] ?? way}`
}
