import type { Sourced } from './sources.ts'

/** A constant of copper or of its insulation; the unit is in the key it stands under. */
export interface Constant extends Sourced {
  readonly name: string
  readonly value: number
}

/** Copper and insulation constants, each with its source; read as `copper.perKelvin20.value`. */
export const copper = {
  resistivityOhmMm2PerM: { name: 'resistivity at 20 C, annealed (100 % IACS)', value: 0.017241, source: 'copper-org-2001', status: 'read', note: '= 1/58 as fixed by IEC 60028 (text not read; 58.0 MS/m read)' },
  conductivityMPerOhmMm2: { name: 'conductivity at 20 C, annealed', value: 58, source: 'copper-org-2001', status: 'read' },
  coldWorkedConductivityMPerOhmMm2: { name: 'conductivity at 20 C, fully cold worked', value: 56.3, source: 'copper-org-2001', status: 'read' },
  perKelvin20: { name: 'temperature coefficient of resistance at 20 C', value: 0.00393, source: 'iec60028-memory', status: 'from memory', note: 'equals 1/(234.5+20) = 0.003929, and 254.5/234.5 constants were read in AC 43.13-1B p. 11-22' },
  perKelvin75: { name: 'temperature coefficient referred to 75 C', value: 0.00323, source: 'nec-ch9-table8', status: 'read' },
  zeroResistanceC: { name: 'inferred zero-resistance temperature', value: -234.5, source: 'ac43-13-1b', status: 'read' },
  heatCapacityJPerKMm3: { name: 'volumetric heat capacity Qc at 20 C', value: 0.00345, source: 'iec60364-5-54-quote', status: 'read' },
  betaC: { name: 'beta', value: 234.5, source: 'iec60364-5-54-quote', status: 'read' },
  specificHeat20JPerGK: { name: 'specific heat at 20 C', value: 0.386, source: 'copper-org-2001', status: 'read' },
  specificHeat100JPerGK: { name: 'specific heat at 100 C', value: 0.393, source: 'copper-org-2001', status: 'read' },
  iecDensityGPerCm3: { name: 'density, IEC standard value (1913)', value: 8.89, source: 'copper-org-2001', status: 'read' },
  densityGPerCm3: { name: 'density, typical at 20 C', value: 8.92, source: 'copper-org-2001', status: 'read' },
  meltingC: { name: 'melting point', value: 1083, source: 'copper-org-2001', status: 'read', note: 'modern value 1084.62 C (ITS-90): from memory, not re-read' },
  conduction20WPerMK: { name: 'thermal conductivity at 20 C', value: 394, source: 'copper-org-2001', status: 'read' },
  conduction100WPerMK: { name: 'thermal conductivity at 100 C', value: 385, source: 'copper-org-2001', status: 'read' },
  expansionPerK: { name: 'linear expansion 25..100 C', value: 1.68e-05, source: 'copper-org-2001', status: 'read' },
  milFootOhm: { name: 'mil-foot resistivity at 20 C', value: 10.371, source: 'copper-org-2001', status: 'read' },
  boatMilFootOhm: { name: 'marine sizing constant K', value: 10.75, source: 'abyc-sizing', status: 'read' },
  pvcThermalKMPerW: { name: 'PVC insulation thermal resistivity, Un <= 3 kV', value: 5, source: 'iec60287-memory', status: 'from memory' },
  xlpeThermalKMPerW: { name: 'XLPE/PE insulation thermal resistivity', value: 3.5, source: 'iec60287-memory', status: 'from memory' },
  pvcHeatJPerKM3: { name: 'PVC volumetric heat capacity', value: 1700000, source: 'iec60853-memory', status: 'from memory' },
  xlpeHeatJPerKM3: { name: 'PE/XLPE volumetric heat capacity', value: 2400000, source: 'iec60853-memory', status: 'from memory' },
} as const satisfies Readonly<Record<string, Constant>>
