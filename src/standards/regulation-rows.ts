import type { Sourced } from './sources.ts'

/** A figure or fact of dynamos, alternators, regulators and cut-outs. */
export interface Regulation extends Sourced {
  readonly item: string
  readonly systemV?: number
  readonly minV?: number
  readonly maxV?: number
  readonly setV?: number
  readonly minA?: number
  readonly maxA?: number
  readonly setA?: number
}

/** Charging volts, cut-out volts and how fields are earthed and polarised. */
export const regulation = {
  dynamo12V: { item: '12 V three-unit generator regulator, satisfactory voltage (hot, on vehicle)', systemV: 12, minV: 13.9, maxV: 14.9, setV: 14.3, source: 'tm-5-3820-233-35', status: 'read' },
  cutOutClose12V: { item: '12 V cut-out closing voltage, satisfactory', systemV: 12, minV: 11.8, maxV: 13.4, setV: 12.8, source: 'tm-5-3820-233-35', status: 'read' },
  currentRegulator40A: { item: 'current regulator of that 40 A unit', systemV: 12, minA: 38, maxA: 42, setA: 40, source: 'tm-5-3820-233-35', status: 'read' },
  electronicDynamo6V: { item: '6 V electronic replacement dynamo regulator, set to', systemV: 6, setV: 7.2, source: 'dynamo-regulator-maker', status: 'read' },
  regulated6V: { item: '6 V regulated voltage, warm', systemV: 6, minV: 6.9, maxV: 7.5, source: 'common-practice', status: 'common practice' },
  cutOutClose6V: { item: '6 V cut-out closing', systemV: 6, minV: 6.1, maxV: 6.8, source: 'common-practice', status: 'common practice', note: 'a question-and-answer page read gives 6.1 to 6.3 V for one cut-out, source unnamed' },
  cutOutOpen6V: { item: '6 V cut-out opening (dynamo slowing)', systemV: 6, minV: 4.8, maxV: 6, source: 'common-practice', status: 'common practice' },
  charging12V: { item: '12 V alternator or dynamo, usual charging band', systemV: 12, minV: 13.8, maxV: 14.4, source: 'common-practice', status: 'common practice' },
  openCircuit12V: { item: '12 V compensated-voltage dynamo regulator on OPEN circuit, 20 C', systemV: 12, minV: 15.6, maxV: 16.4, source: 'service-sheet-memory', status: 'from memory', note: 'higher than under load by design; component-maker figure, varies by type' },
  openCircuit6V: { item: '6 V compensated-voltage dynamo regulator on OPEN circuit, 20 C', systemV: 6, minV: 7.6, maxV: 8, source: 'service-sheet-memory', status: 'from memory', note: 'as the 12 V one' },
  reverseCurrent: { item: 'reverse current that opens the cut-out', minA: 1, maxA: 5, source: 'common-practice', status: 'common practice' },
  cutOutAction: { item: 'cut-out acts like a check valve: connects when generator voltage exceeds battery voltage, opens on reverse current', source: 'tm-9-8000', status: 'read' },
  overVoltage6V: { item: 'over-voltage alarm, 6 V vehicle, above', systemV: 6, maxV: 7.6, source: 'common-practice', status: 'common practice' },
  overVoltage12V: { item: 'over-voltage alarm, 12 V vehicle, above', systemV: 12, maxV: 15, source: 'common-practice', status: 'common practice' },
  aCircuit: { item: 'A circuit: field earthed through the regulator; polarise by a momentary jumper between BAT and GEN of the regulator', source: 'tm-5-3810-300-24', status: 'read' },
  bCircuit: { item: 'B circuit: field earthed inside the generator; polarise by taking the F lead off the regulator and touching it to BAT', source: 'tm-5-3810-300-24', status: 'read' },
  alternatorPolarising: { item: 'never polarise an alternator; wrong or missing polarising reverses the dynamo and damages the cut-out', source: 'tm-5-3810-300-24', status: 'read' },
} as const satisfies Readonly<Record<string, Regulation>>
