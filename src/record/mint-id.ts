/**
 * An id that no other device makes and this one makes once: what it is, the device, and the device's running number.
 * `mintId('w', 'k7', 12)` is `w-k7-12`.
 */
export function mintId(word: string, device: string, sequence: number): string {
  return `${word}-${device}-${sequence}`
}
