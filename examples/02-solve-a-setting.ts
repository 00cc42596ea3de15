// Turn a switch and see what is truly live; then take an earth away and see where the current goes instead.
import { readFileSync } from 'node:fs'
import { layFaults, partKinds, prepareCircuit, readRecord, resolveVehicle, solveSetting, type Setting } from '../src/main.ts'

const read = readRecord(readFileSync(new URL('vehicles/tessarby-errand.json', import.meta.url), 'utf8'), partKinds)
if (!read.ok) throw new Error('the record cannot be read')
const resolved = resolveVehicle(read.record, { year: 1962 }, partKinds)
if (!resolved.ok) throw new Error('the vehicle cannot be resolved')

const circuit = prepareCircuit(resolved.wiring, partKinds)
const [axis] = circuit.network.axes.filter(({ spec }) => spec.movedBy === 'driver')
const setting: Setting = { controls: { [axis.id]: axis.spec.positions.at(-1) ?? '' }, engine: 'stopped', battery: 'full', phases: {} }

for (const [lamp, { percent, class: how }] of Object.entries(solveSetting(circuit, setting).solved.lamps)) {
  if (how !== 'off') console.log(`${lamp}: ${percent.toFixed(0)} % of its rated volts, ${how}`)
}

const [earth] = circuit.network.wiring.fixings.keys()
const { solved } = solveSetting(layFaults(circuit, partKinds, [{ kind: 'open', id: earth }]), setting)
console.log(`without ${earth}, floating: ${solved.floating.join(', ') || 'nothing'}`)
