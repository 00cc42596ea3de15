/** AWG runs from 4/0 (n = -3) to 40. */
const thickest = -3
const thinnest = 40

/** d = 0.127 mm x 92^((36 - n) / 39), ASTM B258; 1/0 is n = 0, 4/0 is n = -3. */
export function awgDiameterMm(n: number): number {
  return 0.127 * 92 ** ((36 - n) / 39)
}

/** Copper area of a solid AWG conductor in mm2. */
export function awgAreaMm2(n: number): number {
  return (Math.PI / 4) * awgDiameterMm(n) ** 2
}

/** Square millimetres in one circular mil, the area of a circle of 0.001 in. */
export const mm2PerCircularMil = (Math.PI / 4) * 0.0254 ** 2

/** n of a size as people write it ("14", "AWG 14", "#10", "4/0", "0000"), or null. */
export function readAwg(text: string): number | null {
  const size = text.toLowerCase().replace(/awg|gauge|ga|no\.?|#|\s/g, '')
  const zeros = /^(?:([1-4])\/0|(0{1,4}))$/.exec(size)
  if (zeros) return 1 - (zeros[1] ? Number(zeros[1]) : zeros[2].length)
  const n = /^\d{1,2}$/.test(size) ? Number(size) : NaN
  return n >= thickest && n <= thinnest ? n : null
}

/** The name of an AWG size in the tables: "14", "0", "0000". */
export function awgName(n: number): string {
  return n > 0 ? String(n) : '0'.repeat(1 - n)
}
