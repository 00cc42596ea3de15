import * as z from 'zod'
import { known, type Now, type PartKind } from '../record/index.ts'
import { practice } from './defaults.ts'

const params = z.object({
  primaryA: known(z.number().positive()).optional()
    .describe('Amps of its shorted primary from the speed at which it comes in; left out, a magneto of usual size.'),
  primaryOhm: known(z.number().positive()).optional().describe('Primary winding, ohm; left out, a usual one.'),
  pointsOhm: known(z.number().positive()).optional()
    .describe('What its working points are worth, ohm, on the mean of closed and open; left out, as much as the winding.'),
  comesInRpm: known(z.number().positive()).optional()
    .describe('Engine speed, turns a minute, from which it makes sparks; left out, below any cranking speed.'),
})

/**
 * A magneto makes its own primary current, which its points break. A wire that earths its primary beside the points leaves
 * nothing to break: the share of the current that still goes through the points is what makes sparks.
 */
export const magneto: PartKind = {
  kind: 'magneto',
  plain: 'Makes sparks from turning, without a battery. It is stopped by earthing its primary: with that wire off or broken the engine cannot be switched off, and fires when turned by hand.',
  params,
  terminals: () => [{ is: '2', marking: '2', what: 'primary, to the earthing switch' }, { is: 'case', marking: '31', what: 'case' }],
  fails: () => [
    { what: 'dirty points', fault: 'ohms:*.points=5', likelihood: 'common' },
    { what: 'primary earthed inside: no spark', fault: 'join:*:2=*:case', likelihood: 'seen' },
    { what: 'open primary', fault: 'open:*.primary', likelihood: 'rare' },
  ],
  build(_, ctx) {
    const primaryA = ctx.number(['primaryA'], practice(4, 'a magneto of usual size'))
    const primaryOhm = ctx.number(['primaryOhm'], practice(0.5, 'a primary of usual size'))
    const pointsOhm = ctx.number(['pointsOhm'], practice(primaryOhm, 'points that are closed about half the time'))
    const comesInRpm = ctx.number(['comesInRpm'], practice(60, 'it fires when it is cranked'))
    const emfV = (ctx.earth === 'positive' ? -1 : 1) * primaryA * primaryOhm
    // Above the speed at which it comes in, the winding's reactance grows with its EMF and holds the current.
    const emf = (now: Now) => emfV * Math.min(1, now.engineRpm / comesInRpm)
    return {
      turns: true,
      elements: [
        { id: 'primary', from: '2', to: 'case', does: 'source', law: (now) => ({ kind: 'source', emfV: emf(now), ohm: primaryOhm }) },
        { id: 'points', from: '2', to: 'case', does: 'contact', sparks: true, law: (now) => (now.pointsOpen ? { kind: 'open' } : { kind: 'resistor', ohm: pointsOhm }) },
      ],
    }
  },
}
