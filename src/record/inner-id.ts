/** The id of what is inside a part: `head.dip`, or the part's own where it is all there is. */
export function innerId(part: string, inner: string): string {
  return inner === '' ? part : `${part}.${inner}`
}
