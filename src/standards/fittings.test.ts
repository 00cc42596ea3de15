import { describe, expect, test } from 'vitest'
import { boatPullOutRows, pullOutRows } from './crimp-rows.ts'
import { findFitting, findFittings, findGrommet, findNut, findRingHole, findSleeve, fittings, type FittingKind } from './fittings.ts'
import { baNutRows } from './nut-rows.ts'

function names(mm2: number, kind?: FittingKind): string[] {
  const found = findFittings(mm2, kind)
  if (!found.ok) throw new Error(found.sentence)
  return found.fittings.map((each) => each.name)
}

function flats(thread: string): number[] {
  const found = findNut(thread)
  if (!found.ok) throw new Error(found.sentence)
  return found.spanners.map((spanner) => spanner.flatsMm)
}

describe('check cases of the reference', () => {
  // Fasteners' copies of DIN 934 and ISO 4032: M10 is 17 by one and 16 by the other.
  test('1: spanner for an M10 stud nut', () => {
    expect(flats('M10')).toEqual([17, 16])
    expect(flats('m12')).toEqual([19, 18])
    expect(flats('M6')).toEqual([10, 10])
  })

  // The rule of British Association threads in a copied encyclopedia article: 1.75 x 4.7 mm = 8.225 mm, 0.324 in.
  test('2: jaw of a 2BA nut', () => {
    expect(Math.abs(flats('2BA')[0] - 8.225)).toBeLessThanOrEqual(0.03)
    for (const { majorMm, flatsMm, flatsIn, thread } of baNutRows) {
      expect(Math.abs(1.75 * majorMm - flatsMm), thread).toBeLessThan(0.03)
      expect(Math.abs(flatsIn * 25.4 - flatsMm), thread).toBeLessThan(0.02)
    }
  })

  // A terminal maker's specifications and ABYC E-11 as a boat owner's handbook has it, 14 AWG.
  test('3: pull on a crimp of 14 AWG', () => {
    const trade = pullOutRows.find((row) => row.awg === '14')
    expect([trade?.commercialN, trade?.militaryN, boatPullOutRows.find((row) => row.awg === '14')?.pullN]).toEqual([222.5, 311.5, 133])
  })
})

describe('what fits a wire', () => {
  test('pre-insulated terminals by colour', () => {
    expect(names(1, 'insulated terminal')).toEqual(['red, AWG 22-16'])
    expect(names(1.5, 'insulated terminal')).toEqual(['red, AWG 22-16', 'blue, AWG 16-14', 'yellow with black, AWG 16-14 heavy duty'])
    expect(names(8.37, 'insulated terminal')).toEqual(['red (large), AWG 8'])
  })

  // The note of the table: 44/0.30 falls between blue and yellow.
  test('3 mm2 falls between two colours', () => {
    const found = findFittings(3, 'insulated terminal')
    expect(found).toMatchObject({ ok: false, nearest: expect.arrayContaining(['blue, AWG 16-14']) })
    expect(names(3, 'bullet')).toEqual(['British brass bullet, crimp or solder, rubber-covered snap connector'])
    expect(names(3)).toContain('blade 6.3 x 0.8')
  })

  test('lugs and ferrules have single sizes', () => {
    expect(names(25, 'tube lug')).toEqual(['lug 25, M8-M10'])
    expect(names(0.75, 'ferrule')).toEqual(['ferrule 0.75, grey by DIN'])
    expect(names(4, 'ferrule')).toEqual(['ferrule 4, grey by DIN'])
    expect(findFittings(2, 'ferrule')).toMatchObject({ ok: false, nearest: expect.arrayContaining(['ferrule 2.5, blue by DIN']) })
  })

  test('what a fitting takes', () => {
    expect(findFitting('blade 6.3 x 0.8')).toMatchObject({ ok: true, minMm2: 0.5, maxMm2: 6, status: 'from memory' })
    expect(findFitting('blade 6.3')).toMatchObject({ ok: false, nearest: expect.arrayContaining(['blade 6.3 x 0.8']) })
  })

  test('each fitting has its own name', () => {
    expect(new Set(fittings.map((each) => each.name)).size).toBe(fittings.length)
  })
})

describe('studs, nuts, grommets and sleeves', () => {
  test('a ring by its stud', () => {
    expect(findRingHole('No. 10')).toMatchObject({ ok: true, holeMm: 5.3, status: 'read' })
    expect(findRingHole('2BA')).toMatchObject({ ok: true, holeMm: 5 })
    expect(findRingHole('M7').ok).toBe(false)
  })

  test('one thread, several patterns', () => {
    expect(flats('1/4')).toEqual([11.11, 12.7])
    expect(flats('1/4 BSF')).toEqual([11.3])
    expect(findNut('9BA')).toMatchObject({ ok: false, nearest: expect.arrayContaining(['2BA']) })
  })

  test('a grommet passes its bundle', () => {
    expect(findGrommet(9)).toMatchObject({ ok: true, holeMm: 12.7, boreMm: 9.5, isSnug: true })
    expect(findGrommet(12)).toMatchObject({ ok: true, boreMm: 14.3, isSnug: false })
    expect(findGrommet(30).ok).toBe(false)
  })

  test('a sleeve goes over its bundle', () => {
    expect(findSleeve('PVC sleeve, soft, black', 9)).toMatchObject({ ok: true, boreMm: 10 })
    expect(findSleeve('PVC sleeve, soft, black', 24)).toMatchObject({ ok: false })
    expect(findSleeve('silk', 9).ok).toBe(false)
  })
})
