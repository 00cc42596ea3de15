import { describe, expect, test } from 'vitest'
import { colourUseRows, germanColourRows, iecColourRows, britishColourRows, type ColourPractice, type LetterConvention } from './colour-rows.ts'
import { findColourUses, nameColour, readAnywhere, readColour, writeColour, type ColourConvention, type InsulationColour } from './colours.ts'

function read(letters: string, convention: ColourConvention): InsulationColour {
  const found = readColour(letters, convention)
  if (!found.ok) throw new Error(found.sentence)
  return found.colour
}

function said(letters: string, convention: ColourConvention): string {
  const { base, tracers } = read(letters, convention)
  return [base, ...tracers].join(' ')
}

function uses(letters: string, convention: ColourConvention, practice: ColourPractice): string[] {
  const found = findColourUses(read(letters, convention), practice)
  if (!found.ok) throw new Error(found.sentence)
  return found.uses.map((row) => row.use)
}

describe('published examples', () => {
  // IEC 60757:2021, preview: RDBU is red and blue, GNYE green-and-yellow.
  test('IEC letters', () => {
    expect(said('RDBU', 'iec')).toBe('red blue')
    expect(said('GNYE', 'iec')).toBe('green yellow')
  })

  // A page on German post-war colours; a BS AU 7 colour table on an owners' forum.
  test('letters and what they are for', () => {
    expect(said('sw/ws', 'german')).toBe('black white')
    expect(uses('sw/ws', 'german', 'German')).toEqual(['turn lamps left', 'turn lamps left'])
    expect(uses('sw/gn', 'german', 'German')[0]).toBe('turn lamps right')
    expect(said('NY', 'british')).toBe('brown yellow')
    expect(uses('NY', 'british', 'British cars')[0]).toMatch(/^dynamo D/)
    expect(uses('NG', 'british', 'British cars')[0]).toMatch(/^dynamo F/)
    expect(uses('UW', 'british', 'British cars')[0]).toContain('main beam')
    expect(uses('UR', 'british', 'British cars')[0]).toContain('dipped beam')
  })

  // The table of conflicts: the same letters and the same colours mean opposite things.
  test('the same letters mean two colours', () => {
    expect(said('gr', 'german')).toBe('grey')
    expect(said('GR', 'british')).toBe('green red')
    expect(readColour('GR', 'british')).toMatchObject({ elsewhere: [{ convention: 'german', colour: { base: 'grey', tracers: [] } }] })
    expect(readColour('gr', 'german')).toMatchObject({ conflicts: expect.arrayContaining([expect.objectContaining({ item: 'letter gr / GR' })]) })
    expect(said('br', 'german')).toBe('brown')
    expect(said('BR', 'british')).toBe('black red')
    expect(readAnywhere('br').map((reading) => reading.convention)).toEqual(['german', 'british'])
  })

  test.each([
    ['brown', 'earth', 'main battery feed'],
    ['black', 'switched live from the ignition switch; ignition in general', 'earth'],
    ['red', 'always live', 'side lamps and rear lamps'],
  ])('%s means opposite things', (colour, german, british) => {
    expect(uses(colour, 'german', 'German')).toContain(german)
    expect(uses(colour, 'british', 'British cars')).toContain(british)
    const found = findColourUses(read(colour, 'german'), 'German')
    expect(found.ok && found.conflicts.map((row) => row.item)).toContain(`${colour} cable`)
    expect(found.ok && found.elsewhere.map((row) => row.use)).toContain(british)
  })

  // Two lists say ge is the left dipped beam, two say the right.
  test.each(['ge', 'ge/sw'])('%s is dipped beam, side not certain', (letters) => {
    const found = findColourUses(read(letters, 'german'), 'German')
    expect(found).toMatchObject({ ok: true, disputed: true })
    expect(found.ok && found.uses.every((row) => row.use.startsWith('dipped beam'))).toBe(true)
    expect(found.ok && found.conflicts.map((row) => row.item)).toContain('dipped beam side')
  })
})

describe('reading letters', () => {
  test('the longest letters go first', () => {
    expect(said('LGN', 'british')).toBe('light green brown')
    expect(said('GLG', 'british')).toBe('green light green')
    expect(said('gnge', 'german')).toBe('green yellow')
    expect(said('hgnsw', 'german')).toBe('light green black')
    expect(said('SLG', 'british')).toBe('grey light green')
  })

  test('separators, spaces and words', () => {
    for (const letters of ['sw-ws', 'SW ws', 'sw+ws', 'black/white', 'Black with white']) expect(said(letters, 'german'), letters).toBe('black white')
    expect(said('light green/purple', 'american')).toBe('light green violet')
  })

  test("a shop's own letters", () => {
    const shop = { name: 'the shop', letters: { BL: 'blue', BLK: 'black', W: 'white' } }
    expect(said('BLKW', shop)).toBe('black white')
    expect(said('BLW', shop)).toBe('blue white')
    expect(readColour('BL', shop)).toMatchObject({ ok: true, elsewhere: [{ convention: 'british' }] })
    expect(writeColour({ base: 'red', tracers: [] }, shop)).toMatchObject({ ok: false, unsayable: ['red'] })
  })

  test('letters of another convention are refused', () => {
    expect(readColour('ws', 'iec')).toMatchObject({ ok: false, elsewhere: [{ convention: 'german', colour: { base: 'white', tracers: [] } }, { convention: 'british' }] })
    expect(readColour('RD', 'american')).toMatchObject({ ok: false, expected: 'a colour in words: American practice has no letters' })
    expect(readColour('', 'german').ok).toBe(false)
    expect(readColour('Q', 'british').ok).toBe(false)
  })
})

describe('writing letters', () => {
  test('each convention in its own way', () => {
    const colour = { base: 'black', tracers: ['white'] }
    expect((['iec', 'german', 'british', 'american'] as const).map((each) => writeColour(colour, each))).toEqual(
      ['BKWH', 'sw/ws', 'BW', 'black/white'].map((letters) => ({ ok: true, letters })),
    )
    expect(writeColour({ base: 'white', tracers: ['black'] }, 'iec')).toEqual({ ok: true, letters: 'WH/BK' })
    expect(writeColour({ base: 'Slate', tracers: ['purple'] }, 'british')).toEqual({ ok: true, letters: 'SP' })
  })

  test('what cannot be said is named', () => {
    expect(writeColour({ base: 'light green', tracers: ['gold'] }, 'german')).toMatchObject({ ok: false, unsayable: ['gold'] })
    expect(writeColour({ base: 'light green', tracers: [] }, 'iec')).toMatchObject({ ok: false, unsayable: ['light green'], nearest: expect.arrayContaining(['green']) })
  })

  test('what is written reads the same', () => {
    const rows: Readonly<Record<LetterConvention, typeof britishColourRows>> = { iec: iecColourRows, german: germanColourRows, british: britishColourRows }
    for (const convention of ['iec', 'german', 'british'] as const) {
      const words = [...new Set(rows[convention].flatMap((row) => row.colours))]
      for (const base of words) {
        for (const tracers of [[], ...words.map((word) => [word]), ...words.map((word) => [word, 'black'])]) {
          const written = writeColour({ base, tracers }, convention)
          expect(written.ok && read(written.letters, convention), `${convention} ${base} ${tracers.join()}`).toEqual({ base, tracers })
        }
      }
    }
  })
})

describe('colour and use', () => {
  test('printed letters are the colours beside them', () => {
    for (const { letters, practice, base, tracers } of colourUseRows) {
      if (letters !== null) expect(read(letters, practice === 'German' ? 'german' : 'british'), letters).toEqual({ base, tracers })
      expect(nameColour(base)).toBe(base)
    }
  })

  test('a motorcycle differs from a car', () => {
    expect(uses('N', 'british', 'British cars')).toEqual(['main battery feed'])
    expect(uses('N', 'british', 'British motorcycles')).toEqual(['stop lamp'])
  })

  test('a colour without a use is refused', () => {
    expect(findColourUses({ base: 'pink', tracers: [] }, 'German')).toMatchObject({ ok: false, received: 'pink' })
  })
})
