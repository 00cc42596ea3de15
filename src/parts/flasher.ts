import * as z from 'zod'
import {
  known, type ElementSpec, type Law, type Params, type PartKind, type PhaseSpec, type StateSpec, type View,
} from '../record/index.ts'
import { flasherFigures, partDefaults } from '../standards/index.ts'
import { bySystem, practice, relayContact } from './defaults.ts'

const params = z.object({
  type: known(z.enum(['hot-wire', 'bimetal'])).optional().describe(
    'Hot wire: dark first, its wire carries the lamps\' current while they are dark; '
    + 'bimetal: lit first, heated while they are lit; left out, hot wire.'),
  ratedW: known(z.number().positive()).optional()
    .describe('Watts of all the lamps that it is made to flash; left out, two turn lamps of usual watts.'),
  ratedV: known(z.number().positive()).optional()
    .describe('Volts at which those watts are stated; left out, those of the system.'),
  darkOhm: known(z.number().positive()).optional().describe(
    'Hot wire with its series resistor, in circuit while the lamps are dark, ohm; left out, a usual one for the system\'s volts.'),
  contactOhm: known(z.number().min(0)).optional().describe(
    `Each closed contact, ohm; left out, the record's assumed relay contact, else ${partDefaults.relayContactMohm.value} mΩ.`),
  tellTaleFrom: known(z.number().positive()).optional().describe(
    'Share of the rated current, from 0 to 1, at which the tell-tale contact makes; left out, it takes the current of both lamps.'),
})

/**
 * Heat θ of the wire runs towards q = (current / rated)², 1 at the rated load, with a time constant. It
 * acts at CLOSE; a hot wire lets go at CLOSE·(1 − HOLD·(lit current / rated)), since the current helps to hold.
 * All constants: common practice, no source; they give some 85 flashes a minute at the rated load.
 */
const CLOSE = 0.5
const HOLD = 0.5
/** Above this share of the rated current the lit current helps no further. */
const MOST_LIT_SHARE = 1.5
const HOT_WIRE_S = 0.64
/** A bimetal heated past CLOSE opens, and closes again at this share of it. */
const BIMETAL_CLOSES = 0.7
const BIMETAL_S = 1.14

/** The rate that the rules ask for: German ones, with which the Swiss and British agree. */
const { minPerMin: LEAST_PER_MIN, maxPerMin: MOST_PER_MIN } = flasherFigures.germany

/** A two- or three-terminal flasher. Its answer is a class: dark, slow, as the rules ask, about double, stays lit. */
export const flasher: PartKind = {
  kind: 'flasher',
  plain: 'Makes the turn lamps flash by heating a wire or a strip with their own current, so a dead bulb changes its rate or stops it.',
  params,
  terminals: () => [
    { is: '49', marking: '49', what: 'supply' },
    { is: '49a', marking: '49a', what: 'to the turn switch' },
    { is: 'C', marking: 'C', what: 'tell-tale' },
  ],
  fails: ({ type }: Params) => [
    ...(type === 'bimetal' ? [] : [{ what: 'burnt hot wire', fault: 'open:*.wire', likelihood: 'seen' as const }]),
    { what: 'contact burnt away', fault: 'open:*.contact', likelihood: 'seen' },
    { what: 'contact welded', fault: 'hold:*=lit', likelihood: 'seen' },
    { what: 'tell-tale contact does not make', fault: 'open:*.telltale', likelihood: 'seen' },
  ],
  build(_, ctx) {
    const isHotWire = ctx.choice<'hot-wire' | 'bimetal'>('type', 'hot-wire', 'the usual flasher of the time') === 'hot-wire'
    const ratedV = ctx.number(['ratedV'], practice(ctx.systemV, 'system volts'))
    const ratedA = ctx.number(['ratedW'], practice(42, 'two lamps of 21 W')) / ratedV
    const closed: Law = { kind: 'resistor', ohm: ctx.number(['contactOhm'], relayContact(ctx)) }
    const darkOhm = ctx.number(['darkOhm'], practice(bySystem(ctx, 20, 2), 'a hot wire with its resistor'))
    const heatingS = isHotWire ? HOT_WIRE_S : BIMETAL_S
    ctx.note({ path: 'params.heating', ...practice(heatingS, 'time constant of heating, s: some 85 flashes a minute at the rated load') })
    const tellTaleFrom = ctx.number(['tellTaleFrom'], practice(0.75, 'the tell-tale needs the current of both lamps'))
    const contact: ElementSpec = {
      id: 'contact', from: '49', to: '49a', does: 'contact', law: (now) => (now.phase === 'lit' ? closed : { kind: 'open' }),
    }
    const wire: ElementSpec = { id: 'wire', from: '49', to: '49a', does: 'load', law: { kind: 'resistor', ohm: darkOhm } }
    const telltale: ElementSpec = {
      id: 'telltale', from: '49', to: 'C', does: 'contact', law: (now) => (now.state('telltale') === 'made' ? closed : { kind: 'open' }),
    }
    return {
      elements: isHotWire ? [contact, wire, telltale] : [contact, telltale],
      states: [tellTale(ratedA * tellTaleFrom)],
      phase: isHotWire ? hotWirePhase(ratedA, ratedV / darkOhm) : bimetalPhase(ratedA),
    }
  },
}

function tellTale(pullA: number): StateSpec {
  return {
    id: 'telltale', values: ['open', 'made'], rest: 'open',
    wants(view, value) {
      const amps = Math.abs(view.amps('contact'))
      if (value === 'open') return amps >= pullA ? { value: 'made', afterMs: 5 } : null
      return amps < 0.8 * pullA ? { value: 'open', afterMs: 5 } : null
    },
  }
}

const square = (x: number) => x * x

function hotWirePhase(ratedA: number, heatA: number): PhaseSpec {
  const heat = (view: View) => square(view.amps('wire') / heatA)
  return {
    names: ['dark', 'lit'], start: 'dark',
    next(view, phase) {
      if (phase === 'lit') return 'dark'
      return heat(view) > CLOSE ? 'lit' : null
    },
    rate(views) {
      const dark = views.get('dark'), lit = views.get('lit')
      if (!dark || !lit) return 'stays lit'
      const litShare = Math.min(MOST_LIT_SHARE, Math.abs(lit.amps('contact')) / ratedA)
      const opens = CLOSE * (1 - HOLD * litShare)
      return rateClass(HOT_WIRE_S * (coolingTime(CLOSE, opens) + heatingTime(opens, CLOSE, heat(dark))))
    },
  }
}

function bimetalPhase(ratedA: number): PhaseSpec {
  const heat = (view: View) => square(view.amps('contact') / ratedA)
  const closes = CLOSE * BIMETAL_CLOSES
  return {
    names: ['lit', 'dark'], start: 'lit',
    next(view, phase) {
      if (phase === 'dark') return 'lit'
      return heat(view) > CLOSE ? 'dark' : null
    },
    rate(views) {
      const lit = views.get('lit')
      if (!lit) return 'dark'
      return rateClass(BIMETAL_S * (heatingTime(closes, CLOSE, heat(lit)) + coolingTime(CLOSE, closes)))
    },
  }
}

/** ln((q − θ0)/(q − θ1)): from the heat θ0 up to θ1 while it runs towards q, in time constants. */
const heatingTime = (from: number, to: number, q: number) => Math.log((q - from) / (q - to))

/** ln(θ0/θ1): from the heat θ0 down to θ1 without current, in time constants. */
const coolingTime = (from: number, to: number) => Math.log(from / to)

/** The class of a flash that takes this many seconds. */
function rateClass(seconds: number): string {
  const perMinute = 60 / seconds
  if (perMinute < LEAST_PER_MIN) return 'slow'
  return perMinute <= MOST_PER_MIN ? `${LEAST_PER_MIN} to ${MOST_PER_MIN} a minute` : 'about double'
}
