// Turn a switch and see what is truly live; then take an earth away and see where the current goes instead.
import { readFileSync } from 'node:fs'
import { layFaults, partKinds, prepareCircuit, readRecord, resolveVehicle, solveSetting, type Setting } from '../src/main.ts'

const read = readRecord(readFileSync(new URL('vehicles/tessarby-errand.json', import.meta.url), 'utf8'), partKinds)
if (!read.ok) throw new Error('the record cannot be read')
const resolved = resolveVehicle(read.record, { year: 1962 }, partKinds)
if (!resolved.ok) throw new Error('the vehicle cannot be resolved')

const circuit = prepareCircuit(resolved.wiring, partKinds)
const setting: Setting = {
  controls: { 'switch-box.key': 'on', 'switch-box.lights': 'head', 'brake-switch.pedal': 'pressed' }, engine: 'stopped', battery: 'full', phases: {},
}

for (const [lamp, { percent, class: how }] of Object.entries(solveSetting(circuit, setting).solved.lamps)) {
  if (how !== 'off') console.log(`${lamp}: ${percent.toFixed(0)} % of its rated volts, ${how}`)
}

const { solved } = solveSetting(layFaults(circuit, partKinds, [{ kind: 'open', id: 'left-wing-bolts' }]), setting)
console.log(`with the left wing's bolts loose the left tail lamp has ${solved.lamps['tail-left'].percent.toFixed(0)} %`)
