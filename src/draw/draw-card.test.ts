import { describe, expect, test } from 'vitest'
import { WARDEN_OPTIONS, WARDEN_YEARS, wardenWiring } from '../../test/builders/warden.ts'
import { listTerminals } from './card-rows.ts'
import { drawCard } from './draw-card.ts'
import { renderCard } from './render-svg.ts'
import type { TextShape } from './scene.ts'
import { textWidth } from './text-widths.ts'

const latest = wardenWiring(1966, WARDEN_OPTIONS)

/** Left, right, top and bottom of a line of text. */
function boxOf({ at: [x, y], text, size, weight, anchor }: TextShape) {
  const wide = textWidth(text, size, weight)
  const left = anchor === 'end' ? x - wide : x
  return { text, left, right: left + wide, top: y - 0.72 * size, bottom: y + 0.2 * size }
}

describe('what is joined to a part', () => {
  const said = (part: string) => listTerminals(latest, part).map(({ marking, rows }) => `${marking}: ${rows.map(({ wire, goes }) => [wire?.id ?? '-', ...goes].join(' | ')).join(' & ')}`)

  test('each terminal of the dip switch tells its wire and where it goes', () => {
    expect(said('dip-switch')).toEqual(['56: w34-64 | to Lighting switch, 56', '56a: w40 | to Main-beam relay, 86', '56b: w41 | to Dipped-beam relay, 86'])
  })

  test('behind a connector the wire goes on to the part', () => {
    expect(said('reversing-lamp')[1]).toBe('RF: w68 | to Joint of the sill loom, way RF | on by GN/BN 14/0.30 to Reversing switch, RF')
  })

  test('behind a splice all that meets there is named', () => {
    expect(said('rear-left').find((line) => line.startsWith('54'))).toMatch(/to a splice, Left rear lamps \| on by GN\/VT 14\/0\.30 to Right stop and tail lamp, 54 \| on by GN\/VT 28\/0\.30 to Joint of the sill loom, way 54/)
  })

  test('a case on its metal, a bar to the next part, and nothing at all are told apart', () => {
    expect(said('oil-switch')).toEqual(['31: - | on Engine', expect.stringMatching(/^31b: w\d+/)])
    expect(said('solenoid').find((line) => line.startsWith('45'))).toBe('45: - | on Starter, 45')
    expect(said('two-tone-relay').every((line) => !line.includes('nothing'))).toBe(true)
  })
})

describe('the card of every part', () => {
  test.each(WARDEN_YEARS.flatMap((year) => [358, 640].map((width) => [year, width] as const)))('of %s keeps its letters apart and inside %s px', (year, width) => {
    const wiring = wardenWiring(year, WARDEN_OPTIONS)
    for (const id of wiring.parts.keys()) {
      const card = drawCard(wiring, id, null, width)!
      const texts = card.shapes.flatMap((shape) => shape.kind === 'text' ? [shape] : [])
      const boxes = texts.map(boxOf)
      expect(boxes.filter(({ left, right, bottom }) => left < 0 || right > width || bottom > card.height), id).toEqual([])
      expect(boxes.filter((a, i) => boxes.some((b, k) => k > i && a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)), id).toEqual([])
      expect(Math.min(...texts.map(({ size }) => size)), id).toBeGreaterThanOrEqual(12)
    }
  })

  test('a word from the record is no markup', () => {
    const svg = renderCard({ ...drawCard(latest, 'horn', null, 640)!, label: 'a "<b>"' }, 'day')
    expect(svg).toContain('aria-label="a &quot;&lt;b&gt;&quot;"')
    expect(drawCard(latest, 'no-such-part', null, 640)).toBeNull()
  })

  test('it is said in full for someone who does not see it', () => {
    expect(drawCard(latest, 'dip-switch', null, 640)!.label).toBe('Connections of Foot dip switch. '
      + '56: brown with white · BN/WH 28/0.30, to Lighting switch, 56. 56a: blue with white · BU/WH 14/0.30, to Main-beam relay, 86. 56b: blue with red · BU/RD 14/0.30, to Dipped-beam relay, 86.')
  })
})
