import { describe, expect, test } from 'vitest'
import { britishFuseRows, fuseBandRows, fuseKinds, type FuseKind } from './fuse-rows.ts'
import { findAmericanFuse, findFuse, findMeltingBand, findWireProtector, type Fuse } from './fuses.ts'

function fuse(kind: string, printedA: number): Fuse {
  const found = findFuse(kind, printedA)
  if (!found.ok) throw new Error(found.sentence)
  return found
}

function band(kind: string, printedA: number, multiple: number): (number | 'unknown')[] {
  const found = findMeltingBand(kind, printedA, multiple)
  if (!found.ok) throw new Error(found.sentence)
  return [found.minS, found.maxS]
}

describe('published examples', () => {
  // An encyclopedia article on automotive fuses: carried, at once, sustained. Printed = 2 x carried in every row.
  test.each([[35, 17.5, 40, 'white'], [25, 12.5, 30, 'pink'], [60, 30, 75, 'yellow on red']])('British %s A', (printedA, continuousA, blowAtOnceA, colour) => {
    expect(fuse('British', printedA)).toMatchObject({ printedMeans: 'blow', continuousA, blowAtOnceA, blowA: printedA, colours: [colour], assumed: false })
  })

  test('printed is twice carried', () => {
    for (const row of britishFuseRows) expect(row.printedA, row.colour).toBe(2 * row.continuousA)
  })
})

describe('what the print means', () => {
  test('35 A is two different fuses', () => {
    expect(fuse('british-glass', 35).continuousA).toBe(17.5)
    expect(fuse('blade', 35)).toMatchObject({ printedMeans: 'continuous', continuousA: 35, blowA: 1.35 * 35, colours: ['blue-green'] })
  })

  test('a torpedo fuse keeps its secret', () => {
    expect(fuse('torpedo', 8)).toMatchObject({ printedMeans: 'unknown', continuousA: 'unknown', blowA: 'unknown', colours: ['white'], maxElementOhm: 'unknown' })
    expect(band('torpedo', 8, 2)).toEqual(['unknown', 'unknown'])
  })

  test('a British rating between rows is assumed', () => {
    expect(fuse('British', 20)).toMatchObject({ continuousA: 10, blowA: 20, blowAtOnceA: 'unknown', assumed: true })
  })

  test('two papers for British 10 A', () => {
    expect(fuse('British', 10).colours).toEqual(['red on green', 'green on black'])
  })

  test('the element of a maxi fuse is bounded', () => {
    expect(fuse('maxi', 20).maxElementOhm).toBeCloseTo(0.00625, 9)
    expect(fuse('maxi', 50).maxElementOhm).toBeCloseTo(0.002, 9)
    expect(fuse('blade', 10).maxElementOhm).toBe('unknown')
  })
})

describe('time and current', () => {
  test('at a printed multiple', () => {
    expect(band('blade', 10, 1.1)).toEqual([360000, 'unknown'])
    expect(band('blade', 10, 2)).toEqual([0.15, 5])
    expect(band('maxi', 40, 1.35)).toEqual([60, 1800])
    expect(band('glass-agx', 2, 2)).toEqual(['unknown', 5])
    expect(band('8AG', 10, 2)).toEqual(['unknown', 120])
  })

  test('makers who differ give the wider', () => {
    expect(band('blade', 10, 1.35)).toEqual([0.75, 1800])
    const rows = fuseBandRows.filter((row) => row.kinds.includes('blade') && row.multiple === 1.35)
    expect(rows.map((row) => row.maxS)).toEqual([1800, 600])
  })

  test('between multiples the neighbours bound it', () => {
    expect(band('blade', 10, 1.2)).toEqual([0.75, 'unknown'])
    expect(band('blade', 10, 1.5)).toEqual([0.25, 1800])
    expect(band('blade', 10, 10)).toEqual(['unknown', 0.1])
    expect(band('blade', 10, 0.5)).toEqual([360000, 'unknown'])
  })

  test('more current never lasts longer', () => {
    for (const kind of Object.keys(fuseKinds) as FuseKind[]) {
      let before = band(kind, 20, 0.5)
      for (let multiple = 0.55; multiple < 8; multiple += 0.05) {
        const now = band(kind, 20, multiple)
        expect(orLongest(now[1]), kind).toBeLessThanOrEqual(orLongest(before[1]))
        if (typeof now[0] === 'number') expect(now[0], kind).toBeLessThanOrEqual(orLongest(before[0]))
        before = now
      }
    }
  })
})

describe('other tables', () => {
  test('an American fuse for a British one', () => {
    expect(findAmericanFuse(35)).toMatchObject({ ok: true, americanA: 25 })
    expect(findAmericanFuse(60)).toMatchObject({ ok: false, nearest: expect.arrayContaining(['50']) })
  })

  test('protector of an aircraft wire', () => {
    expect(findWireProtector('14')).toMatchObject({ ok: true, breakerA: 20, fuseA: 15 })
    expect(findWireProtector('1/0')).toMatchObject({ ok: true, breakerA: null, fuseA: 150 })
    expect(findWireProtector('30').ok).toBe(false)
  })

  test('an unknown kind or rating is refused', () => {
    expect(findFuse('blaed', 10)).toMatchObject({ ok: false, nearest: expect.arrayContaining(['blade']) })
    expect(findFuse('blade', NaN).ok).toBe(false)
    expect(findMeltingBand('blade', 10, 0).ok).toBe(false)
    expect(findMeltingBand('wire', 10, 2).ok).toBe(false)
  })
})

function orLongest(seconds: number | 'unknown'): number {
  return seconds === 'unknown' ? Infinity : seconds
}
