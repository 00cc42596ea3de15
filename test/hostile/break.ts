// Damages to what a record holds: other types, other names, nothing where something must be.
import { listPlaces, pickKey, type Place } from './bend.ts'
import type { Chance, Damage, Loose } from './damage.ts'

/** Does one of the damages that the document has a place for. */
export function breakDocument(document: Loose, chance: Chance): string {
  for (;;) {
    const done = chance.pick(BREAKS)(document, chance)
    if (done !== undefined) return done
  }
}

/** The document as JSON, with the raw pieces that `raw` put in it as they stand. */
export function writeDocument(document: Loose, indent: number): string {
  return JSON.stringify(document, null, indent).replace(/"@raw:((?:[^"\\]|\\.)*)"/g, (_, inner: string) => JSON.parse(`"${inner}"`) as string)
}

/** One of the document's values, or nothing where none is of the kind. */
function pickPlace(document: Loose, chance: Chance, suits: (place: Place) => boolean = () => true): Place | undefined {
  const places = listPlaces(document).filter(suits)
  return places.length === 0 ? undefined : chance.pick(places)
}

const isMap = ({ value }: Place) => typeof value === 'object' && value !== null && !Array.isArray(value)
const isFilled = (place: Place) => isMap(place) && Object.keys(place.value as Loose).length > 0
const isText = ({ value }: Place) => typeof value === 'string'
const isNumber = ({ value }: Place) => typeof value === 'number'

/** Stands for text that goes into the file unquoted. */
const raw = (text: string) => `@raw:${text}`

/** Names that objects answer to without having them, and names that mean something in a record. */
const INHERITED = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf', 'prototype', '__defineGetter__', 'isPrototypeOf']
const TAKEN = ['unknown', 'separate', 'bare', 'engine', '', ' ', '0', '-', 'a:b', 'a.b', 'a/b', '~a', 'ä', '\u0000', '🔧', 'x'.repeat(41), 'length', 'then']

const BREAKS: readonly Damage[] = [
  function otherType(document, chance) {
    const place = pickPlace(document, chance)
    if (!place) return undefined
    const { holder, key, path } = place
    holder[key] = chance.pick<unknown>([null, true, false, 0, -1, 1.5, '', 'unknown', 'yes', [], {}, [null], [[]], [{}], { '': 0 }, ['a', 'b'], [1, 2, 3], { fits: [] }])
    return `${path.join('.')} is another type`
  },
  function remove(document, chance) {
    const place = pickPlace(document, chance)
    if (!place) return undefined
    const { holder, key, path } = place
    if (Array.isArray(holder)) holder.splice(Number(key), 1)
    else Reflect.deleteProperty(holder, key)
    return `${path.join('.')} is gone`
  },
  /** A copy of one value stands in the place of another. */
  function transplant(document, chance) {
    const [one, other] = [pickPlace(document, chance), pickPlace(document, chance)]
    if (!one || !other) return undefined
    other.holder[other.key] = structuredClone(one.value)
    return `${other.path.join('.')} is ${one.path.join('.')}`
  },
  function renameKey(document, chance) {
    const place = pickPlace(document, chance, isFilled)
    if (!place) return undefined
    const { holder, key, value, path } = place
    const keys = Object.keys(value as Loose)
    const old = chance.pick(keys)
    const name = chance.pick([...INHERITED, ...TAKEN, `${old}x`, old.slice(1), old.toUpperCase(), chance.pick(keys)])
    // Entries become own keys here, `__proto__` too.
    holder[key] = Object.fromEntries(Object.entries(value as Loose).map(([one, inner]) => [one === old ? name : one, inner]))
    return `${path.join('.')}.${old} is called ${name.slice(0, 20)}`
  },
  /** What names something else names nothing, or what every object has. */
  function misname(document, chance) {
    const place = pickPlace(document, chance, isText)
    if (!place) return undefined
    const { holder, key, path, value } = place
    const old = value as string
    holder[key] = chance.pick([...INHERITED, ...TAKEN, `${chance.pick(INHERITED)}:a`, `${chance.pick(INHERITED)}.p`, `${old}:__proto__`, `${old}x`, old.slice(1), old.replace(':', ''), `${old.split(':')[0]}:constructor`])
    return `${path.join('.')} names ${String(holder[key]).slice(0, 20)}`
  },
  function strangeKey(document, chance) {
    const place = pickPlace(document, chance, isMap)
    if (!place) return undefined
    const { holder, key, value, path } = place
    const name = chance.pick([...INHERITED, ...TAKEN, 'fits', 'params', 'kind', 'ends', `${chance.pick(INHERITED)}.p`])
    const inner = chance.pick<unknown>([1, 'x', {}, [], { title: 'x' }, { polluted: true }])
    holder[key] = Object.fromEntries([...Object.entries(value as Loose), [name, inner]])
    return `${path.join('.')} has a key ${name.slice(0, 20)}`
  },
  /** The same key twice in one object, with another value. */
  function doubleKey(document, chance) {
    const place = pickPlace(document, chance, ({ holder }) => !Array.isArray(holder))
    if (!place) return undefined
    const { holder, key, path } = place
    const twice = `${JSON.stringify(key)}: ${JSON.stringify(holder[key])}`
    if (twice.includes('@raw:')) return undefined
    const value = JSON.stringify(chance.pick<unknown>([0, {}, holder[key]]))
    holder[key] = raw(`${value}, ${twice}`)
    return `${path.join('.')} is there twice`
  },
  function emptyCollection(document, chance) {
    const key = pickKey(document, chance)
    if (key === undefined) return undefined
    document[key] = Array.isArray(document[key]) ? [] : {}
    return `${key} is empty`
  },
  function listForMap(document, chance) {
    const key = pickKey(document, chance)
    if (key === undefined || typeof document[key] !== 'object' || document[key] === null) return undefined
    document[key] = Object.values(document[key])
    return `${key} is a list`
  },
  function rawNumber(document, chance) {
    const place = pickPlace(document, chance, isNumber)
    if (!place) return undefined
    const { holder, key, path } = place
    const text = chance.pick(['NaN', 'Infinity', '-Infinity', '1e999', '-1e999', '1e-999', '0x10', '01', '+1', '.5', '1.', '-0', '-', '1e', '9'.repeat(400), `0.${'0'.repeat(400)}1`, '1_000', '1,5', '٣'])
    holder[key] = raw(text)
    return `${path.join('.')} is ${text.slice(0, 12)}`
  },
  function hugeText(document, chance) {
    const place = pickPlace(document, chance, isText)
    if (!place) return undefined
    const { holder, key, path } = place
    holder[key] = chance.pick(['x', 'ab:', '0', '\\', '"', '\u0300', '🔧', ' ']).repeat(chance.pick([100, 3000, 100_000]))
    return `${path.join('.')} is huge`
  },
  function nestDeep(document, chance) {
    const place = pickPlace(document, chance)
    if (!place) return undefined
    const { holder, key, path } = place
    const levels = chance.pick([20, 90, 101, 5000])
    const [open, close] = chance.pick([['[', ']'], ['{"a":', '}'], ['{"fits":[', ']}'], ['{"ends":{"at":', '}}']])
    holder[key] = raw(`${open.repeat(levels)}1${close.repeat(levels)}`)
    return `${path.join('.')} is ${levels} levels deep`
  },
  /** A loom whose branches run in a ring, to themselves or to nowhere, and that lies on what is not there. */
  function tieLoom(document, chance) {
    const id = Object.keys(document.looms ?? {})[0] ?? 'ring'
    const points = ['p', 'q', 'r'], any = () => chance.pick([...points, 's', '__proto__'])
    document.looms = {
      ...document.looms,
      [id]: {
        title: 'Ring', points: Object.fromEntries(points.map((point) => [point, {}])),
        branches: Object.fromEntries(['b1', 'b2', 'b3', 'b4'].map((branch) => [branch, { from: any(), to: any() }])),
        lies: { l1: { branch: chance.pick(['b1', 'b9', 'toString']), runs: [id] } },
      },
    }
    return `the loom ${id} is a ring`
  },
  function manyProblems(document, chance) {
    const wires = Array.from({ length: chance.pick([101, 400]) }, (_, i) => [`many${i}`, { ends: [{ at: `nothing${i}:a` }, { at: `body${i}` }], colur: 'red' }])
    document.wires = { ...document.wires, ...Object.fromEntries(wires) }
    return `${wires.length} wires join nothing`
  },
  function otherVersion(document, chance) {
    document.version = chance.pick<unknown>([0, 2, 1e9, -1, 1.5, '1', null])
    return `version ${String(document.version)}`
  },
  function otherDocument(document, chance) {
    const kept = pickKey(document, chance)
    if (kept === undefined) return undefined
    for (const key of Object.keys(document)) if (key !== kept) Reflect.deleteProperty(document, key)
    return `only ${kept} is left`
  },
]
