/** Changes laid on a network without building it again: each is of low rank in its matrix. Ends are points, items elements. */
export interface Overlay {
  readonly opened: ReadonlySet<number>
  readonly addedOhm: ReadonlyMap<number, number>
  readonly bridges: readonly { readonly from: number; readonly to: number; readonly ohm: number }[]
  /** States and phases that are held, by `part.state` or by part. */
  readonly held: ReadonlyMap<string, string>
}
