// Damages after which most records are records still: what they say of the vehicle is odd, not how they say it.
import type { Chance, Damage, Loose } from './damage.ts'

/** Does one of the damages that the document has a place for. */
export function bendDocument(document: Loose, chance: Chance): string {
  for (;;) {
    const done = chance.pick(BENDS)(document, chance)
    if (done !== undefined) return done
  }
}

/** Numbers at and beyond the ends of every range. */
const NUMBERS = [0, 1e-300, 5e-324, 1e-12, 1e-7, 1e-6, 2e-6, 1e-3, 0.5, 1, 6.3, 24, 100, 400, 1e4, 1e6, 1e9, 1e15, 1e100, 1.7e308, -1, -1e-9]

const BENDS: readonly Damage[] = [
  /** One end of a wire or a fixing goes to another point of the vehicle. */
  function moveEnd(document, chance) {
    const end = pickEnd(document, chance)
    if (!end) return undefined
    const to = chance.pick(listPoints(document))
    end.put(to)
    return `${end.name} goes to ${to}`
  },
  function shortWire(document, chance) {
    const id = pickKey(document.wires, chance)
    if (id === undefined) return undefined
    const [from, to] = [chance.pick(listPoints(document)), chance.pick(listPoints(document))]
    document.wires[id] = { ends: [{ at: from, jointOhm: 0 }, { at: to, jointOhm: 0 }], ohm: 0 }
    return `${id} has no ohms from ${from} to ${to}`
  },
  function loosen(document, chance) {
    const id = pickKey(document.wires, chance)
    if (id === undefined) return undefined
    const sides = chance.share() < 0.5 ? [0, 1] : [chance.below(2)]
    for (const side of sides) document.wires[id].ends[side] = { at: { place: 'unknown', state: chance.pick(['loose', 'unknown']) } }
    return `${id} is loose at ${sides.length} ends`
  },
  function assumeNothing(document) {
    document.assume = { jointOhm: 0, contactOhm: 0, relayContactOhm: 0, fixingOhm: 0, fuseOhm: 0, wireOhm: 0 }
    return 'every conductor is ideal'
  },
  /** A number anywhere takes an extreme value. */
  function changeNumber(document, chance) {
    const places = listPlaces(document).filter(({ value, path }) => typeof value === 'number' && path[0] !== 'version')
    if (places.length === 0) return undefined
    const { holder, key, path } = chance.pick(places)
    holder[key] = chance.pick(NUMBERS)
    return `${path.join('.')} is ${String(holder[key])}`
  },
  /** A parameter of a part takes an extreme value; whether the kind has it is left to luck. */
  function addNumber(document, chance) {
    const id = pickKey(document.parts, chance)
    if (id === undefined) return undefined
    const param = chance.pick(PARAMS)
    document.parts[id].params = { ...document.parts[id].params, [param]: chance.pick(NUMBERS) }
    return `${id}.${param} is ${String(document.parts[id].params[param])}`
  },
  function forget(document, chance) {
    const id = pickKey(document.parts, chance)
    const param = id === undefined ? undefined : pickKey(document.parts[id].params, chance)
    if (id === undefined || param === undefined) return undefined
    if (chance.share() < 0.5) Reflect.deleteProperty(document.parts[id].params, param)
    else document.parts[id].params[param] = 'unknown'
    return `${id}.${param} is forgotten`
  },
  function removeSource(document) {
    const batteries = Object.keys(document.parts).filter((id) => document.parts[id].kind === 'battery')
    if (batteries.length === 0) return undefined
    for (const id of batteries) document.parts[id] = { kind: 'resistor', title: id, terminals: { '+': { is: 'a' }, '-': { is: 'b' } } }
    return 'a resistor stands where the battery was'
  },
  /** A second battery, either way round. */
  function addBattery(document, chance) {
    document.parts.other = { kind: 'battery', title: 'Other', params: { emfV: chance.pick([6, 12, 24]), ohm: chance.pick([0, 0.01]) } }
    for (const pole of ['+', '-']) document.wires = { ...document.wires, [`other-${pole}`]: { ends: [{ at: `other:${pole}` }, { at: chance.pick(listPoints(document)) }], ohm: chance.pick([0, 0.01]) } }
    return 'a second battery is joined in'
  },
  function copyWire(document, chance) {
    const id = pickKey(document.wires, chance)
    if (id === undefined) return undefined
    const copies = chance.pick([1, 5, 40])
    for (let i = 0; i < copies; i++) document.wires[`copy${i}`] = { ...document.wires[id], role: undefined }
    return `${id} is there ${copies} times more`
  },
  function copyPart(document, chance) {
    const id = pickKey(document.parts, chance)
    if (id === undefined) return undefined
    document.parts.twin = { ...document.parts[id], role: undefined }
    return `${id} has a twin that is joined to nothing`
  },
  function turnSupply(document, chance) {
    const id = pickKey(document.supply, chance)
    if (id === undefined) return undefined
    document.supply[id] = { ...document.supply[id], systemV: chance.pick([6, 12, 24]), earth: chance.pick(['negative', 'positive', 'none', 'unknown']) }
    return `the supply is ${document.supply[id].systemV} V, earth ${document.supply[id].earth}`
  },
  function addFits(document, chance) {
    const collection = chance.pick(['parts', 'wires', 'fixings', 'metals', 'splices', 'looms', 'halves', 'supply'])
    const id = pickKey(document[collection], chance)
    if (id === undefined) return undefined
    document[collection][id].fits = chance.pick([[{}], [{ years: { from: 1955 } }], [{ years: { to: 1900 } }], [{ years: { from: 1955, to: 1955 } }, {}]])
    return `${collection}.${id} is there in some years`
  },
  function removeItem(document, chance) {
    const collection = chance.pick(['wires', 'fixings', 'engine', 'claims', 'duties', 'limits', 'runs', 'passages'])
    const id = pickKey(document[collection], chance)
    if (id === undefined) return undefined
    Reflect.deleteProperty(document[collection], id)
    return `${collection}.${id} is gone`
  },
  /** Everything leads to one point. */
  function gatherEnds(document, chance) {
    const to = chance.pick(listPoints(document))
    const ends = listEnds(document).filter(() => chance.share() < 0.5)
    for (const end of ends) end.put(to)
    return `${ends.length} ends go to ${to}`
  },
  /** Text fields hold what no one would write. */
  function oddText(document, chance) {
    const places = listPlaces(document).filter(({ key, path }) => ['title', 'note', 'tag', 'about', 'why'].includes(key) && path.length > 1)
    if (places.length === 0) return undefined
    const { holder, key, path } = chance.pick(places)
    holder[key] = chance.pick(ODD_TEXTS)
    return `${path.join('.')} is odd`
  },
]

const PARAMS = ['ohm', 'powerW', 'ratedV', 'ratedA', 'coldRatio', 'emfV', 'cells', 'chargePercent', 'tempC', 'capacityAh', 'counterVPerCell', 'chargeOhm', 'ratingA', 'blowA', 'pullV', 'pullAt', 'releaseAt', 'pullMs', 'forwardV', 'fieldOhm', 'armatureOhm', 'cutInRpm', 'ratio', 'stalledOhm']

const ODD_TEXTS = ['', ' ', '\u202Eright to left', 'e\u0301\u0327\u0301', '\uD800', '\u0000', '🔧'.repeat(200), 'x'.repeat(2000), '__proto__', '</script>', '%s%n', '\u2028']

/** One end of a wire or a fixing. */
interface End { readonly name: string; put(to: string): void }

function listEnds(document: Loose): End[] {
  const wires = Object.entries<Loose>(document.wires ?? {}).flatMap(([id, { ends }]) => [0, 1].map((i): End => ({ name: `${id}.${i + 1}`, put: (to) => { ends[i] = { ...ends[i], at: to } } })))
  const fixings = Object.entries<Loose>(document.fixings ?? {}).flatMap(([id, { joins }]) => [0, 1].map((i): End => ({ name: `${id}.${i + 1}`, put: (to) => { joins[i] = to } })))
  return [...wires, ...fixings]
}

function pickEnd(document: Loose, chance: Chance): End | undefined {
  const ends = listEnds(document)
  return ends.length === 0 ? undefined : chance.pick(ends)
}

/** Every point that the record itself names, so that moving to it breaks nothing. */
function listPoints(document: Loose): string[] {
  const ends = Object.values<Loose>(document.wires ?? {}).flatMap(({ ends: both }) => both.map(({ at }: Loose) => at))
  const named = [...ends, ...Object.values<Loose>(document.fixings ?? {}).flatMap(({ joins }) => joins), ...Object.keys(document.metals ?? {}), ...Object.keys(document.splices ?? {})]
  const points = [...new Set(named.filter((point) => typeof point === 'string'))] as string[]
  return points.length === 0 ? ['nowhere'] : points
}

export function pickKey(map: Loose, chance: Chance): string | undefined {
  const keys = Object.keys(map ?? {})
  return keys.length === 0 ? undefined : chance.pick(keys)
}

export interface Place { readonly holder: Loose; readonly key: string; readonly path: readonly string[]; readonly value: unknown }

/** Every value of a document with what holds it. */
export function listPlaces(holder: Loose, above: readonly string[] = []): Place[] {
  if (typeof holder !== 'object' || holder === null) return []
  return Object.entries<unknown>(holder).flatMap(([key, value]) => {
    const path = [...above, key]
    return [{ holder, key, path, value }, ...listPlaces(value, path)]
  })
}
