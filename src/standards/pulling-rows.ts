import type { Sourced } from './sources.ts'

/** Coefficient of friction of a covering on what it is pulled through. */
export interface FrictionRow extends Sourced {
  readonly pair: string
  readonly low: number
  readonly high: number
}

/** A cord or rod to pull with, and the newtons it breaks at where known. */
export interface PullCordRow extends Sourced {
  readonly name: string
  readonly strengthN?: readonly [number, number]
  readonly factor?: number
}

/** What eases a covering through. */
export interface LubricantRow extends Sourced {
  readonly cover: string
  readonly use: string
}

/** A formula in words. */
export interface FormulaRow extends Sourced {
  readonly name: string
  readonly formula: string
}

/** Friction. */
export const frictionRows: readonly FrictionRow[] = [
  { pair: 'PVC jacket in duct, dry', low: 0.5, high: 0.6, source: 'transmission-standard-2007', status: 'read' },
  { pair: 'PVC jacket in duct, with lubricant', low: 0.25, high: 0.35, source: 'transmission-standard-2007', status: 'read' },
  { pair: 'PVC jacket on rollers', low: 0.1, high: 0.2, source: 'transmission-standard-2007', status: 'read' },
  { pair: 'PE jacket in duct, dry', low: 0.3, high: 0.4, source: 'transmission-standard-2007', status: 'read' },
  { pair: 'PE jacket in duct, with lubricant', low: 0.15, high: 0.25, source: 'transmission-standard-2007', status: 'read' },
  { pair: 'PVC jacket in rigid PVC', low: 0.52, high: 0.52, source: 'power-cable-catalogue', status: 'read' },
  { pair: 'PVC jacket in metal', low: 0.55, high: 0.55, source: 'power-cable-catalogue', status: 'read' },
  { pair: 'neoprene (rubber) jacket in metal', low: 0.6, high: 0.6, source: 'power-cable-catalogue', status: 'read' },
  { pair: 'neoprene jacket in rigid PVC', low: 0.53, high: 0.53, source: 'power-cable-catalogue', status: 'read' },
  { pair: 'cotton braid on painted steel edge', low: 0.4, high: 0.7, source: 'common-practice', status: 'common practice' },
]

/** Leave a second cord behind in every cavity (common practice). */
export const pullCordRows: readonly PullCordRow[] = [
  { name: 'woven polyester pull tape, light', strengthN: [5560, 11120], source: 'pull-tape-pages', status: 'read', note: '1250 to 2500 lbf, heavy up to 6000' },
  { name: 'safety factor on rope strength', factor: 4, source: 'rope-maker-page', status: 'read' },
  { name: 'nylon rope: not for pulling, stretches and snaps back', source: 'rope-maker-page', status: 'read' },
  { name: 'twisted polypropylene: slippery but melts by friction heat', source: 'rope-maker-page', status: 'read' },
  { name: 'nylon or glass-fibre fishing rod, steel tape: steel not near live parts', source: 'tool-report', status: 'read' },
  { name: 'braided polyester cord 2 mm, as used in body cavities', strengthN: [400, 900], source: 'common-practice', status: 'common practice', note: 'cords vary' },
  { name: 'waxed lacing cord', strengthN: [200, 350], source: 'common-practice', status: 'common practice', note: 'cords vary' },
]

/** Lubricants by covering. */
export const lubricantRows: readonly LubricantRow[] = [
  { cover: 'PVC, nylon, PE', use: 'water-based polymer gel', source: 'lubricant-page', status: 'read' },
  { cover: 'PVC, XLPE, EPR: tested compatible', use: 'water-based, no wax, grease, silicone or polyalkylene glycol', source: 'lubricant-specification', status: 'read' },
  { cover: 'any', use: 'lubricants are about 80-90 % water with wax, polymer or silicone', source: 'cabling-magazine-2003', status: 'read' },
  { cover: 'natural rubber, VIR, cotton braid', use: 'dry French chalk (talc); no mineral oil, grease or petroleum jelly, which swells rubber', source: 'common-practice', status: 'common practice' },
  { cover: 'rubber grommets and boots', use: 'soapy water or silicone; no mineral grease', source: 'common-practice', status: 'common practice' },
  { cover: 'braided loom with lacquer', use: 'none, or paraffin wax rubbed on the leading end', source: 'common-practice', status: 'common practice' },
]

/** Pulling. */
export const pullFormulaRows: readonly FormulaRow[] = [
  { name: 'straight duct', formula: 'T = 9.81   L   w   f (N; m; kg/m)', source: 'cable-leaflet', status: 'read' },
  { name: 'bend', formula: 'T_out = T_in   exp(f   angle in radians)', source: 'cable-leaflet', status: 'read', note: 'f 0.3: 30 deg 1.17, 45 deg 1.27, 60 deg 1.37, 90 deg 1.60' },
  { name: 'sidewall pressure', formula: 'P = T_out / radius', source: 'icea-guide', status: 'read' },
  { name: 'conductor limit', formula: 'T_max = 50 N/mm2   sum of area', source: 'cable-pulling-page', status: 'read' },
]

/** Taping a bundle of diameter D with tape of width w and thickness t. */
export const tapeFormulaRows: readonly FormulaRow[] = [
  { name: 'tape length per metre of bundle', formula: 'L = pi D / (w (1 - overlap)) m per m', source: 'common-practice', status: 'common practice', note: 'D bundle diameter, w tape width, same unit; add 5 % for ends and branches' },
  { name: 'diameter added at 50 % overlap', formula: 'D_out = D + 4 t', source: 'common-practice', status: 'common practice', note: 'two layers each side, t tape thickness' },
]
