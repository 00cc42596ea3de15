import { describe, expect, test } from 'vitest'
import { awgDiameterMm, readAwg } from './awg.ts'
import { aircraftRows, iecRows, isoRows, jisRows } from './conductor-rows.ts'
import { findConductor, type Conductor, type ConductorSize } from './conductors.ts'
import { copperOhmPerM, ohmAtTemperature } from './copper.ts'
import { copper } from './copper-rows.ts'
import { isoDiameterMm, isoOhmPerM } from './iso-law.ts'
import { readStrands } from './strands.ts'

const metresPerFoot = 0.3048

function found(size: ConductorSize, cable?: string): Conductor {
  const conductor = findConductor(size, cable)
  if (!conductor.ok) throw new Error(conductor.sentence)
  return conductor
}

function refusal(size: ConductorSize) {
  const conductor = findConductor(size)
  if (conductor.ok) throw new Error(`${JSON.stringify(size)} was not refused`)
  return conductor
}

/** How far resistance x area lies over ideal copper, 1/58 ohm mm2/m. */
function overCopper(ohmPerKm: number, areaMm2: number): number {
  return (ohmPerKm * areaMm2) / 1000 / copper.resistivityOhmMm2PerM.value - 1
}

describe('published examples', () => {
  // FAA AC 43.13-1B CHG 1, Table 11-7: drop = ohms a foot x feet x amps. The third row prints 3.60 V for 3.555 V.
  test.each([
    ['6', 107, 20, 0.942, 0.001],
    ['4', 90, 20, 0.504, 0.001],
    ['12', 88, 20, 3.6, 0.05],
    ['14', 100, 20, 6.12, 0.001],
  ])('drop along aircraft wire %s', (awg, lengthFt, currentA, dropV, tolerance) => {
    const ohm = found({ awg }, 'aircraft').ohmPerM * lengthFt * metresPerFoot
    expect(Math.abs(ohm * currentA - dropV)).toBeLessThanOrEqual(tolerance)
  })

  // FAA AC 43.13-1B CHG 1, Table 11-8, wire 10 at 20 A. Its 19.5 ft row is a misprint and left out.
  test.each([[39, 0.98, 1], [156, 3.93, 4], [273, 6.88, 7]])('drop at the longest run of %s ft', (lengthFt, dropV, limitV) => {
    const drop = found({ awg: '10' }, 'aircraft').ohmPerM * lengthFt * metresPerFoot * 20
    expect(Math.abs(drop - dropV)).toBeLessThanOrEqual(0.005)
    expect(drop).toBeLessThan(limitV)
  })

  // A tow-bar fitter's cable table: 5 m of one conductor at its rated current.
  test.each([
    ['9/0.30', 5.75, 0.845], ['14/0.30', 8.75, 0.827], ['21/0.30', 12.75, 0.797],
    ['28/0.30', 17.5, 0.823], ['35/0.30', 21.75, 0.816], ['44/0.30', 25.5, 0.765],
  ])('drop along British cable %s', (strands, currentA, dropV) => {
    expect(Math.abs(found({ strands }, 'British PVC').ohmPerM * 5 * currentA - dropV)).toBeLessThanOrEqual(0.001)
  })

  // A wiring forum's mil-foot example: 60 ft of AWG 10 is 10.4 x 60 / 10380 = 0.060 ohm, and 0.0726 ohm by the NEC
  // figure at 75 C. The difference is temperature, not error.
  test('mil-foot ohms cold and hot', () => {
    const ohm20 = found({ awg: '10' }).ohmPerM * 60 * metresPerFoot
    expect(Math.abs(ohm20 - (10.4 * 60) / 10380)).toBeLessThan(0.0005)
    expect(Math.abs(ohmAtTemperature(ohm20, 75) - 0.0726)).toBeLessThan(0.0005)
  })

  // Wikipedia, American wire gauge, after ASTM B258.
  test('AWG end points are exact', () => {
    expect(awgDiameterMm(36) / 25.4).toBeCloseTo(0.005, 9)
    expect(awgDiameterMm(-3) / 25.4).toBeCloseTo(0.46, 7)
    expect(awgDiameterMm(-3) / awgDiameterMm(36)).toBeCloseTo(92, 5)
  })

  // HyperPhysics wire table, ohms per 1000 ft, against the table and against geometry and copper alone.
  test.each([
    ['4/0', 0.049], ['10', 0.9989], ['12', 1.588], ['14', 2.525], ['16', 4.016], ['18', 6.385], ['20', 10.15], ['22', 16.14],
  ])('AWG %s ohms per 1000 ft', (awg, ohmPer1000Ft) => {
    const { ohmPerM, areaMm2, assumed } = found({ awg })
    expect(ohmPerM * 1000 * metresPerFoot).toBeCloseTo(ohmPer1000Ft, 9)
    expect(Math.abs((copperOhmPerM(areaMm2) * 1000 * metresPerFoot) / ohmPer1000Ft - 1)).toBeLessThan(0.003)
    expect(assumed).toBe(false)
  })

  // A homework page's example: 5 ohm at 20 C, 0.004041 / K (its own value), 50 C.
  test('resistance rises with temperature', () => {
    expect(Math.abs(ohmAtTemperature(5, 50, 0.004041) - 5.606)).toBeLessThanOrEqual(0.001)
    expect(ohmAtTemperature(1, 120)).toBeCloseTo(1.393, 9)
    expect(ohmAtTemperature(1, 20)).toBe(1)
  })

  // OpenStax College Physics, a lamp's filament: 0.350 ohm at 20 C, 2850 C (read); 0.0045 / K and the printed 4.8 ohm
  // from memory of its chapter 20, not read again.
  test('a filament at 2850 C has 4.8 ohm', () => {
    expect(Math.abs(ohmAtTemperature(0.35, 2850, 0.0045) - 4.8)).toBeLessThanOrEqual(0.05)
    expect(ohmAtTemperature(1, 2850, 0.0045)).toBeCloseTo(13.7, 1)
  })
})

describe('resistance times area', () => {
  test('ISO rows lie up to 15 % over copper', () => {
    for (const row of isoRows) {
      expect(overCopper(row.ohmPerKm, row.sizeMm2), `${row.sizeMm2} mm2`).toBeGreaterThan(0)
      expect(overCopper(row.ohmPerKm, row.sizeMm2), `${row.sizeMm2} mm2`).toBeLessThan(0.15)
    }
  })

  test('Japanese rows lie 5 to 8 % over copper', () => {
    for (const row of jisRows) {
      expect(overCopper(row.ohmPerKm, row.areaMm2), row.strands).toBeGreaterThan(0.05)
      expect(overCopper(row.ohmPerKm, row.areaMm2), row.strands).toBeLessThan(0.08)
    }
  })

  test('IEC rows beyond 15 % are the known ones', () => {
    const beyond = iecRows.filter((row) => Math.abs(overCopper(row.class5OhmPerKm, row.sizeMm2)) > 0.15)
    expect(beyond.map((row) => row.sizeMm2)).toEqual([0.22, 1.5, 2.5])
  })

  test('aircraft rows beyond 15 % are the known ones', () => {
    const beyond = aircraftRows.filter(({ awg }) => {
      const { ohmPerM, areaMm2 } = found({ awg }, 'aircraft')
      return Math.abs(overCopper(ohmPerM * 1000, areaMm2)) > 0.15
    })
    expect(beyond.map((row) => row.awg)).toEqual(['24', '22', '20', '4', '2', '1', '0', '00', '0000'])
  })

  test('British metric cable lies 8 % over its strands', () => {
    const { ohmPerM } = found({ strands: '28/0.30' })
    expect(overCopper(ohmPerM * 1000, 28 * (Math.PI / 4) * 0.09)).toBeCloseTo(0.08, 2)
  })
})

describe('finding a conductor', () => {
  test('a metric size is an ISO row', () => {
    expect(found({ mm2: 1.5 })).toEqual({
      areaMm2: 1.5, ohmPerM: 0.0127, diameterMm: 3, source: 'iso6722-sheets', status: 'read', assumed: false, why: 'ISO 6722, 1.5 mm2', ok: true,
    })
  })

  test('the cable decides the wall', () => {
    expect(found({ mm2: 1.5 }, 'FLRY-B').diameterMm).toBe(2.4)
    expect(found({ mm2: 1.5 }, 'thick wall').diameterMm).toBe(3)
    expect(found({ mm2: 1.5 }, 'rubber').diameterMm).toBeNull()
  })

  test('the cable decides the table', () => {
    expect(found({ mm2: 1.25 }, 'AV')).toMatchObject({ areaMm2: 1.287, ohmPerM: 0.0143, diameterMm: 2.9, assumed: false })
    expect(found({ mm2: 1.5 }, 'class 5').ohmPerM).toBeCloseTo(0.0133, 9)
    expect(found({ mm2: 2 }, 'british-pvc').ohmPerM).toBeCloseTo(0.0094, 9)
  })

  test('a size between rows is assumed by law', () => {
    const between = found({ mm2: 1.25 })
    expect(between.assumed).toBe(true)
    expect(between.ohmPerM * 1.25).toBeCloseTo((0.0185 * 1 + 0.0127 * 1.5) / 2, 6)
    expect(between.why).toMatch(/rows 1 and 1.5 mm2/)
  })

  test('the law meets its rows and holds beyond', () => {
    for (const row of isoRows) expect(isoOhmPerM(row.sizeMm2).value * 1000).toBeCloseTo(row.ohmPerKm, 9)
    expect(isoOhmPerM(140).value * 140).toBeCloseTo(0.259e-3 * 70, 9)
    expect(isoOhmPerM(0.11).value * 0.11).toBeCloseTo(84.4e-3 * 0.22, 9)
  })

  test('the law between remembered rows says so', () => {
    expect(isoOhmPerM(4.5)).toMatchObject({ source: 'iso6722-memory', status: 'from memory' })
    expect(isoOhmPerM(1.3)).toMatchObject({ source: 'iso6722-sheets', status: 'read' })
  })

  test('a wall between rows lies between its rows', () => {
    expect(isoDiameterMm(1.5, 'thin').value).toBeCloseTo(2.4, 9)
    expect(isoDiameterMm(5, 'thick').value).toBeGreaterThan(4.4)
    expect(isoDiameterMm(5, 'thick').value).toBeLessThan(5)
    expect(isoDiameterMm(95, 'thick').value).toBeGreaterThan(15.5)
  })

  test('imperial strands are assumed 8 % over copper', () => {
    const imperial = found({ strands: '14/.012' })
    expect(imperial).toMatchObject({ areaMm2: 1.022, source: 'imperial-strands', status: 'common practice', assumed: true })
    expect(imperial.ohmPerM).toBeCloseTo((0.0172 * 1.08) / 1.022, 9)
    expect(found({ strands: '23/.0076' }).areaMm2).toBeCloseTo(23 * (Math.PI / 4) * 0.19304 ** 2, 9)
  })

  test('a listed strand size without ohms is assumed', () => {
    expect(found({ strands: '65/0.30' })).toMatchObject({ areaMm2: 4.5, assumed: true, source: 'british-cable-memory' })
  })

  test('strands of another table are flagged', () => {
    expect(found({ strands: '28/0.30' }, 'FLRY-B')).toMatchObject({ ohmPerM: 0.0094, assumed: true })
    expect(found({ strands: '84/0.30' })).toMatchObject({ areaMm2: 6, ohmPerM: 0.00314, assumed: false })
  })

  test('an SAE gauge holds less copper than AWG', () => {
    const sae = found({ awg: '14' }, 'GPT')
    expect(sae).toMatchObject({ areaMm2: 1.876, diameterMm: 3.2, assumed: true })
    expect(sae.ohmPerM).toBeGreaterThan(found({ awg: '14' }).ohmPerM)
  })

  test('AWG outside the table is by formula', () => {
    const fine = found({ awg: '30' })
    expect(fine).toMatchObject({ assumed: true, source: 'astm-b258' })
    expect(fine.areaMm2).toBeCloseTo(0.0509, 4)
  })

  test('a measured copper diameter is solid copper', () => {
    const solid = found({ diameterMm: 1.6277 })
    expect(solid.areaMm2).toBeCloseTo(2.0809, 3)
    expect(solid.ohmPerM * 1000).toBeCloseTo(8.2855, 2)
    expect(solid.assumed).toBe(true)
  })

  test('an unknown cable is read by size, assumed', () => {
    const unknown = found({ mm2: 1.5 }, 'FLYR')
    expect(unknown).toMatchObject({ ohmPerM: 0.0127, assumed: true })
    expect(unknown.why).toMatch(/cable "FLYR" is not a known kind of cable; the nearest are FLY/)
  })
})

describe('reading a size', () => {
  test('AWG is read as people write it', () => {
    expect(['14', 'AWG 14', '#10', '14 ga', '4/0', '0000', '1/0', '0'].map(readAwg)).toEqual([14, 14, 10, 14, -3, -3, 0, 0])
    expect(['', 'x', '41', '5/0', '1.5'].map(readAwg)).toEqual([null, null, null, null, null])
  })

  test('strands are read in mm or inches', () => {
    expect(readStrands('16x0.20')).toEqual({ count: 16, strandMm: 0.2, imperial: false })
    expect(readStrands('7/12/0.45')).toMatchObject({ count: 84, strandMm: 0.45 })
    expect(readStrands('28/0,3')).toMatchObject({ count: 28, strandMm: 0.3 })
    for (const text of ['14/.012', '14/0.012', '14/012', '14/0.012 in']) {
      expect(readStrands(text), text).toMatchObject({ count: 14, imperial: true })
    }
    expect(readStrands('7/.064')).toMatchObject({ imperial: true })
    expect(readStrands('7/0.064 mm')).toMatchObject({ imperial: false })
    expect(readStrands('7/0.07')).toMatchObject({ imperial: false })
  })

  test('a wire-gauge strand is not guessed', () => {
    expect(readStrands('23/36')).toBeNull()
  })

  test('an unreadable size is refused with neighbours', () => {
    expect(refusal({ strands: '28-0.30' }).nearest).toContain('28/0.30')
    expect(refusal({ awg: '41' }).nearest.length).toBe(3)
    expect(refusal({ mm2: -1 }).sentence).toMatch(/"-1" is not an area of copper/)
    expect(refusal({}).expected).toMatch(/mm2, AWG, strands/)
  })

  test('nothing from outside throws', () => {
    const odd: unknown[] = [NaN, Infinity, -1, '1.5', null, {}, [], 'x'.repeat(100_000)]
    for (const value of odd) {
      for (const key of ['mm2', 'awg', 'strands', 'diameterMm']) refusal({ [key]: value } as ConductorSize)
    }
  })
})
