import * as z from 'zod'
import { known, type ElementSpec, type MachineSpec, type Now, type Params, type PartKind, type RegulatorSpec, type View } from '../record/index.ts'
import { regulation } from '../standards/index.ts'
import { bySystem, practice } from './defaults.ts'

const params = z.object({
  ratedV: known(z.number().positive()).optional()
    .describe('Volts on its plate; left out, those of the system.'),
  ratedA: known(z.number().positive()).optional()
    .describe('Amps on its plate, with a third brush the most that it gives; left out, those of a dynamo of usual size.'),
  cutInRpm: known(z.number().positive()).optional()
    .describe('Its own speed, turns a minute, at which it reaches cut-in volts without load; left out, a small dynamo, warm.'),
  fullOutputRpm: known(z.number().positive()).optional()
    .describe('Its own speed, turns a minute, at which it gives its rated amps, with a third brush the speed of most amps; left out, a small dynamo.'),
  ratio: known(z.number().positive()).optional()
    .describe('Its turns for one turn of the engine; left out, pulleys of usual size.'),
  fieldOhm: known(z.number().positive()).optional()
    .describe('Field windings, ohm; left out, a field that takes a usual share of the rated amps.'),
  armatureOhm: known(z.number().positive()).optional()
    .describe('Armature with its brushes, ohm; left out, what gives the rated amps at full-output speed.'),
  fieldTo: known(z.enum(['case', 'D'])).optional()
    .describe('Where the second end of the field sits: on the case, or on D (then the regulator earths F); with a third brush, case means that the field is earthed inside, and D that F is earthed outside, straight or through a resistor; left out, on the case, with a third brush outside.'),
  thirdBrush: known(z.boolean()).optional()
    .describe('Whether a third brush feeds its field, so that it limits its own amps and needs no regulator; left out, it has none.'),
  thirdBrushShare: known(z.number().gt(0).lt(1)).optional()
    .describe('Share of the main brushes\' volts that the third brush picks up while no current distorts the field; left out, a usual place.'),
  residual: known(z.enum(['right', 'reversed', 'none'])).optional()
    .describe('Magnetism left in its iron: right for the vehicle\'s earth, reversed or none; left out, right.'),
})

/** Cut-in and regulated volts to rated volts: those of a published 12 V regulator. */
const CUT_IN = regulation.cutOutClose12V.setV / 12
const REGULATED = regulation.dynamo12V.setV / 12
/** Field current to rated amps. Common practice, no source. */
const FIELD_SHARE = 0.1
/** Field current, to that at cut-in, below which the iron hardly answers: without residual magnetism a trickle builds nothing up. Common practice, no source. */
const DEAD = 0.05
/** Field current at which the iron is half way to its limit, to the field current at cut-in; common practice, no source. */
const KNEE = 0.5
/** EMF from residual magnetism at cut-in speed, to the cut-in volts; common practice, no source. */
const RESIDUAL = 0.06

/**
 * A shunt dynamo from its nameplate: EMF = E0·(n/n0)·(m(If/If0) + residual) with m(x) = (1 + KNEE)·y/(|y| + KNEE),
 * y = x·|x|·(1 + DEAD)/(|x| + DEAD), If0 = V0/field ohm, so that at cut-in speed n0 it gives its cut-in volts V0 without load.
 */
export const dynamo: PartKind = {
  kind: 'dynamo',
  plain: 'Makes current from turning, once its own field has built up from what magnetism its iron has kept. Its control box keeps the volts in bounds.',
  params,
  terminals: () => [
    { is: 'D', marking: 'D', what: 'armature' }, { is: 'F', marking: 'F', what: 'field' }, { is: 'case', marking: '31', what: 'case' },
  ],
  fails: ({ thirdBrush }: Params) => [
    ...(thirdBrush === true ? [{ what: 'third brush does not touch', fault: 'open:*.third-brush', likelihood: 'seen' as const }] : []),
    { what: 'open field', fault: 'open:*.field', likelihood: 'seen' },
    { what: 'field shorted to the case', fault: 'join:*:F=*:case', likelihood: 'seen' },
    { what: 'worn brushes', fault: 'ohms:*.armature=1', likelihood: 'common' },
    { what: 'brushes off the commutator', fault: 'open:*.armature', likelihood: 'seen' },
    { what: 'lost residual magnetism', fault: 'set:*.residual=none', likelihood: 'common' },
    { what: 'polarised the wrong way', fault: 'set:*.residual=reversed', likelihood: 'seen' },
  ],
  build(_, ctx) {
    const ratedV = ctx.number(['ratedV'], practice(ctx.systemV, 'system volts'))
    const ratedA = ctx.number(['ratedA'], practice(bySystem(ctx, 20, -0.5), 'a dynamo of usual size'))
    const cutInRpm = ctx.number(['cutInRpm'], practice(1100, 'a small dynamo, warm'))
    const fullRpm = ctx.number(['fullOutputRpm'], practice(1800, 'a small dynamo'))
    const ratio = ctx.number(['ratio'], practice(1.5, 'pulleys of usual size'))
    const isThird = ctx.choice('thirdBrush', false, 'a dynamo of two brushes')
    const share = isThird ? ctx.number(['thirdBrushShare'], practice(0.6, 'a third brush in a usual place')) : 1
    const fieldOhm = ctx.number(['fieldOhm'], practice(share * ratedV / (FIELD_SHARE * ratedA), 'a field that takes a tenth of the rated amps'))
    ctx.note({ path: 'params.magnetisation', value: KNEE, why: 'knee of the iron, and residual magnetism of 6 %', source: 'common practice, no source' })
    const cutInV = ratedV * CUT_IN
    const armatureOhm = ctx.number(['armatureOhm'], () => isThird ? practice(0.1 * ratedV / ratedA, 'a tenth of the rated volts at the rated amps') : practice(
      armatureFrom({ cutInV, fullV: ratedV * REGULATED, ratedA, speeds: fullRpm / cutInRpm, fieldOhm }), 'from rated amps at full-output speed, armature reaction included'))
    const emfV = cutInV * (1 + share * armatureOhm / fieldOhm) / (1 + RESIDUAL)
    const fieldA = share * cutInV / fieldOhm
    const emfAt = (amps: number, rpm: number, kept: number) => emfV * rpm / cutInRpm * (magnetised(amps / fieldA) + kept)
    const kept = RESIDUAL * { right: ctx.earth === 'positive' ? -1 : 1, reversed: ctx.earth === 'positive' ? 1 : -1, none: 0 }[ctx.choice<'right' | 'reversed' | 'none'>('residual', 'right', 'polarised for this vehicle')]
    const rpm = (now: Now) => now.engineRpm * ratio
    const machine: MachineSpec = {
      id: 'armature',
      emf: (view) => emfAt(view.amps('field'), rpm(view.now), kept),
      residual: (now) => emfAt(0, rpm(now), kept),
      ceiling: (now) => Math.sign(kept || 1) * emfV * rpm(now) / cutInRpm * (1 + KNEE + RESIDUAL),
    }
    const fieldTo = isThird ? ctx.choice<'case' | 'D'>('fieldTo', 'D', 'a field that is earthed outside') : ctx.choice<'case' | 'D'>('fieldTo', 'case', 'the field earthed in the dynamo')
    const field = (from: string, to: string): ElementSpec => ({ id: 'field', from, to, does: 'winding', law: { kind: 'resistor', ohm: fieldOhm } })
    const armature: ElementSpec = { id: 'armature', from: 'D', to: 'case', does: 'source', law: (now) => ({ kind: 'source', emfV: now.emf('armature'), ohm: armatureOhm }) }
    if (!isThird) return { turns: true, elements: [armature, fieldTo === 'D' ? field('D', 'F') : field('F', 'case')], machines: [machine] }
    const toF = fieldTo === 'D' ? 'F' : 'case'
    // Field amps that give an EMF at a speed, and what the brush picks up less at the rated amps.
    const fieldFor = (emf: number, at: number) => fieldA * demagnetised(emf * cutInRpm / (emfV * at) - Math.abs(kept))
    const fullEmf = ratedV * REGULATED + armatureOhm * ratedA
    const lostV = Math.max(0.05 * share * ratedV, share * fullEmf - fieldOhm * fieldFor(fullEmf, fullRpm))
    const brush = thirdBrush({ share, fieldOhm, outside: (view) => (toF === 'F' ? view.volts('F', 'case') : 0), rpm, fieldFor, lostPerAmpRpm: lostV / (ratedA * fullRpm), ratedV })
    return {
      turns: true,
      elements: [
        armature, { id: 'third-brush', from: 'D', to: '~third', does: 'joint', law: (now) => ({ kind: 'resistor', ohm: now.regulatorOhm('third-brush') }) }, field('~third', toF),
      ],
      machines: [machine], regulators: [brush],
    }
  },
}

interface Nameplate { readonly cutInV: number; readonly fullV: number; readonly ratedA: number; readonly speeds: number; readonly fieldOhm: number }

/**
 * The armature's resistance Ra from two points of the nameplate: without load at cut-in speed,
 * E0·(1 + residual) = V0 + Ra·If0; at full-output speed, E0·(n1/n0)·(m(V1/V0) + residual) = V1 + Ra·(rated amps + V1/Rf).
 */
function armatureFrom({ cutInV, fullV, ratedA, speeds, fieldOhm }: Nameplate): number {
  const gain = speeds * (magnetised(fullV / cutInV) + RESIDUAL) / (1 + RESIDUAL)
  return Math.max(0.02, (gain * cutInV - fullV) / Math.max(0.2 * ratedA, ratedA + fullV / fieldOhm - gain * cutInV / fieldOhm))
}

/** m(x): 1 at the field current of cut-in, (1 + KNEE) at most, and next to nothing far below DEAD. */
function magnetised(x: number): number {
  const y = x * Math.abs(x) * (1 + DEAD) / (Math.abs(x) + DEAD)
  return (1 + KNEE) * y / (Math.abs(y) + KNEE)
}

interface ThirdBrush {
  readonly share: number
  readonly fieldOhm: number
  readonly ratedV: number
  /** Volts over what earths the field outside. */
  outside(view: View): number
  rpm(now: Now): number
  fieldFor(emf: number, rpm: number): number
  readonly lostPerAmpRpm: number
}

/**
 * The third brush picks up V3 = share·E − c·n·I: what the armature's current I shifts of the field under it grows with the
 * current and, as an EMF, with the speed n. Its field needs V3 = If(E, n)·(field ohm + ohms outside). So the current rises to
 * a most and then falls as 1/n. Solved as a contact between D and the field whose mean resistance makes the two agree.
 */
function thirdBrush({ share, fieldOhm, ratedV, outside, rpm, fieldFor, lostPerAmpRpm }: ThirdBrush): RegulatorSpec {
  return {
    id: 'third-brush', closedOhm: 0.01, openOhm: 1e5,
    reach(view) {
      const at = rpm(view.now), emf = Math.abs(view.now.emf('armature')), fieldA = Math.abs(view.amps('field'))
      if (at < 1) return 0
      const outsideOhm = fieldA > LEAST_FIELD_A ? Math.abs(outside(view)) / fieldA : 0
      const givenA = -view.amps('armature') * Math.sign(view.now.emf('armature'))
      const needsV = fieldFor(emf, at) * (fieldOhm + outsideOhm), getsV = share * emf - lostPerAmpRpm * at * givenA
      return 1 + (needsV - getsV) / ratedV
    },
  }
}

/** Below these amps the field is as good as open, and nothing can be told of what is outside. */
const LEAST_FIELD_A = 1e-4
/** The most of its limit to which the iron is ever driven. */
const SATURATED = 0.999

/** The x at which m(x) is this: m = (1 + KNEE)·y/(y + KNEE), then y = x²·(1 + DEAD)/(x + DEAD). */
function demagnetised(m: number): number {
  if (m <= 0) return 0
  const share = Math.min(m / (1 + KNEE), SATURATED)
  const y = share * KNEE / (1 - share)
  return (y + Math.sqrt(y ** 2 + 4 * (1 + DEAD) * DEAD * y)) / (2 * (1 + DEAD))
}
