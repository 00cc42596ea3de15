import { describe, expect, test } from 'vitest'
import { markingRows, relayUsages, renamedRows } from './terminal-marking-rows.ts'
import { describeMarking, markingNames, sameMarking, type MarkingMeaning } from './terminal-markings.ts'

function meanings(marking: string): readonly MarkingMeaning[] {
  const found = describeMarking(marking)
  if (!found.ok) throw new Error(found.sentence)
  return found.meanings
}

function newer(old: string): string[] {
  const found = sameMarking(old)
  if (!found.ok) throw new Error(found.sentence)
  return found.newer.map((name) => name.marking)
}

describe('older and newer names', () => {
  // A truck club's table of old and new terminal markings.
  test.each([
    ['54d', ['53']], ['54L', ['49a']], ['30/51', ['30', '87', '88']], ['15/54', ['15', '49', '54']], ['85d', ['31b']], ['H', ['71']],
    ['N', ['55']], ['SBL', ['L54']], ['K1', ['C', 'C2']], ['30h', ['45', '45a']], ['D+/61', ['D+']],
  ])('%s is now %s', (old, now) => {
    expect(newer(old)).toEqual(now)
  })

  test('the part decides between newer names', () => {
    const found = sameMarking('+')
    expect(found.ok && found.newer.map(({ marking, at }) => [marking, at])).toEqual([
      ['15', null], ['49', 'flasher'], ['53', 'wiper'], ['53a', 'wiper'],
    ])
  })

  test('a marking that kept its name answers itself', () => {
    expect(newer('56a')).toEqual(['56a'])
    expect(newer('GEN')).toEqual(['GEN'])
  })

  test('every newer name is itself described', () => {
    const known = new Set(markingNames)
    expect(renamedRows.filter((row) => !known.has(row.newer))).toEqual([])
  })

  test('older names of 49a come from both tables', () => {
    expect(meanings('49a')[0].older).toEqual(['54L', 'S', 'S4', 'L'])
    expect(meanings('D+')[0].older).toEqual(['D+/61'])
    expect(meanings('53')[0].older).toEqual(['54d', '1', '3', 'S', '+'])
  })
})

describe('meaning of a marking', () => {
  test('one letter means different things', () => {
    expect(meanings('F').map((row) => row.convention)).toEqual(['British', 'American'])
    expect(meanings('L').map((row) => [row.convention, row.kind])).toEqual([
      ['DIN', 'lamp feed'], ['British', 'switched output'], ['American', 'switched output'],
    ])
  })

  test('earth is named in every convention', () => {
    for (const marking of ['31', 'E', 'GRD']) expect(meanings(marking)[0]).toMatchObject({ kind: 'earth', pole: 'earth' })
  })

  test('an older name is described by the newer', () => {
    expect(meanings('SBL')).toMatchObject([{ old: true, kind: 'lamp feed', meaning: 'older name of L54: left lamp used for stop and turn in two-circuit systems' }])
    expect(meanings('1').find((row) => row.convention === 'DIN')!.newer.map((row) => row.marking)).toEqual(['53', '53e'])
  })

  test('every known name has a meaning', () => {
    for (const name of markingNames) expect(meanings(name).length, name).toBeGreaterThan(0)
  })

  test('special poles say what they are', () => {
    expect(markingRows.filter((row) => (row.pole === 'special') !== (row.poleNote !== undefined))).toEqual([])
  })

  test('spaces and case are forgiven', () => {
    expect(meanings('15 / 54')[0].marking).toBe('15/54')
    expect(meanings('57l')[0].marking).toBe('57L')
    expect(meanings('b−')[0].marking).toBe('B-')
  })

  test('an unknown marking is refused', () => {
    expect(describeMarking('56z')).toMatchObject({ ok: false, received: '56z', nearest: ['56', '56a', '56b'] })
    expect(sameMarking('')).toMatchObject({ ok: false })
  })
})

// A magazine photo caption: at rest 30-87a closed, energised 30-87 closed; winding 86 live, 85 earth.
test('a plug-in relay has 30 common', () => {
  expect(relayUsages[0]).toMatchObject({ common: '30', normallyOpen: '87', normallyClosed: '87a', windingLive: '86', windingEarth: '85' })
})
