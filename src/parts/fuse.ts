import * as z from 'zod'
import { known, type BuildContext, type Default, type ElementSpec, type Params, type PartKind, type StateSpec } from '../record/index.ts'
import { partDefaults } from '../standards/index.ts'
import { practice, recordOr } from './defaults.ts'

/** What a fuse's element adds to its clips: ELEMENT_V / rating, ohm. Common practice, no source. */
const ELEMENT_V = 0.08
/** What blows a fuse whose printed rating is continuous, to that rating (ISO 8820-3 blade fuse, 135 %: blows within half an hour). */
const BLOW_RATIO = 1.35
/** Order of time in which a fuse opens against the faster contacts, ms; common practice, no source. */
const BLOW_MS = 1000

const figures = {
  ratingA: known(z.number().positive()).optional()
    .describe('Amps printed on it; left out, a common large fuse.'),
  ratingMeans: known(z.enum(['continuous', 'blow'])).optional()
    .describe('Whether the printed amps are what it carries for ever or what blows it; left out, what it carries for ever.'),
  blowA: known(z.number().positive()).optional()
    .describe(`Amps above which it blows; left out, the printed amps, times ${BLOW_RATIO} where it carries them for ever.`),
  ohm: known(z.number().min(0)).optional()
    .describe('With its clips, ohm; left out, the record\'s assumed fuse, else usual clips and an element by the printed amps.'),
}

const waySchema = z.strictObject({
  from: z.string().describe('The end at which it is fed; several fuses may share one, as on a common bar.'),
  to: z.string().describe('The end that it protects.'),
  ...figures,
})

const params = z.object({
  ...figures,
  ways: z.record(z.string(), waySchema).optional()
    .describe('For a box of several fuses, each by its name with its own ends; a figure that one leaves out is as stated beside ways; left out, it is one fuse, from in to out.'),
})
type FuseParams = z.infer<typeof params>
type RatingMeans = 'continuous' | 'blow'

const SINGLE = { '': { from: 'in', to: 'out' } }
const waysOf = (raw: Params) => (raw as FuseParams).ways ?? SINGLE

/** A fuse, or a box of several: a small resistance that opens above its blow figure and stays open. */
export const fuse: PartKind = {
  kind: 'fuse',
  passes: true,
  plain: 'The weakest link on purpose: it protects the wire behind it and opens when the current stays too high.',
  params,
  terminals(raw: Params) {
    const ways = Object.values(waysOf(raw))
    const loads = new Set(ways.map(({ to }) => to))
    return [...new Set(ways.flatMap(({ from, to }) => [from, to]))].map((is) => ({ is, marking: is, what: loads.has(is) ? 'load side' : 'supply side' }))
  },
  fails: (raw: Params) => Object.keys(waysOf(raw)).flatMap((id) => [
    { what: `blown${id && `, ${id}`}`, fault: `open:*${id && `.${id}`}`, likelihood: 'common' as const },
    { what: `dirty or loose clips${id && `, ${id}`}`, fault: `ohms:*${id && `.${id}`}=0.3`, likelihood: 'common' as const },
  ]),
  build(part, ctx) {
    const made = Object.entries(waysOf(part.params)).map(([id, { from, to }]) => makeWay({ id, from, to }, part.params, ctx))
    return { elements: made.map(({ element }) => element), states: made.map(({ state }) => state) }
  },
}

interface Way { readonly id: string; readonly from: string; readonly to: string }

function makeWay({ id, from, to }: Way, box: FuseParams, ctx: BuildContext): { element: ElementSpec; state: StateSpec } {
  const path = id ? ['ways', id] : []
  const figure = (key: 'ratingA' | 'blowA' | 'ohm', usual: Default) => {
    const shared = box[key]
    return ctx.number([...path, key], typeof shared === 'number' ? practice(shared, 'as its box') : usual)
  }
  const ratingA = figure('ratingA', practice(35, 'a common large fuse; the rating is not stated'))
  const means = box.ratingMeans && box.ratingMeans !== 'unknown' ? ctx.choice<RatingMeans>([...path, 'ratingMeans'], box.ratingMeans, 'as its box')
    : ctx.choice<RatingMeans>([...path, 'ratingMeans'], 'continuous', 'whether the printed rating is carried or blows it is not stated')
  const blowA = figure('blowA', practice(means === 'blow' ? ratingA : ratingA * BLOW_RATIO, 'from the printed rating'))
  const clipsAndElementOhm = partDefaults.fuseClipsMohm.value / 1000 + ELEMENT_V / ratingA
  const ohm = figure('ohm', recordOr(ctx, 'fuseOhm', practice(clipsAndElementOhm, 'clips, and element by rating')))
  const state = id ? `${id}-element` : 'element'
  return {
    element: { id, from, to, does: 'contact', law: (now) => (now.state(state) === 'blown' ? { kind: 'open' } : { kind: 'resistor', ohm }) },
    state: {
      id: state, element: id, values: ['whole', 'blown'], rest: 'whole', tells: { blown: id ? `has blown its fuse ${id}` : 'has blown' },
      wants(view, value) {
        const blows = value === 'whole' && Math.abs(view.amps(id)) > blowA
        return blows ? { value: 'blown', afterMs: BLOW_MS } : null
      },
    },
  }
}
