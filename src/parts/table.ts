import type { PartKind } from '../record/index.ts'
import { alternator } from './alternator.ts'
import { ammeter } from './ammeter.ts'
import { battery } from './battery.ts'
import { breaker } from './breaker.ts'
import { capacitor } from './capacitor.ts'
import { circuitBreaker } from './circuit-breaker.ts'
import { clock } from './clock.ts'
import { coil } from './coil.ts'
import { control } from './control.ts'
import { controlBox } from './control-box.ts'
import { diode } from './diode.ts'
import { dynamo } from './dynamo.ts'
import { electromagnet } from './electromagnet.ts'
import { flasher } from './flasher.ts'
import { fuse } from './fuse.ts'
import { gauge } from './gauge.ts'
import { horn } from './horn.ts'
import { joint } from './joint.ts'
import { lamp } from './lamp.ts'
import { led } from './led.ts'
import { magneto } from './magneto.ts'
import { module } from './module.ts'
import { motor } from './motor.ts'
import { resistor } from './resistor.ts'
import { stabiliser } from './stabiliser.ts'
import { voltmeter } from './voltmeter.ts'
import { wiper } from './wiper.ts'

/** Every part kind. A new kind is one new file, its test and one line here. */
export const partKinds: readonly PartKind[] = [
  alternator, ammeter, battery, breaker, capacitor, circuitBreaker, clock, coil, control, controlBox, diode, dynamo, electromagnet,
  flasher, fuse, gauge, horn, joint, lamp, led, magneto, module, motor, resistor, stabiliser, voltmeter, wiper,
]
