import { describe, expect, test } from 'vitest'
import { partKinds } from '../../src/parts/index.ts'
import { readRecord, writeRecord } from '../../src/record/index.ts'
import { circuitOf, IDEAL, onOff, setting } from '../builders/circuits.ts'
import { link, makeRecord, part, wire, type RecordPlan } from '../builders/record.ts'
import { judgeSolved, judgeWords } from './answer.ts'
import { solveSetting } from '../../src/circuit/index.ts'
import { runOn } from './run.ts'

interface Told { readonly notes: readonly string[]; readonly floating: readonly string[]; readonly wires: Readonly<Record<string, { readonly amps: number | null }>>; readonly voltages: Readonly<Record<string, number | null>> }

/** Battery of 12 V behind 10 mΩ, a switch and a resistor of 6 Ω; conductors of no resistance. */
const PLAN: RecordPlan = {
  metals: ['body'], assume: IDEAL,
  parts: [part('battery', 'battery', { emfV: 12, ohm: 0.01 }, { title: 'Battery' }), part('switch', 'control', onOff()), part('load', 'resistor', { ohm: 6 })],
  wires: [link('w1', 'battery:+', 'switch:a'), link('w2', 'switch:b', 'load:a'), link('w3', 'load:b', 'body'), link('w4', 'battery:-', 'body')],
}
const withWires = (...more: NonNullable<RecordPlan['wires']>): RecordPlan => ({ ...PLAN, wires: [...PLAN.wires ?? [], ...more] })

/** What `solve` prints for a person and with `--json`. */
async function solve(plan: RecordPlan, ...more: readonly string[]): Promise<{ readonly text: string; readonly json: Told }> {
  const record = writeRecord(makeRecord(plan))
  const [text, json] = [await runOn(record, 'solve', ...more), await runOn(record, 'solve', ...more, '--json')]
  expect([text.code, text.said, json.code, json.said]).toEqual([0, '', 0, ''])
  expect(judgeWords(text.printed)).toEqual([])
  expect(text.printed).not.toMatch(/NaN|Infinity/)
  return { text: text.printed, json: JSON.parse(json.printed) as Told }
}

async function expectNote(plan: RecordPlan, note: RegExp | string, ...more: readonly string[]): Promise<Told> {
  const { text, json } = await solve(plan, ...more)
  expect(json.notes).toContainEqual(typeof note === 'string' ? note : expect.stringMatching(note))
  for (const one of json.notes) expect(text).toContain(`Note: ${one}.`)
  return json
}

describe('a shorted battery is solved, and said', () => {
  test('by a wire of no ohms', async () => {
    const { wires, voltages } = await expectNote(withWires(wire('short', 'battery:+', 'battery:-', { ohm: 0 })),
      'Battery (battery) is short-circuited, from post to post through short with no load between: leave it off, and see where each of these really leads: one end is on the wrong point (1200 A)')
    expect(wires.short.amps).toBeCloseTo(1200, 6)
    expect(voltages['battery:+']).toBe(0)
  })

  test('by a wire of a milliohm, over the body', async () => {
    const { wires } = await expectNote(withWires(wire('short', 'battery:+', 'body', { ohm: 0.001 })),
      'Battery (battery) is short-circuited, from post to post through short, w4 with no load between: leave it off, and see where each of these really leads: one end is on the wrong point (1091 A)')
    expect(wires.short.amps).toBeCloseTo(12 / 0.011, 6)
  })

  test('that has no ohms itself', async () => {
    const plan = withWires(wire('short', 'battery:+', 'battery:-', { ohm: 0 }))
    await expectNote({ ...plan, parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }, { title: 'Battery' }), ...PLAN.parts?.slice(1) ?? []] }, /is short-circuited/)
  })

  test('by a switch, while it is on', async () => {
    const plan = withWires(link('wrong', 'switch:b', 'body'))
    expect((await solve(plan)).json.notes.join()).not.toContain('short-circuited')
    await expectNote(plan, /through w1, switch\.on, wrong, w4 with no load/, '--set', 'switch=on')
  })

  test('by a fault', async () => {
    await expectNote(PLAN, /through the touch of battery:\+ and body, w4 with/, '--fault', 'join:battery:+=body')
  })

  test('not where a load is between', async () => {
    expect((await solve(PLAN, '--set', 'switch=on')).json.notes).toEqual([])
  })
})

describe('loops of wires without resistance are undetermined, and named', () => {
  test('two wires side by side', async () => {
    const { wires } = await expectNote(withWires(link('w2b', 'switch:b', 'load:a')), 'the amps of w2, w2b are undetermined: they lie in loops of conductors without resistance', '--set', 'switch=on')
    expect([wires.w2.amps, wires.w2b.amps]).toEqual([null, null])
    expect(wires.w3.amps).toBeCloseTo(12 / 6.01, 6)
    expect((await solve(withWires(link('w2b', 'switch:b', 'load:a')))).text).toMatch(/^w2b .*undetermined/m)
  })

  test('a ring of three, and a wire back to where it came from', async () => {
    const plan: RecordPlan = { ...PLAN, splices: { a: {}, b: {} }, wires: [...PLAN.wires ?? [], link('r1', 'body', 'a'), link('r2', 'a', 'b'), link('r3', 'b', 'body'), link('self', 'body', 'body')] }
    await expectNote(plan, /^the amps of r1, r2, r3, self are undetermined/)
  })
})

describe('what nothing reaches', () => {
  test('floating points are listed', async () => {
    const { text, json } = await solve({ ...PLAN, parts: [...PLAN.parts ?? [], part('spare', 'resistor', { ohm: 5 })] })
    expect(json.floating).toEqual(expect.arrayContaining(['spare:a', 'spare:b']))
    expect(json.voltages['spare:a']).toBeNull()
    expect(text).toMatch(/^Floating \(no path leads there\): .*spare:a, spare:b/m)
  })

  test('every control open: no current flows', async () => {
    const { wires } = await expectNote(PLAN, 'no current flows in this setting: every way from a source is open')
    expect(Object.values(wires).map(({ amps }) => amps)).toEqual([0, 0, 0, 0])
  })

  test('no battery at all', async () => {
    await expectNote({ ...PLAN, parts: PLAN.parts?.slice(1) ?? [], wires: PLAN.wires?.slice(1, 3) ?? [] }, /^nothing is live: this vehicle has no battery/, '--set', 'switch=on')
  })

  test('no part and no wire', async () => {
    await expectNote({}, /^nothing is live/)
  })

  test('nothing but a battery', async () => {
    await expectNote({ parts: PLAN.parts?.slice(0, 1) ?? [] }, /^no current flows/)
  })
})

describe('figures that no vehicle has', () => {
  const sentences = (plan: RecordPlan) => {
    const read = readRecord(writeRecord(makeRecord(plan)), partKinds)
    return read.ok ? [] : read.problems.map(({ sentence }) => sentence)
  }

  test('are refused by their place', () => {
    expect(sentences({ ...PLAN, assume: { ...IDEAL, fixingOhm: 1.7e308 } })).toContain('assume.fixingOhm: expected 0, or a number from 1e-9 to 1000000000 in size, found 1.7e+308.')
    expect(sentences({ ...PLAN, parts: [...PLAN.parts ?? [], part('lamp', 'lamp', { powerW: 5, ratedV: 1e-300 })] })).toEqual(['parts.lamp.params.ratedV: expected 0, or a number from 1e-9 to 1000000000 in size, found 1e-300.'])
  })

  test('are refused as a fault too', async () => {
    const { code, said } = await runOn(writeRecord(makeRecord(PLAN)), 'solve', '--fault', 'set:load.ohm=1e300')
    expect(code).toBe(2)
    expect(said).toContain('load cannot have ohm = 1e+300: ohm: expected 0, or a number from 1e-9 to 1000000000 in size, found 1e+300')
  })

  // Conductances of fifteen orders of magnitude meet at one node: the digits of a number do not reach so far.
  test.each([[1e-9, 1e9, 1e9], [1e9, 1e-9, 1e-6], [1e-9, 1e-9, 1e-9], [1e9, 1e9, 1e9]])('at the very ends of what is read still give an answer: %d V, %d W, %d Ω', (ratedV, powerW, ohm) => {
    const circuit = circuitOf({
      ...PLAN, parts: [...PLAN.parts ?? [], part('lamp', 'lamp', { powerW, ratedV })], splices: { s: {}, t: {} },
      wires: [...PLAN.wires ?? [], wire('a', 'battery:+', 's', { ohm }), wire('b', 's', 'lamp:in', { ohm: 2e-6 }), wire('c', 'lamp:out', 't', { ohm: 1e9 }), wire('d', 't', 'body', { ohm: 2e-6 })],
    })
    expect(judgeSolved(circuit, solveSetting(circuit, setting({ 'switch.p': 'on' })).solved)).toEqual([])
  })
})
