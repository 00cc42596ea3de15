import { findAmbientFactor } from './ambient-factor.ts'
import { ampacityRules, type AmpacityRule, type AmpacityRuleName, type Rated, type RatedWire } from './ampacity-rules.ts'
import { readAwg } from './awg.ts'
import { findBundleFactor, lowestBundleFactor, type BundleFactorFound, type BundleRule } from './bundle-factor.ts'
import type { CableRow } from './cable-rows.ts'
import { findCable } from './cables.ts'
import { findConductor, type ConductorSize } from './conductors.ts'
import { nameKey, notFound, type NotFound } from './refusal.ts'
import type { SourceId, Status } from './sources.ts'
import { readStrands } from './strands.ts'

/** A wire to be rated, and where it lies. */
export interface AmpacityQuestion {
  readonly size: ConductorSize
  /** Kind of cable; left out, the rules of every cable of unknown kind. */
  readonly cable?: string
  /** Left out, the lowest of the rules that apply to the cable. */
  readonly rule?: AmpacityRuleName
  /** Left out, the ambient of the rule itself. */
  readonly ambientC?: number
  /** Wires of its bundle that carry current together, itself among them; left out, it lies alone. */
  readonly loadedWires?: number
  /** Whose bundle factor; left out, the lowest. */
  readonly bundleRule?: BundleRule
}

/** Continuous amps of a wire, and what they come from: the printed rating, and the factors it was multiplied by. */
export interface Ampacity {
  readonly amps: number
  readonly rule: AmpacityRuleName
  readonly ratedA: number
  readonly ambientFactor: number
  readonly bundleFactor: number
  readonly source: SourceId
  readonly status: Status
  /** True where a size stood between rows, a condition was not printed, or a rule of thumb had to do. */
  readonly assumed: boolean
  readonly why: string
}

export type AmpacityFound = ({ readonly ok: true } & Ampacity) | NotFound

/** Ambient in C, and limit of general-purpose PVC, taken for a rule that prints none (those of BS 7671). */
const usualAmbientC = 30
const usualLimitC = 70

const names = Object.keys(ampacityRules) as AmpacityRuleName[]

/**
 * Continuous amps that a wire may carry, by the named rule or else by the lowest of those that apply to its kind of cable;
 * where none reaches its size, by 5 A for each mm2. An insulation that bears less than the rating was made for, as old rubber
 * and cotton do, and an ambient other than the rule's, act through the square-root rule. A bundle factor multiplies
 * single-cable ratings only. Refused with the reason: a size, cable, rule or ambient that no table knows.
 */
export function findAmpacity(question: AmpacityQuestion): AmpacityFound {
  const { size, cable: name, rule } = question
  const cable = name === undefined ? null : findCable(name)
  if (cable && !cable.ok) return cable
  const conductor = findConductor(size, name)
  if (!conductor.ok) return conductor
  const wire = { areaMm2: conductor.areaMm2, awg: gaugeOf(size), strands: readStrands(String(size.strands)) ?? undefined, limitC: cable?.maxC ?? null }
  if (rule !== undefined && !names.some((known) => nameKey(known) === nameKey(rule))) return notFound(rule, 'a rule for current ratings', names)
  const tried = rule === undefined ? names.filter((each) => appliesTo(each, cable)) : [rule]
  const rated = tried.map((each) => ({ rule: each, rated: ampacityRules[each].rate(wire) })).filter(isRated)
  if (rated.length > 0) return lowest(rated.map((each) => derate(each.rule, each.rated, cable, question)))
  if (rule !== undefined) return notFound(`${conductor.areaMm2} mm2`, `a size that ${ampacityRules[rule].title} reaches`, [])
  return byThumb(wire, cable, question)
}

function gaugeOf({ awg, strands }: ConductorSize): number | undefined {
  return (strands === undefined && awg !== undefined ? readAwg(String(awg)) : null) ?? undefined
}

function appliesTo(rule: AmpacityRuleName, cable: CableRow | null): boolean {
  const { conductors }: AmpacityRule = ampacityRules[rule]
  return conductors.includes(cable?.conductors ?? null)
}

function isRated(each: { rule: AmpacityRuleName; rated: Rated | undefined }): each is { rule: AmpacityRuleName; rated: Rated } {
  return each.rated !== undefined
}

function lowest(found: readonly AmpacityFound[]): AmpacityFound {
  return found.reduce((least, each) => (!least.ok || (each.ok && least.amps <= each.amps) ? least : each))
}

function byThumb(wire: RatedWire, cable: CableRow | null, question: AmpacityQuestion): AmpacityFound {
  const rated = ampacityRules['current-density-rule'].rate(wire)
  const found = derate('current-density-rule', rated, cable, question)
  return found.ok ? { ...found, assumed: true, why: `${found.why}; no table for this cable reaches ${wire.areaMm2} mm2` } : found
}

function derate(name: AmpacityRuleName, rated: Rated, cable: CableRow | null, question: AmpacityQuestion): AmpacityFound {
  const rule: AmpacityRule = ampacityRules[name]
  const ambient = ambientOf(rule, rated, cable, question.ambientC)
  if (!ambient.ok) return ambient
  const bundle = bundleOf(rule, question)
  if (bundle && !bundle.ok) return bundle
  const reasons = [
    `${rule.title}: ${rated.amps} A`, rated.between ? 'between its rows' : '', ambient.why, bundle?.why ?? '',
    question.loadedWires !== undefined && !rule.single ? 'no bundle factor: not a rating of a cable alone' : '',
  ]
  return {
    ok: true, amps: rated.amps * ambient.factor * (bundle?.factor ?? 1), rule: name, ratedA: rated.amps,
    ambientFactor: ambient.factor, bundleFactor: bundle?.factor ?? 1, source: rated.source, status: rated.status,
    assumed: rated.between || ambient.assumed || (bundle?.assumed ?? false), why: reasons.filter((reason) => reason !== '').join('; '),
  }
}

interface AmbientOf { readonly ok: true; readonly factor: number; readonly why: string; readonly assumed: boolean }

/**
 * I x sqrt((limit - ambient) / (rated limit - rated ambient)), the limit being the lower of the cable's own and the rule's.
 * Where the rule prints no ambient, a cooler one than usual raises nothing.
 */
function ambientOf(rule: AmpacityRule, rated: Rated, cable: CableRow | null, asked: number | undefined): AmbientOf | NotFound {
  const printed = rule.ambientC !== 'unknown'
  const ratedAtC = rule.ambientC === 'unknown' ? usualAmbientC : rule.ambientC
  const ratedLimitC = rated.insulationC === 'unknown' ? cable?.maxC ?? usualLimitC : rated.insulationC
  const limitC = Math.min(cable?.maxC ?? ratedLimitC, ratedLimitC)
  const ambientC = asked ?? ratedAtC
  if (ambientC === ratedAtC && limitC === ratedLimitC) return { ok: true, factor: 1, why: '', assumed: !printed }
  const found = findAmbientFactor({ limitC, ambientC, ratedAtC, ratedLimitC })
  if (!found.ok) return found
  const factor = printed ? found.factor : Math.min(1, found.factor)
  const note = printed ? '' : `, ${ratedAtC} C taken as the ambient of the rating`
  return { ok: true, factor, why: `ambient ${ambientC} C and insulation ${limitC} C by the square-root rule${note}`, assumed: !printed }
}

function bundleOf(rule: AmpacityRule, { loadedWires, bundleRule }: AmpacityQuestion): BundleFactorFound | undefined {
  if (loadedWires === undefined || !rule.single) return undefined
  return bundleRule === undefined ? { ok: true, ...lowestBundleFactor(loadedWires) } : findBundleFactor(loadedWires, bundleRule)
}
