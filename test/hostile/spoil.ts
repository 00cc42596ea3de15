// Damages to the text and the bytes of a record, whatever they hold.
import type { Chance } from './damage.ts'

export interface Spoilt { readonly how: string; readonly bytes: Uint8Array }

type Spoil = (bytes: Uint8Array, chance: Chance) => Spoilt

/** One to three damages, the last of them to the whole encoding now and then. */
export function spoilText(text: string, chance: Chance): Spoilt {
  let spoilt: Spoilt = { how: '', bytes: new TextEncoder().encode(text) }
  for (let times = 1 + chance.below(3); times > 0; times--) {
    const next = chance.pick(SPOILS)(spoilt.bytes, chance)
    spoilt = { how: spoilt.how === '' ? next.how : `${spoilt.how}; ${next.how}`, bytes: next.bytes }
  }
  return spoilt
}

const SPOILS: readonly Spoil[] = [
  function cutEnd(bytes, chance) {
    const at = chance.below(bytes.length + 1)
    return { how: `cut at byte ${at}`, bytes: bytes.slice(0, at) }
  },
  function cutStart(bytes, chance) {
    const at = chance.below(bytes.length + 1)
    return { how: `begins at byte ${at}`, bytes: bytes.slice(at) }
  },
  function cutOut(bytes, chance) {
    const at = chance.below(bytes.length + 1), length = 1 + chance.below(400)
    return { how: `${length} bytes are gone at ${at}`, bytes: join(bytes.slice(0, at), bytes.slice(at + length)) }
  },
  function repeatPiece(bytes, chance) {
    const at = chance.below(bytes.length + 1), length = 1 + chance.below(400)
    return { how: `${length} bytes are there twice at ${at}`, bytes: join(bytes.slice(0, at + length), bytes.slice(at)) }
  },
  function flipBits(bytes, chance) {
    const spoilt = bytes.slice(), flips = 1 + chance.below(8)
    for (let i = 0; i < flips && spoilt.length > 0; i++) spoilt[chance.below(spoilt.length)] ^= 1 << chance.below(8)
    return { how: `${flips} bits are flipped`, bytes: spoilt }
  },
  function otherByte(bytes, chance) {
    if (bytes.length === 0) return { how: 'nothing left', bytes }
    const spoilt = bytes.slice(), at = chance.below(bytes.length)
    spoilt[at] = chance.pick([0x00, 0x22, 0x2c, 0x3a, 0x5b, 0x5c, 0x5d, 0x7b, 0x7d, 0x7f, 0x80, 0xc0, 0xe9, 0xff])
    return { how: `byte ${at} is ${spoilt[at]}`, bytes: spoilt }
  },
  function putIn(bytes, chance) {
    const at = chance.below(bytes.length + 1)
    const piece = chance.pick(['\uFEFF', '\u0000', '\u2028', '\u00a0', '//x\n', '/*', ',', ',,', '"', '\\', '\\u', '\\uD800', '{"__proto__":', '[[[[', 'NaN', 'undefined', '\u202E', '<?xml?>', '٣'])
    return { how: `${JSON.stringify(piece)} at byte ${at}`, bytes: join(bytes.slice(0, at), encode(piece), bytes.slice(at)) }
  },
  function markOrder(bytes, chance) {
    const marks = chance.pick(['\uFEFF', '\uFEFF\uFEFF'])
    return { how: `${marks.length} byte order marks`, bytes: join(encode(marks), bytes) }
  },
  function otherEncoding(bytes, chance) {
    const text = new TextDecoder().decode(bytes)
    const how = chance.pick(['Latin-1', 'UTF-16', 'read as Latin-1'])
    if (how === 'read as Latin-1') return { how, bytes: encode(Array.from(bytes, (byte) => String.fromCharCode(byte)).join('')) }
    const codes = Array.from({ length: text.length }, (_, i) => text.charCodeAt(i))
    return { how, bytes: Uint8Array.from(how === 'Latin-1' ? codes : [0xff, 0xfe, ...codes.flatMap((code) => [code & 0xff, code >> 8])]) }
  },
  function otherQuotes(bytes, chance) {
    const mark = chance.pick(["'", '“', '`'])
    const text = new TextDecoder().decode(bytes)
    return { how: `quotes are ${mark}`, bytes: encode(text.replaceAll('"', mark)) }
  },
  function endCommas(bytes) {
    return { how: 'commas before the end of lists', bytes: encode(new TextDecoder().decode(bytes).replace(/([}\]])/g, ',$1')) }
  },
  function twoDocuments(bytes, chance) {
    return { how: 'two documents', bytes: chance.share() < 0.5 ? join(bytes, bytes) : join(bytes, encode('\n]')) }
  },
]

const encode = (text: string) => new TextEncoder().encode(text)

function join(...pieces: readonly Uint8Array[]): Uint8Array {
  const joined = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const piece of pieces) {
    joined.set(piece, at)
    at += piece.length
  }
  return joined
}
