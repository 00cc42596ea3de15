import * as z from 'zod'
import { known, type MachineSpec, type Now, type Params, type PartKind } from '../record/index.ts'
import { bySystem, practice } from './defaults.ts'

const params = z.object({
  ratedV: known(z.number().positive()).optional()
    .describe('Volts at which its rated amps are stated; left out, a usual charging voltage for the system.'),
  ratedA: known(z.number().positive()).optional()
    .describe('Amps that it gives at full-output speed; left out, those of an alternator of usual size.'),
  cutInRpm: known(z.number().positive()).optional()
    .describe('Its own speed, turns a minute, at which it begins to charge with full field; left out, a usual speed.'),
  fullOutputRpm: known(z.number().positive()).optional()
    .describe('Its own speed, turns a minute, at which it gives its rated amps; left out, a usual speed.'),
  ratio: known(z.number().positive()).optional()
    .describe('Its turns for one turn of the engine; left out, pulleys of usual size.'),
  rotorOhm: known(z.number().positive()).optional()
    .describe('Rotor winding with its brushes, ohm; left out, a usual rotor for the system\'s volts.'),
  setV: known(z.number().positive()).optional()
    .describe('Volts that its regulator holds; left out, a usual charging voltage for the system.'),
  excitingA: known(z.number().positive()).optional()
    .describe('Field amps from outside that it needs to begin charging at excitedAtRpm; left out, those of a usual warning lamp.'),
  excitedAtRpm: known(z.number().positive()).optional()
    .describe('Its own speed, turns a minute, at which excitingA is enough; left out, its speed at the engine\'s idle, but not below cutInRpm.'),
  senses: known(z.enum(['D+', 'B+'])).optional()
    .describe('The end that the built-in regulator holds at setV; left out, D+.'),
  regulator: known(z.enum(['built-in', 'separate'])).optional()
    .describe('Whether the regulator is built in, or a separate one feeds the rotor by the end DF; left out, built in.'),
})

/** One silicon junction on the way, V; two on the way out. Common practice, no source. */
const JUNCTION_V = 0.75
/** Emission coefficient of two junctions in series, and the part of their drop at rated current that is plain resistance. */
const EMISSION = 3
const DIODE_OHM_V = 0.1
const THERMAL_V = 0.02585
/** The regulator's closed transistor, ohm; common practice, no source. */
const CLOSED_OHM = 0.05
/** EMF of the rotor's residual magnetism, to that of full field; common practice, no source. */
const RESIDUAL = 0.004

/**
 * An alternator with field diodes and a built-in regulator, from its nameplate. Behind two junctions stands an EMF
 * E = E0·(n/n0)·(m(If/If0) + residual), E0 = rated volts plus the junctions, behind a resistance E0·(n/n0)/Is: winding
 * reactance grows with speed, so the current tends to Is = (rated + field amps)/(1 − n0/n1), the well-known output curve
 * I = Is·(1 − n0/n). m(x) = (1 + s)·x/(x + s); s is such that `excitingA` from the
 * warning lamp just lets the field build up at `excitedAtRpm`: the least of EMF − rotor drop − diodes − winding over the current is nought.
 */
export const alternator: PartKind = {
  kind: 'alternator',
  plain: 'Makes alternating current and rectifies it. It needs a little current through its warning lamp to begin; then it feeds its own field and the lamp goes out.',
  params,
  terminals: ({ regulator }: Params) => [
    { is: 'B+', marking: 'B+', what: 'output' }, { is: 'D+', marking: 'D+', what: 'field diodes, to the warning lamp (61)' },
    ...(regulator === 'separate' ? [{ is: 'DF', marking: 'DF', what: 'rotor, from the separate regulator' }] : []),
    { is: 'case', marking: '31', what: 'case' },
  ],
  fails: ({ regulator }: Params) => [
    { what: 'worn rotor brushes', fault: 'open:*.rotor', likelihood: 'common' },
    ...(regulator === 'separate' ? [] : [
      { what: 'regulator open', fault: 'open:*.regulator', likelihood: 'seen' as const },
      { what: 'regulator shorted: it never lets go, whatever the volts', fault: 'set:*.setV=100', likelihood: 'seen' as const },
    ]),
    { what: 'field diodes open', fault: 'open:*.field-diodes', likelihood: 'seen' },
    { what: 'main diodes open', fault: 'open:*.main-diodes', likelihood: 'rare' },
  ],
  build(_, ctx) {
    const nameplate = readNameplate(ctx)
    const rotorOhm = ctx.number(['rotorOhm'], practice(bySystem(ctx, 3.2, 2), 'rotor and brushes'))
    const { emfPerField, ratio, impedance, setV } = nameplate(rotorOhm)
    const rpm = (now: Now) => now.engineRpm * ratio
    const sign = ctx.earth === 'positive' ? -1 : 1
    const machine: MachineSpec = {
      id: 'stator',
      emf: (view) => sign * emfPerField(Math.abs(view.amps('rotor')), rpm(view.now)),
      residual: (now) => sign * emfPerField(0, rpm(now)),
      ceiling: (now) => sign * emfPerField(50 * setV / rotorOhm, rpm(now)),
    }
    const isBuiltIn = ctx.choice<'built-in' | 'separate'>('regulator', 'built-in', 'the usual alternator of later years') === 'built-in'
    const sensed = ctx.choice<'D+' | 'B+'>('senses', 'D+', 'a built-in regulator fed by its field diodes')
    const way = (from: string, to: string) => (sign > 0 ? { from, to } : { from: to, to: from })
    const diode = (ratedA: number) => ({ kind: 'diode', forwardV: 2 * JUNCTION_V, ratedA, emission: EMISSION, ohm: DIODE_OHM_V / ratedA } as const)
    return {
      turns: true,
      elements: [
        { id: 'stator', from: '~s', to: 'case', does: 'source', law: (now) => ({ kind: 'source', emfV: now.emf('stator'), ohm: impedance(rpm(now)) }) },
        { id: 'main-diodes', ...way('~s', 'B+'), does: 'contact', law: diode(nameplate.ratedA) },
        { id: 'field-diodes', ...way('~s', 'D+'), does: 'contact', law: diode(setV / rotorOhm) },
        { id: 'rotor', from: isBuiltIn ? 'D+' : 'DF', to: isBuiltIn ? '~rotor' : 'case', does: 'winding', law: { kind: 'resistor', ohm: rotorOhm } },
        ...(isBuiltIn ? [{ id: 'regulator', from: '~rotor', to: 'case', does: 'contact' as const, law: (now: Now) => ({ kind: 'resistor' as const, ohm: now.regulatorOhm('regulator') }) }] : []),
      ],
      machines: [machine],
      regulators: !isBuiltIn ? [] : [{ id: 'regulator', closedOhm: CLOSED_OHM, openOhm: 1e5, reach: (view) => Math.abs(view.volts(sensed, 'case')) / setV }],
    }
  },
}

function readNameplate(ctx: Parameters<PartKind['build']>[1]) {
  const scale = ctx.systemV / 12
  const ratedV = ctx.number(['ratedV'], practice(14 * scale, 'volts at which output is rated'))
  const ratedA = ctx.number(['ratedA'], practice(bySystem(ctx, 35, -1), 'an alternator of usual size'))
  const cutInRpm = ctx.number(['cutInRpm'], practice(1050, 'begins to charge with full field'))
  const fullRpm = ctx.number(['fullOutputRpm'], practice(6000, 'rated output'))
  const ratio = ctx.number(['ratio'], practice(2, 'pulleys of usual size'))
  const setV = ctx.number(['setV'], practice(14.2 * scale, 'a usual charging voltage'))
  const excitingA = ctx.number(['excitingA'], practice(0.1, 'begins to charge at idle with this'))
  const excitedAtRpm = ctx.number(['excitedAtRpm'], practice(Math.max(cutInRpm, ctx.engine.idleRpm * ratio), 'at idle'))
  const fullV = ratedV + 2 * JUNCTION_V
  const read = (rotorOhm: number) => {
    const fieldA = ratedV / rotorOhm
    // The winding gives the field as well as the rated output.
    const limitA = (ratedA + fieldA) / (1 + RESIDUAL - cutInRpm / fullRpm)
    const emfWith = (knee: number, amps: number, rpm: number) => fullV * rpm / cutInRpm * ((1 + knee) * (amps / fieldA) / (amps / fieldA + knee) + RESIDUAL)
    const impedance = (rpm: number) => Math.max(1e-3, fullV * Math.max(rpm, 1) / cutInRpm / limitA)
    const diodeA = setV / rotorOhm
    // With excitingA from outside and amps from the field diodes: the EMF over what it must overcome.
    const surplus = (knee: number, amps: number) => emfWith(knee, excitingA + amps, excitedAtRpm)
      - (excitingA + amps) * (rotorOhm + CLOSED_OHM) - diodesV(amps, diodeA) - amps * impedance(excitedAtRpm)
    const knee = kneeFor((tried) => leastSurplus((amps) => surplus(tried, amps), diodeA))
    return { ratio, setV, impedance, emfPerField: (amps: number, rpm: number) => emfWith(knee, amps, rpm) }
  }
  return Object.assign(read, { ratedA })
}

/** Volts over the field diodes at this current. */
function diodesV(amps: number, ratedA: number): number {
  const nvt = EMISSION * THERMAL_V
  const saturation = ratedA / Math.expm1((2 * JUNCTION_V - DIODE_OHM_V) / nvt)
  return nvt * Math.log1p(amps / saturation) + amps * DIODE_OHM_V / ratedA
}

/** The least of a function of the field diodes' current, from a hundred-thousandth of the rated current to half of it. */
function leastSurplus(surplus: (amps: number) => number, ratedA: number): number {
  let least = Infinity
  for (let step = 0; step <= 200; step++) least = Math.min(least, surplus(ratedA * 10 ** (-5 + 4.7 * step / 200)))
  return least
}

/** The knee at which the least surplus is nought; it falls as the knee grows softer. */
function kneeFor(least: (knee: number) => number): number {
  let low = Math.log(0.01), high = Math.log(50)
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    if (least(Math.exp(middle)) > 0) low = middle
    else high = middle
  }
  return Math.exp((low + high) / 2)
}
