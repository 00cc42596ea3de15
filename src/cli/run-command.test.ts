import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { writeRecord, type RecordWire } from '../record/index.ts'
import { onOff } from '../../test/builders/circuits.ts'
import { link, makeRecord, part, wire, years } from '../../test/builders/record.ts'
import { runCommand } from './run-command.ts'

const folder = mkdtempSync(join(tmpdir(), 'loomwright-'))

function write(name: string, text: string | Uint8Array): string {
  const file = join(folder, name)
  writeFileSync(file, text)
  return file
}

/** Battery of 12 V and 0.1 Ω, a switch, a resistor of 5.9 Ω; from 1960 on a lamp instead. */
const record = makeRecord({
  metals: ['body'], assume: { jointOhm: 0, contactOhm: 0 },
  parts: [
    part('battery', 'battery', { emfV: 12, ohm: 0.1 }), part('switch', 'control', onOff()),
    part('heater', 'resistor', { ohm: 5.9 }, { role: 'load', fits: years(1950, 1959) }), part('lamp', 'lamp', { powerW: 21 }, { role: 'load', fits: years(1960) }),
  ],
  wires: [
    link('w1', 'battery:+', 'switch:a'), link('w2', 'switch:b', 'heater:a', { fits: years(1950, 1959) }), link('w3', 'heater:b', 'body', { fits: years(1950, 1959) }),
    wire('w4', 'switch:b', 'lamp:in', { ohm: 0.05, colour: { base: 'red', tracers: ['black'] }, sizeStrands: '28/0.30', fits: years(1960) }), link('w5', 'lamp:out', 'body', { fits: years(1960) }), link('e', 'battery:-', 'body'),
  ],
})
const file = write('record.json', writeRecord(record))

async function run(...args: string[]) {
  let printed = '', said = ''
  const code = await runCommand(args, { print: (text) => { printed += text }, complain: (text) => { said += text }, progress: () => undefined })
  return { code, printed, said, json: () => JSON.parse(printed) as Record<string, never> }
}

describe('check', () => {
  it('is content with a vehicle that resolves', async () => {
    expect(await run('check', file, '--year', '1955')).toMatchObject({ code: 0 })
  })

  it('checks every edition where no vehicle is described', async () => {
    const { code, printed } = await run('check', file)
    expect(code).toBe(0)
    expect(printed).toContain('Test vehicle: 3 editions, 1 to be looked at, 2 sound.')
    expect(printed).toContain('1950 and later: sound. 12 V, negative earth; 3 parts, 4 wires, 0 splices, 0 looms.')
    expect(printed).toMatch(/^up to 1949:\n {2}Nothing is joined to switch:b/m)
    const { ok, editions } = (await run('check', file, '--json')).json() as unknown as { ok: boolean, editions: { vehicle: object, span: object, ok: boolean }[] }
    expect([ok, editions.length, editions[1]]).toMatchObject([true, 3, { vehicle: { year: 1950 }, span: { from: 1950, to: 1959 }, ok: true }])
  })

  it('exits 1 where one edition has no wiring, and names its years', async () => {
    const lamp = { ...record.parts.lamp, fits: [{ years: { from: 1958 } }] }
    const { code, printed } = await run('check', write('roles.json', writeRecord({ ...record, parts: { ...record.parts, lamp } })))
    expect(code).toBe(1)
    expect(printed).toContain('Test vehicle: 4 editions, 1 not sound, 1 to be looked at, 2 sound.')
    expect(printed).toMatch(/^1958 to 1959:\n {2}parts\.lamp: heater and lamp both are "load"/m)
  })

  it('calls a vehicle with a short-circuited battery not sound', async () => {
    const short = write('short.json', writeRecord({ ...record, wires: { ...record.wires, short: { ends: [{ at: 'switch:a' }, { at: 'body' }], fits: [{ years: { to: 1951 } }] } } }))
    const { code, printed } = await run('check', short, '--year', '1951')
    expect(code).toBe(0)
    expect(printed).toContain('resolved without conflict; not sound.')
    expect(printed).toContain('through w1, short (up to 1951), e with no load between: leave it off')
    expect((await run('check', short)).printed).toContain('up to 1949: not sound.')
    expect(await run('check', short, '--year', '1952')).toMatchObject({ code: 0 })
  })

  it('calls a vehicle whose battery is joined to nothing not sound, and a wire entered twice to be looked at', async () => {
    const { e: _, ...others } = record.wires ?? {}
    const { printed } = await run('check', write('no-earth.json', writeRecord({ ...record, wires: others })), '--year', '1955')
    expect(printed).toContain('resolved without conflict; not sound.')
    expect(printed).toContain('Look at this: nothing is joined to battery:-, an end of a battery or a generator')
    const red = { ...record.wires?.w1, colour: { base: 'red' } }
    const twice = await run('check', write('twice.json', writeRecord({ ...record, wires: { ...record.wires, w1: red, w1b: red } } as typeof record)), '--year', '1955')
    expect(twice.printed).toContain('wires.w1 and wires.w1b join the same two points in the same colour and size: if the wire was entered twice, take one out')
    const noted = await run('check', write('noted.json', writeRecord({ ...record, wires: { ...record.wires, w1: red, w1b: { ...red, note: 'laid beside it in 1962' } } } as typeof record)), '--year', '1955')
    expect(noted.printed).not.toContain('entered twice')
  })

  it('exits 1 where a vehicle cannot be told, and says what to find out', async () => {
    const unknown = write('unknown.json', writeRecord({ ...record, supply: { supply: { systemV: 'unknown', earth: 'negative' } } }))
    const { code, printed } = await run('check', unknown, '--year', '1955')
    expect(code).toBe(1)
    expect(printed).toContain('find out the volts of the system')
    expect((await run('check', unknown)).code).toBe(1)
  })

  it('says what is missing and what solving would assume', async () => {
    const { printed } = await run('check', write('loose.json', writeRecord({ ...record, wires: { ...record.wires, w2: { ...record.wires?.w2, ends: [{ at: 'switch:b' }, { at: 'body' }] } as RecordWire } })), '--year', '1955')
    expect(printed).toContain('Nothing is joined to heater:a')
    expect(printed).toContain('Capacity 50 Ah: a battery of usual size – at battery')
    expect(printed).not.toContain('Rpm')
    expect((await run('check', file, '--year', '1955', '--json')).json()).toMatchObject({ ok: true, unjoined: [], shorted: [] })
  })

  it('says that no set of parameters is for this vehicle', async () => {
    const lamp = { ...record.parts.lamp, params: undefined, paramSets: { late: { fits: [{ years: { from: 1966 } }], params: { powerW: 21 } } } }
    const { printed } = await run('check', write('sets.json', writeRecord({ ...record, parts: { ...record.parts, lamp } })), '--year', '1965')
    expect(printed).toContain('none of its parameter sets is for this vehicle (late is for 1966 and later)')
  })

  it('exits 2 on a record that cannot be read', async () => {
    const { code, said } = await run('check', write('broken.json', '{ "format": "loomwright-record", '))
    expect(code).toBe(2)
    expect(said).toMatch(/line 1/)
    expect(said).not.toMatch(/at .*\.ts:\d/)
  })

  it('exits 2 on text that is not UTF-8', async () => {
    const { code, said } = await run('check', write('latin.json', Uint8Array.of(0x7b, 0xe9, 0x7d)))
    expect(code).toBe(2)
    expect(said).toContain('UTF-8')
  })
})

describe('solve', () => {
  it('says first which vehicle it is, and what takes current beside the lamps', async () => {
    const { printed } = await run('solve', file, '--year', '1955', '--set', 'switch=on')
    expect(printed.split('\n')[0]).toBe('Vehicle: Test vehicle, of 1955; 12 V, negative earth.')
    expect((await run('meter', file, '--year', '1955', '--volts', 'battery:+', 'body')).printed).toContain('Vehicle: Test vehicle, of 1955')
  })

  it('judges a speed below zero as a speed', async () => {
    expect((await run('solve', file, '--year', '1955', '--engine', '-5')).said).toContain('there is no engine state "-5"')
  })

  it('gives the amps of a wire', async () => {
    const { code, json } = await run('solve', file, '--year', '1955', '--set', 'switch=on', '--json')
    expect(code).toBe(0)
    expect(json()).toMatchObject({ wires: { w2: { amps: 2, dropV: 0 } }, outcome: 'rests', floating: [] })
  })

  it('chains settings with --then', async () => {
    const { json } = await run('solve', file, '--year', '1955', '--set', 'switch.p=on', '--then', '--set', 'switch=off', '--json')
    const { steps } = json() as unknown as { steps: { wires: { w2: { amps: number } } }[] }
    expect(steps.map(({ wires }) => wires.w2.amps)).toEqual([2, 0])
  })

  it('lays faults on', async () => {
    const { json } = await run('solve', file, '--year', '1955', '--set', 'switch=on', '--fault', 'ohms:w2=6', '--fault', 'set:battery.ohm=0.1', '--json')
    expect(json()).toMatchObject({ wires: { w2: { amps: 1 } } })
  })

  it('names the faults laid on', async () => {
    const args = ['solve', file, '--year', '1955', '--set', 'switch=on', '--fault', 'open:w2']
    expect((await run(...args)).printed).toContain('Fault laid on: wire w2 is open (open:w2).')
    expect((await run(...args, '--json')).json()).toMatchObject({ faults: [{ fault: 'open:w2', said: 'wire w2 is open' }] })
  })

  it('lays a fault given twice once, and says so', async () => {
    const { printed } = await run('solve', file, '--year', '1955', '--set', 'switch=on', '--fault', 'ohms:w2=6', '--fault', 'ohms:w2=6')
    expect(printed).toContain('Fault laid on: wire w2 has 6 Ω more, given more than once and laid once (ohms:w2=6).')
    expect(printed).toMatch(/w2 .*1\.000/)
  })

  it('lays ohms at both ends of one wire', async () => {
    const { json } = await run('solve', file, '--year', '1955', '--set', 'switch=on', '--fault', 'ohms:w2.1=3', '--fault', 'ohms:w2.2=3', '--json')
    expect(json()).toMatchObject({ wires: { w2: { amps: 1 } } })
  })

  it('says for which vehicles a wire is that is not in this one', async () => {
    const { code, said } = await run('solve', file, '--year', '1955', '--fault', 'open:w4')
    expect(code).toBe(2)
    expect(said).toContain('"w4" is not in this vehicle: the record has it for 1960 and later')
  })

  it.each([
    [['--set', 'switch=on', '--set', 'switch=off'], '(switch.p) is set twice'], [['--fault', 'join:body=body'], 'two different points'],
    [['--fault', 'set:heater.ohm=-1'], 'expected a number'],
    [['--fault', 'open:w2', '--fault', 'ohms:w2=6'], 'open:w2 (wire w2 is open) and ohms:w2=6 (wire w2 has 6 Ω more) cannot both be: leave one of them out'],
    [['--fault', 'ohms:heater=1', '--fault', 'open:heater'], 'cannot both be'], [['--fault', 'ohms:w2=1', '--fault', 'ohms:w2=2'], 'cannot both be'],
    [['--fault', 'set:battery.ohm=0.1', '--fault', 'set:battery.ohm=0.2'], 'cannot both be'],
  ])('refuses %j in plain words', async (more, sentence) => {
    const { code, said } = await run('solve', file, '--year', '1955', ...more)
    expect(code).toBe(2)
    expect(said).toContain(sentence)
  })

  it('says what the engine moved and that settings came before', async () => {
    const oil = part('oil', 'control', { axes: { p: { positions: ['none', 'present'], rest: 'none', follows: { running: 'present' } } }, rows: { on: { when: { p: ['present'] }, joins: ['a', 'b'] } } })
    const { printed } = await run('solve', write('oil.json', writeRecord({ ...record, parts: { ...record.parts, oil: oil[1] } })), '--year', '1955', '--engine', 'idle', '--then', '--set', 'switch=on')
    const [first, second] = printed.split('════════')
    expect(first).toContain('Moved by the engine: oil (oil.p) at present.')
    expect(first).not.toContain('settings before')
    expect(second).toContain('What the settings before have made stays made if it can.')
    expect(second).not.toContain('Moved by the engine')
  })

  it('prints a table for a person', async () => {
    const { printed } = await run('solve', file, '--year', '1965', '--set', 'switch=on')
    expect(printed).toMatch(/lamp .*volts.*rated V.*% of rated V/)
    expect(printed).toContain('normal')
    expect(printed).toContain("Volts are against body, which carries the battery's earth lead.")
    expect(printed).toMatch(/w4 +red\/black +28\/0.30 +switch:b – lamp:in +1\d\.\d\d +1\d\.\d\d +1\.\d{3} +0\.\d{3}/)
    expect(printed).toMatch(/Power given: \d+\.\d W, of it \d+\.\d W in what it drives, 0\.\d W lost in wires, joints and contacts\./)
    expect(printed).not.toContain('Positive earth')
  })

  it('says that with positive earth what is live reads negative', async () => {
    const { printed } = await run('solve', write('positive.json', writeRecord({ ...record, supply: { s1: { systemV: 12, earth: 'positive' } }, wires: {
      ...record.wires, e: { ends: [{ at: 'battery:+' }, { at: 'body' }] }, w1: { ends: [{ at: 'battery:-' }, { at: 'switch:a' }] },
    } })), '--year', '1955')
    expect(printed).toContain('Positive earth: what is live reads negative.')
  })

  it.each([
    [['--set', 'swich=on'], 'switch.p'], [['--set', 'switch=maybe'], 'off'], [['--engine', 'fast'], 'cruise'], [['--fault', 'open:w99'], 'w2'],
    [['--fault', 'burn:w1'], 'open:WIRE'], [['--market', 'moon'], 'market'], [['--phase', 'x=y'], 'phase'], [['--wrong'], '--year'], [['--year', 'old'], 'four digits'],
    [['--fault', 'set:battery.ohm=lots'], 'capacityAh'], [['--fault', 'set:battery.zzz=1'], 'capacityAh'], [['--fault', 'set:battery.cells=0'], 'cells'],
  ])('exits 2 on %j and names what is valid', async (more, named) => {
    const { code, said } = await run('solve', file, '--year', '1955', ...more)
    expect(code).toBe(2)
    expect(said).toContain(named)
  })

  it('exits 2 where the vehicle cannot be resolved', async () => {
    expect(await run('solve', file)).toMatchObject({ code: 2 })
  })
})

describe('meter', () => {
  it('is held to the end of a wire that has been taken off', async () => {
    // The first end still sits on the battery.
    const volts = async (...more: string[]) => ((await run('meter', file, '--year', '1955', '--volts', 'w1.2', 'body', '--json', ...more)).json() as unknown as { volts: number }).volts
    expect(await volts('--fault', 'open:w1.2')).toBeCloseTo(12, 3)
    expect((await run('meter', file, '--year', '1955', '--volts', 'w1.3', 'body')).said).toContain('no point "w1.3"')
  })

  const at = ['--year', '1955', '--set', 'switch=on', '--json']

  it('reads volts, amps and ohms', async () => {
    expect((await run('meter', file, ...at, '--volts', 'switch:b', 'body')).json()).toMatchObject({ kind: 'volts', withoutMeterV: 11.8 })
    expect((await run('meter', file, ...at, '--amps', 'w2')).json()).toMatchObject({ kind: 'amps', amps: 2 })
    const ohms = (await run('meter', '--ohms', 'heater:a', 'body', file, ...at)).json() as unknown as { ohm: number }
    expect(ohms.ohm).toBeCloseTo(5.9, 6)
  })

  it('says what the reading rests on', async () => {
    const { printed } = await run('meter', file, '--year', '1955', '--set', 'switch=on', '--fault', 'ohms:w2=6', '--amps', 'w2')
    expect(printed).toContain('1.0000 A in w2')
    expect(printed).toContain('Setting: switch (switch.p) at on, engine stopped, battery full')
    expect(printed).toContain('Fault laid on: wire w2 has 6 Ω more')
    expect(printed).toContain('Assumed, because the record does not say:')
    const read = (await run('meter', file, ...at, '--fault', 'ohms:w2=6', '--amps', 'w2')).json()
    expect(read).toMatchObject({ amps: 1, setting: { controls: { 'switch.p': 'on' } }, faults: [{ fault: 'ohms:w2=6' }], moved: {} })
    expect(read.assumed).not.toEqual([])
  })

  describe('and what was assumed', () => {
    const joined = Object.fromEntries([wire('w1', 'battery:+', 'switch:a', { ohm: 0 }), wire('w2', 'switch:b', 'heater:a', { ohm: 0 })])
    const { heater, ...others } = record.parts
    const jointed = write('jointed.json', writeRecord({
      ...record, assume: undefined, parts: { ...others, heater: { ...heater, fits: undefined }, horn: part('horn', 'horn', {})[1] },
      wires: { ...record.wires, ...joined },
    }))
    const asked = ['meter', jointed, '--year', '1955', '--set', 'switch=on']

    it('bears on the reading where it carries current', async () => {
      const { printed } = await run(...asked, '--amps', 'w2')
      expect(printed).toContain('more of what carries no current here: add --all-assumed')
      expect(printed).toContain('crimped or screwed joint – at w1.1, w1.2, w2.1 and 1 more')
      expect(printed).not.toContain('at horn')
    })

    it('is listed whole, with every place, by --all-assumed and in JSON', async () => {
      const whole = (await run(...asked, '--amps', 'w2', '--all-assumed')).printed
      expect(whole).toContain('crimped or screwed joint – at w1.1, w1.2, w2.1, w2.2\n')
      expect(whole).toContain('Rated 12 V: system volts – at heater, horn')
      const { assumed } = (await run(...asked, '--amps', 'w2', '--json')).json() as unknown as { assumed: { path: string; bears: boolean }[] }
      const bears = (path: string) => assumed.find((one) => one.path === path)?.bears
      expect([bears('parts.horn.params.ratedV'), bears('wires.w2.ends.0.jointOhm')]).toEqual([false, true])
    })

    it('does not bear on what is open', async () => {
      const { printed } = await run(...asked, '--amps', 'w2', '--fault', 'open:w2')
      expect(printed).not.toContain('crimped or screwed joint')
    })

    it('bears on ohms where the ohmmeter drives its current', async () => {
      const { printed } = await run(...asked, '--ohms', 'heater:a', 'switch:b')
      expect(printed).toContain('crimped or screwed joint – at w2.1, w2.2')
      expect(printed).not.toContain('– at battery')
    })
  })

  it('puts a lamp in series with the battery lead', async () => {
    expect((await run('meter', file, '--year', '1955', '--json', '--series-lamp', '21')).json()).toMatchObject({ lamp: { class: 'off' } })
  })

  it('exits 2 without a meter, with two, or with a point that is not there', async () => {
    expect(await run('meter', file, ...at)).toMatchObject({ code: 2 })
    expect(await run('meter', file, ...at, '--amps', 'w2', '--series-lamp', '5')).toMatchObject({ code: 2 })
    const { code, said } = await run('meter', file, ...at, '--volts', 'switch:c', 'body')
    expect(code).toBe(2)
    expect(said).toContain('switch:b')
  })
})

describe('commands', () => {
  it('helps with examples', async () => {
    const { code, printed } = await run('--help')
    expect(code).toBe(0)
    expect(printed).toContain('Examples')
  })

  it.each(['check', 'solve', 'meter', 'serve'])('%s has a page of its own, with an example', async (name) => {
    const { code, printed } = await run(name, '--help')
    expect(code).toBe(0)
    expect(printed).toMatch(new RegExp(`^loomwright ${name} .*\\n\\n[^]*\\nExamples?\\n  loomwright ${name} examples/`))
    expect(await run('help', name)).toMatchObject({ printed })
  })

  it('exits 2 on a command that is not there', async () => {
    expect(await run('drive')).toMatchObject({ code: 2 })
  })
})
