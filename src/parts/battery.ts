import * as z from 'zod'
import { known, type Default, type Law, type PartKind } from '../record/index.ts'
import { internalMohm, nameSource, partDefaults, restVolts } from '../standards/index.ts'
import { practice, standard } from './defaults.ts'

const params = z.object({
  capacityAh: known(z.number().positive()).optional()
    .describe('Capacity, ampere-hours; left out, a battery of usual size for the system\'s volts.'),
  cells: known(z.int().positive()).optional()
    .describe('Number of its cells; left out, one for every two volts of the system.'),
  chargePercent: known(z.number().min(0).max(100)).optional()
    .describe('State of charge, per cent; left out, fully charged.'),
  tempC: known(z.number().min(-50).max(80)).optional()
    .describe('Temperature of its acid, °C; left out, a mild day.'),
  emfV: known(z.number().positive()).optional()
    .describe('Volts at rest when fully charged; left out, those that its cells and its temperature give.'),
  ohm: known(z.number().min(0)).optional()
    .describe('Inner resistance in a mild temperature, ohm; left out, that of a battery of its cells and capacity.'),
  counterVPerCell: known(z.number().positive()).optional()
    .describe(`Volts a cell above which it takes charge; left out, ${partDefaults.chargeCellV.value}.`),
  chargeOhm: known(z.number().positive()).optional()
    .describe('Resistance with which it takes charge above those volts, ohm; left out, by its capacity and charge.'),
})

/** A low battery: 25 % charge and three times the resistance (design of this product; common practice gives 2 to 4 times). */
const LOW_CHARGE_PERCENT = 25
const LOW_OHM_TIMES = 3
/** EMF rises by this much a kelvin and cell; from memory of battery handbooks, not re-read. */
const EMF_V_PER_K = 0.0002

/** The lead-acid battery: an EMF by charge and temperature behind its internal resistance, and a counter-voltage while it takes charge. */
export const battery: PartKind = {
  kind: 'battery',
  plain: 'Stores the supply. It gives current while the volts outside are below its own, and takes charge only well above them.',
  params,
  terminals: () => [
    { is: '+', marking: '+', what: 'positive post' },
    { is: '-', marking: '-', what: 'negative post' },
  ],
  posts: { plus: '+', minus: '-' },
  fails: () => [
    { what: 'run down', fault: 'set:*.chargePercent=25', likelihood: 'common' },
    { what: 'sulphated, high resistance', fault: 'ohms:*=0.05', likelihood: 'seen' },
    { what: 'open cell link', fault: 'open:*', likelihood: 'rare' },
  ],
  build(part, ctx) {
    const cells = ctx.number(['cells'], practice(ctx.systemV / 2, 'two volts a cell'))
    const sizeAh = ctx.number(['capacityAh'], practice(ctx.systemV === 6 ? 85 : 50, 'a battery of usual size'))
    const ohm = ctx.number(['ohm'], () => ohmBySize(cells, sizeAh))
    const charge = ctx.number(['chargePercent'], practice(100, 'fully charged'))
    const tempC = ctx.number(['tempC'], practice(20, 'a mild day'))
    const counterV = cells * ctx.number(['counterVPerCell'], standard(partDefaults.chargeCellV))
    const chargeOhm = ctx.number(['chargeOhm'], () => acceptance(cells, sizeAh, charge))
    const lowChargeOhm = Math.min(chargeOhm, acceptance(cells, sizeAh, LOW_CHARGE_PERCENT).value)
    const law = (percent: number, times: number): Law => ({
      kind: 'battery', emfV: emf(part.params.emfV, cells, percent, tempC), ohm: ohm * times * coldFactor(tempC), counterV,
      chargeOhm: percent === charge ? chargeOhm : lowChargeOhm,
    })
    const full = law(charge, 1), low = law(Math.min(charge, LOW_CHARGE_PERCENT), LOW_OHM_TIMES)
    return { elements: [{ id: '', from: '+', to: '-', does: 'source', law: (now) => (now.battery === 'low' ? low : full) }] }
  },
}

function emf(stated: unknown, cells: number, percent: number, tempC: number): number {
  if (typeof stated === 'number') return stated - restVolts(cells, 100) + restVolts(cells, percent)
  return restVolts(cells, percent) + cells * EMF_V_PER_K * (tempC - REST_TABLE_C)
}
/** Temperature of the table of rest voltages: 80 °F. */
const REST_TABLE_C = 26.7

/** Resistance grows by about 1 % a kelvin below 20 °C; common practice, no source. */
const coldFactor = (tempC: number) => 1 + 0.01 * Math.max(0, 20 - tempC)

function ohmBySize(cells: number, sizeAh: number): Default {
  const { mohm, why, source } = internalMohm(cells, sizeAh)
  return { value: mohm / 1000, why: `${why}, ${sizeAh} Ah`, source: nameSource(source) }
}

/**
 * A twelve-volt battery, 0.7 V above its counter-voltage, takes some 6 % of its ampere-hours as amps when full and a quarter
 * of them when low: 11 and 2.8 Ω·Ah, between them by charge.
 */
function acceptance(cells: number, sizeAh: number, percent: number): Default {
  const full = 11, low = 2.8
  const share = Math.min(1, Math.max(0, (percent - LOW_CHARGE_PERCENT) / (100 - LOW_CHARGE_PERCENT)))
  return practice((low + (full - low) * share) * cells / 6 / sizeAh, `acceptance of ${sizeAh} Ah at ${percent} % charge`)
}
