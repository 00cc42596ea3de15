import { batterySymbol } from './battery.ts'
import { boxSymbol } from './box.ts'
import { breakerSymbol } from './breaker.ts'
import { capacitorSymbol } from './capacitor.ts'
import { coilSymbol } from './coil.ts'
import { controlSymbol } from './contact.ts'
import { clockSymbol, gaugeSymbol } from './dial.ts'
import { diodeSymbol, ledSymbol } from './diode.ts'
import { electromagnetSymbol } from './electromagnet.ts'
import { flasherSymbol } from './flasher.ts'
import { fuseSymbol } from './fuse.ts'
import { hornSymbol } from './horn.ts'
import { jointSymbol } from './joint.ts'
import { lampSymbol } from './lamp.ts'
import { magnetoSymbol } from './magneto.ts'
import { roundSymbol } from './motor.ts'
import { resistorSymbol } from './resistor.ts'
import { circuitBreakerSymbol, stabiliserSymbol } from './strip.ts'
import type { PartSymbol } from './symbol.ts'

/** By part kind. */
const symbols: Readonly<Record<string, PartSymbol>> = {
  'alternator': boxSymbol('G'),
  'ammeter': roundSymbol('A'),
  'battery': batterySymbol,
  'breaker': breakerSymbol,
  'capacitor': capacitorSymbol,
  'circuit-breaker': circuitBreakerSymbol,
  'clock': clockSymbol,
  'coil': coilSymbol,
  'control': controlSymbol,
  'control-box': boxSymbol(),
  'diode': diodeSymbol,
  'dynamo': boxSymbol('G'),
  'electromagnet': electromagnetSymbol,
  'flasher': flasherSymbol,
  'fuse': fuseSymbol,
  'gauge': gaugeSymbol,
  'horn': hornSymbol,
  'joint': jointSymbol,
  'lamp': lampSymbol,
  'led': ledSymbol,
  'magneto': magnetoSymbol,
  'module': boxSymbol(),
  'motor': roundSymbol('M'),
  'resistor': resistorSymbol,
  'stabiliser': stabiliserSymbol,
  'voltmeter': roundSymbol('V'),
  'wiper': roundSymbol('M', true),
}

const plainBox = boxSymbol()

/** The symbol of a part kind; a plain box for a kind that has none. */
export function symbolOf(kind: string): PartSymbol {
  return symbols[kind] ?? plainBox
}
