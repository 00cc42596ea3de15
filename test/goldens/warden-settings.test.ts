// Forty solved settings of each edition of the main demo vehicle, with all its options. `npm run golden` renews them; read the difference.
import { expect, test } from 'vitest'
import { solveSetting, type Circuit, type Setting, type SolvedSetting } from '../../src/circuit/index.ts'
import { fortySettings } from '../builders/forty-settings.ts'
import { WARDEN_OPTIONS, WARDEN_YEARS, wardenCircuit } from '../builders/warden.ts'

test.each(WARDEN_YEARS)('the tender of %s gives the figures on record', async (year) => {
  const circuit = wardenCircuit(year, WARDEN_OPTIONS)
  const settings = fortySettings(circuit, { 'key.key': 'on' }, year)
  const said = settings.map((setting, i) => saySetting(circuit, i + 1, setting))
  expect(settings).toHaveLength(40)
  await expect(`${said.join('\n')}`).toMatchFileSnapshot(`ullenscombe-warden/${year}.txt`)
})

/** One setting in a few lines: what is set, the battery, what is lit, fed and pulled, what goes round, where the needles stand. */
function saySetting(circuit: Circuit, number: number, setting: Setting): string {
  const { solved } = solveSetting(circuit, setting, { skipStanding: true })
  const moved = Object.entries(setting.controls).map(([id, position]) => `${id} ${position}`)
  return [
    `${number}. ${[...moved, setting.engine, `battery ${setting.battery}`].join(', ')}`,
    line('', solved.outcome === 'rests' ? [] : [solved.outcome]),
    line('battery', Object.entries(solved.elements).filter(([id]) => /^battery/.test(id)).map(([id, { volts, amps }]) => `${id} ${figure(volts, 2)} V ${figure(amps, 2)} A`)),
    line('lit, %', Object.entries(solved.lamps).filter(([, { percent }]) => percent >= 1).map(([id, { percent }]) => `${id} ${percent.toFixed(1)}`)),
    line('fed, V', fed(circuit, solved)),
    line('states', Object.entries(solved.states).filter(([id, state]) => state !== circuit.network.states.find((one) => one.id === id)?.spec.rest).map(([id, state]) => `${id} ${state}`)),
    line('phases', Object.entries(solved.phases).filter(([, { cycle }]) => cycle).map(([id, { cycle, rate }]) => `${id} ${cycle!.join('-')}${rate === undefined ? '' : `, ${rate}`}`)),
    line('needles', Object.entries(solved.dials).map(([id, { shows, unit }]) => `${id} ${figure(shows, 1)} ${unit}`)),
    line('notes', solved.notes),
  ].filter(Boolean).join('\n') + '\n'
}

/** Loads that are no lamps, from a tenth of a volt. */
function fed({ network }: Circuit, { elements, lamps }: SolvedSetting): string[] {
  return network.elements.filter(({ id, does }) => does === 'load' && !(id in lamps) && Math.abs(elements[id].volts ?? 0) >= 0.1)
    .map(({ id }) => `${id} ${figure(Math.abs(elements[id].volts ?? 0), 2)}`)
}

function line(name: string, items: readonly string[]): string {
  return items.length === 0 ? '' : `   ${name}${name && ': '}${items.join('; ')}`
}

function figure(value: number | null, digits: number): string {
  return value === null ? 'undetermined' : (Math.abs(value) < 0.5 * 10 ** -digits ? 0 : value).toFixed(digits)
}
