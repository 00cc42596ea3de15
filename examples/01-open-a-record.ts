// Read a record, and resolve it for one vehicle. Both answers are data: nothing throws on a bad file.
import { readFileSync } from 'node:fs'
import { partKinds, readRecord, resolveVehicle } from '../src/main.ts'

const text = readFileSync(new URL('vehicles/tessarby-errand.json', import.meta.url), 'utf8')
const read = readRecord(text, partKinds)
if (!read.ok) throw new Error(read.problems.map(({ sentence }) => sentence).join('\n'))

const resolved = resolveVehicle(read.record, { year: 1962 }, partKinds)
if (!resolved.ok) throw new Error([...resolved.conflicts, ...resolved.cannotTell].map(({ sentence }) => sentence).join('\n'))

const { title, systemV, earth, parts, wires } = resolved.wiring
console.log(`${title}: ${systemV} V, ${earth} earth, ${parts.size} parts, ${wires.size} wires`)
