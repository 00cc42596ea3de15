import type { Law } from '../record/index.ts'
import { partDefaults } from '../standards/index.ts'

/** How many changes are kept. */
export const LOGGED = 16

/**
 * The numeric laws of a network's elements: current and slope by voltage. Every law is non-decreasing,
 * so Kirchhoff's current law is the gradient of a convex function.
 */
export class LawTable {
  private readonly kind: Uint8Array
  private readonly p: Float64Array
  /** Conductance of each element that is a plain resistance or open, S; NaN where the law has to be asked. */
  readonly plainS: Float64Array
  /** The inverse of each. */
  readonly plainOhm: Float64Array
  /** Current of the last `evaluate`, A, from the element's first end to its second. */
  current = 0
  /** Its slope, S. */
  slope = 0
  /** 1 for each element that does not conduct at all, padded to whole words: which nodes float depends on nothing else. */
  readonly open: Uint8Array
  /** The same as a number, all but unmistakable. */
  openMark = 0
  /** Counts the times that a plain conductance changed, or an element became plain or ceased to be. */
  changes = 0
  /** The elements of the last changes: of change c at c % LOGGED. */
  readonly changed = new Int32Array(LOGGED)

  private readonly one = { element: new Int32Array(1), volts: new Float64Array(1), current: new Float64Array(1), slope: new Float64Array(1) }

  constructor(readonly size: number) {
    this.kind = new Uint8Array(size)
    this.p = new Float64Array(size * WIDTH)
    this.plainS = new Float64Array(size)
    this.plainOhm = new Float64Array(size).fill(Infinity)
    this.open = new Uint8Array(Math.ceil(size / 4) * 4).fill(1)
  }

  set(index: number, law: Law, addedOhm = 0): void {
    const plainS = law.kind === 'open' ? 0 : law.kind === 'resistor' ? 1 / Math.max(law.ohm + addedOhm, LEAST_OHM) : NaN
    const isOpen = plainS === 0 ? 1 : 0
    if (isOpen !== this.open[index]) this.turnOpen(index)
    if (!Object.is(plainS, this.plainS[index])) this.changed[this.changes++ % LOGGED] = index
    this.kind[index] = CODES[law.kind]
    this.plainS[index] = plainS
    this.plainOhm[index] = 1 / plainS
    const p = index * WIDTH
    switch (law.kind) {
      case 'open':
      case 'resistor': return
      case 'filament': return this.setFilament(p, law)
      case 'diode': return this.setDiode(p, law, addedOhm)
      case 'battery':
        this.p[p] = law.emfV
        this.p[p + 1] = 1 / (Math.max(law.ohm, LEAST_BATTERY_OHM) + addedOhm)
        this.p[p + 2] = Math.max(law.counterV, law.emfV)
        this.p[p + 3] = 1 / (Math.max(law.chargeOhm, LEAST_BATTERY_OHM) + addedOhm)
        return
      case 'source':
        this.p[p] = law.emfV
        this.p[p + 1] = 1 / (Math.max(law.ohm, LEAST_BATTERY_OHM) + addedOhm)
    }
  }

  private setFilament(p: number, law: Extract<Law, { kind: 'filament' }>): void {
    this.p[p] = law.ratedV
    this.p[p + 1] = law.ratedW / law.ratedV
    this.p[p + 2] = law.coldRatio ** (-2 / FILAMENT_POWER)
    this.p[p + 3] = this.p[p + 1] * this.p[p + 2] ** (-FILAMENT_POWER / 2)
  }

  private setDiode(p: number, law: Extract<Law, { kind: 'diode' }>, addedOhm: number): void {
    const thermalV = law.emission * THERMAL_V
    const ohm = Math.max(law.ohm + addedOhm, 1e-3)
    const junctionV = law.forwardV - law.ratedA * law.ohm
    this.p[p] = thermalV
    this.p[p + 1] = law.ratedA / Math.expm1(Math.max(junctionV, thermalV) / thermalV)
    this.p[p + 2] = ohm
  }

  private turnOpen(index: number): void {
    this.open[index] ^= 1
    this.openMark ^= Math.imul(index + 1, SPREAD)
  }

  /** Sets `current` and `slope` for the element at this voltage. */
  evaluate(index: number, volts: number): void {
    const p = index * WIDTH
    switch (this.kind[index]) {
      case 0:
      case 1: this.slope = this.plainS[index]; this.current = this.slope * volts; return
      case FILAMENT: return this.evaluateFilament(index, volts)
      case 3: return this.evaluateDiode(p, volts)
      case 4: return this.evaluateBattery(p, volts)
      case 5: this.slope = this.p[p + 1]; this.current = this.slope * (volts - this.p[p])
    }
  }

  /** Evaluates many elements at once: `currents` and `slopes` take what `evaluate` gives for each. */
  evaluateMany(count: number, elements: Int32Array, volts: Float64Array, currents: Float64Array, slopes: Float64Array): void {
    const { kind, p: param } = this
    for (let i = 0; i < count; i++) {
      const element = elements[i]
      if (kind[element] === FILAMENT) {
        const p = element * WIDTH, ratedV = param[p]
        const u = volts[i] / ratedV
        const s = u * u + param[p + 2]
        // Of a lamp without current nothing is left to compute.
        const f = u * u < NO_LIGHT ? param[p + 3] : param[p + 1] * Math.exp(-FILAMENT_POWER / 2 * Math.log(s))
        currents[i] = f * u
        slopes[i] = f * (1 - FILAMENT_POWER * u * u / s) / ratedV
      } else {
        this.evaluate(element, volts[i])
        currents[i] = this.current
        slopes[i] = this.slope
      }
    }
  }

  private evaluateFilament(index: number, volts: number): void {
    this.one.element[0] = index
    this.one.volts[0] = volts
    this.evaluateMany(1, this.one.element, this.one.volts, this.one.current, this.one.slope)
    this.current = this.one.current[0]
    this.slope = this.one.slope[0]
  }

  /**
   * What to add to a filament's slope, S, where a step would move it by a good part of its volts: for one that is lit the line from
   * the origin in place of the tangent, for a dark one the line to where the step leads. Elsewhere 0.
   */
  chordOverSlope(index: number, volts: number, step: number): number {
    const ratedV = this.p[index * WIDTH]
    if (this.kind[index] !== FILAMENT || Math.abs(step) < FAR * ratedV) return 0
    this.evaluate(index, volts)
    const { current, slope } = this
    if (Math.abs(volts) > DARK * ratedV) return current / volts - slope
    this.evaluate(index, volts + step)
    return (this.current - current) / step - slope
  }

  /** Newton on the junction's voltage: Vj + R·Is·(e^(Vj/nVt) − 1) = V, which is convex and rising. */
  private evaluateDiode(p: number, volts: number): void {
    const nvt = this.p[p], is = this.p[p + 1], ohm = this.p[p + 2]
    let vj = volts
    if (volts > 0) {
      vj = Math.min(volts, nvt * Math.log1p(volts / (ohm * is)))
      for (let step = 0; step < 60; step++) {
        const e = is * Math.exp(vj / nvt)
        const dv = (vj + ohm * (e - is) - volts) / (1 + ohm * e / nvt)
        vj -= dv
        if (Math.abs(dv) < 1e-14) break
      }
    }
    const g = is / nvt * Math.exp(vj / nvt)
    this.current = is * Math.expm1(vj / nvt) + LEAK_S * volts
    this.slope = g / (1 + ohm * g) + LEAK_S
  }

  /** Below its EMF it gives, above its counter-voltage it takes charge; between the two it takes next to nothing. */
  private evaluateBattery(p: number, volts: number): void {
    const emf = this.p[p], g = this.p[p + 1], counter = this.p[p + 2]
    if (volts <= emf) { this.slope = g; this.current = g * (volts - emf); return }
    const gap = Math.min(g, GAP_S)
    if (volts <= counter) { this.slope = gap; this.current = gap * (volts - emf); return }
    this.slope = this.p[p + 3]
    this.current = gap * (counter - emf) + this.slope * (volts - counter)
  }

  /** Slope at no voltage and no current: what an ohmmeter meets. Sources count as their resistance. */
  restSlope(index: number): number {
    const kind = this.kind[index]
    if (kind === 4 || kind === 5) return this.p[index * WIDTH + 1]
    this.evaluate(index, 0)
    return this.slope
  }
}

const WIDTH = 4
const FILAMENT = 2
/** 2³² over the golden ratio: its multiples lie far apart. */
const SPREAD = 0x9e3779b1
/** A step of this share of a lamp's rated volts is a far one. */
const FAR = 0.05
/** Below this share of its rated volts a lamp is dark. */
const DARK = 1e-3
const CODES: Readonly<Record<Law['kind'], number>> = { open: 0, resistor: 1, filament: FILAMENT, diode: 3, battery: 4, source: 5 }
/** A filament's resistance follows the voltage to this power about the rated point, since its current follows it to the rest of 1. */
const FILAMENT_POWER = 1 - partDefaults.lampCurrentExponent.value
/** Square of u below which u² is nothing beside e². */
const NO_LIGHT = 1e-20
const THERMAL_V = 0.02585
/** A reverse-biased junction leaks about a nanoampere a volt; common practice, no source. */
const LEAK_S = 1e-9
/** Conductance of a battery between its rest voltage and the voltage at which it takes charge; common practice, no source. */
const GAP_S = 0.01
const LEAST_BATTERY_OHM = 1e-4
/** Below this a resistor merges its ends. */
export const LEAST_OHM = 1e-6
