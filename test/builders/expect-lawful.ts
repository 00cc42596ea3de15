// The laws of every edit, tried on one: expectLawful(record, edit, kinds) or expectLawful(record, [edit, …], kinds).
import { expect } from 'vitest'
import { applyEdits, readRecord, writeRecord, type AppliedAll, type Edit, type PartKind, type WiringRecord } from '../../src/record/index.ts'

/**
 * An edit never changes the record it is given. If it is applied, the new record reads back as it is, undoing restores
 * the old text byte for byte, and doing it again gives the new text again; if it is refused, a sentence says why.
 */
export function expectLawful(record: WiringRecord, edit: Edit | readonly Edit[], kinds: readonly PartKind[]): AppliedAll {
  const edits: readonly Edit[] = 'kind' in edit ? [edit] : edit
  const before = writeRecord(record)
  const applied = applyEdits(deepFreeze(record), edits, kinds)
  expect(writeRecord(record)).toBe(before)
  if (!applied.ok) {
    expect(applied.refusal.sentence).toMatch(/^.+: .+/)
    return applied
  }
  const after = writeRecord(applied.record)
  expect(readRecord(after, kinds)).toEqual({ ok: true, record: applied.record })
  const undone = applyEdits(applied.record, applied.undo, kinds)
  expect(undone.ok && writeRecord(undone.record)).toBe(before)
  const redone = undone.ok && applyEdits(undone.record, undone.undo, kinds)
  expect(redone && redone.ok && writeRecord(redone.record)).toBe(after)
  return applied
}

function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value)
    Object.values(value).forEach(deepFreeze)
  }
  return value
}
