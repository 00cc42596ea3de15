import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { inflateSync } from 'node:zlib'
import { expect, test } from 'vitest'
import { textWidth, wrapText, type Weight } from './text-widths.ts'

const require = createRequire(import.meta.url)
const signs = Array.from({ length: 95 }, (_, i) => String.fromCharCode(32 + i)).filter((sign) => !/\d/.test(sign))

test.each<Weight>([400, 600])('the table of weight %i is that of the font', (weight) => {
  const advance = readFont(require.resolve(`@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-${weight}-normal.woff`))
  const wrong = signs.filter((sign) => textWidth(sign, 1000, weight) !== advance(sign.charCodeAt(0)))
  expect(wrong).toEqual([])
})

test('figures are all of one width', () => {
  expect(new Set([...'0123456789'].map((sign) => textWidth(sign, 12))).size).toBe(1)
})

test('an accent takes no room of its own', () => {
  expect(textWidth('é', 12)).toBe(textWidth('e', 12))
})

test('a long name breaks at its spaces', () => {
  const lines = wrapText('Tail lamp, left and right', 12, 60)
  expect(lines.length).toBeGreaterThan(1)
  expect(lines.join(' ')).toBe('Tail lamp, left and right')
  expect(lines.every((line) => textWidth(line, 12) <= 60)).toBe(true)
})

/** Advance widths by code point from a WOFF file: its tables hmtx and cmap (format 4), in thousandths. */
function readFont(file: string): (code: number) => number {
  const tables = readTables(readFileSync(file))
  const perEm = tables.get('head')!.readUInt16BE(18)
  const metrics = tables.get('hhea')!.readUInt16BE(34)
  return (code) => Math.round(tables.get('hmtx')!.readUInt16BE(Math.min(glyphOf(tables.get('cmap')!, code), metrics - 1) * 4) * 1000 / perEm)
}

function readTables(font: Buffer): Map<string, Buffer> {
  return new Map(Array.from({ length: font.readUInt16BE(12) }, (_, i) => {
    const at = 44 + i * 20
    const [from, packed, size] = [font.readUInt32BE(at + 4), font.readUInt32BE(at + 8), font.readUInt32BE(at + 12)]
    const raw = font.subarray(from, from + packed)
    return [font.toString('latin1', at, at + 4), packed < size ? inflateSync(raw) : raw] as const
  }))
}

function glyphOf(cmap: Buffer, code: number): number {
  const starts = Array.from({ length: cmap.readUInt16BE(2) }, (_, i) => cmap.readUInt32BE(8 + i * 8))
  const at = starts.find((start) => cmap.readUInt16BE(start) === 4)!
  const twice = cmap.readUInt16BE(at + 6)
  for (let i = 0; i < twice; i += 2) {
    if (code > cmap.readUInt16BE(at + 14 + i)) continue
    const start = cmap.readUInt16BE(at + 16 + twice + i)
    if (code < start) return 0
    const range = cmap.readUInt16BE(at + 16 + 3 * twice + i)
    const delta = cmap.readInt16BE(at + 16 + 2 * twice + i)
    return range === 0 ? (code + delta) & 0xffff : (cmap.readUInt16BE(at + 16 + 3 * twice + i + range + 2 * (code - start)) + delta) & 0xffff
  }
  return 0
}
