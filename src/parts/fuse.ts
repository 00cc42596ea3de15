import * as z from 'zod'
import { known, type PartKind } from '../record/index.ts'
import { partDefaults } from '../standards/index.ts'
import { practice, recordOr } from './defaults.ts'

/** What a fuse's element adds to its clips: ELEMENT_V / rating, ohm. Common practice, no source. */
const ELEMENT_V = 0.08
/** What blows a fuse whose printed rating is continuous, to that rating (ISO 8820-3 blade fuse, 135 %: blows within half an hour). */
const BLOW_RATIO = 1.35
/** Order of time in which a fuse opens against the faster contacts, ms; common practice, no source. */
const BLOW_MS = 1000

const params = z.object({
  ratingA: known(z.number().positive()).optional()
    .describe('Amps printed on it; left out, a common large fuse.'),
  ratingMeans: known(z.enum(['continuous', 'blow'])).optional()
    .describe('Whether the printed amps are what it carries for ever or what blows it; left out, what it carries for ever.'),
  blowA: known(z.number().positive()).optional()
    .describe(`Amps above which it blows; left out, the printed amps, times ${BLOW_RATIO} where it carries them for ever.`),
  ohm: known(z.number().min(0)).optional()
    .describe('With its clips, ohm; left out, the record\'s assumed fuse, else usual clips and an element by the printed amps.'),
})

type RatingMeans = 'continuous' | 'blow'

/** A fuse: a small resistance that opens above its blow figure and stays open. */
export const fuse: PartKind = {
  kind: 'fuse',
  passes: true,
  plain: 'The weakest link on purpose: it protects the wire behind it and opens when the current stays too high.',
  params,
  terminals: () => [
    { is: 'in', marking: 'in', what: 'supply side' },
    { is: 'out', marking: 'out', what: 'load side' },
  ],
  fails: () => [
    { what: 'blown', fault: 'open:*', likelihood: 'common' },
    { what: 'dirty or loose clips', fault: 'ohms:*=0.3', likelihood: 'common' },
  ],
  build(_, ctx) {
    const ratingA = ctx.number(['ratingA'], practice(35, 'a common large fuse; the rating is not stated'))
    const means = ctx.choice<RatingMeans>('ratingMeans', 'continuous', 'whether the printed rating is carried or blows it is not stated')
    const ratedBlowA = means === 'blow' ? ratingA : ratingA * BLOW_RATIO
    const blowA = ctx.number(['blowA'], practice(ratedBlowA, 'from the printed rating'))
    const clipsAndElementOhm = partDefaults.fuseClipsMohm.value / 1000 + ELEMENT_V / ratingA
    const ohm = ctx.number(['ohm'], recordOr(ctx, 'fuseOhm', practice(clipsAndElementOhm, 'clips, and element by rating')))
    return {
      elements: [{
        id: '', from: 'in', to: 'out', does: 'contact',
        law: (now) => (now.state('element') === 'blown' ? { kind: 'open' } : { kind: 'resistor', ohm }),
      }],
      states: [{
        id: 'element', values: ['whole', 'blown'], rest: 'whole', tells: { blown: 'has blown' },
        wants(view, value) {
          const blows = value === 'whole' && Math.abs(view.amps('')) > blowA
          return blows ? { value: 'blown', afterMs: BLOW_MS } : null
        },
      }],
    }
  },
}
