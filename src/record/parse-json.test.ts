import fc from 'fast-check'
import { expect, test } from 'vitest'
import { parseJson } from './parse-json.ts'

/** The language's own parser as a second opinion. */
function parseNatively(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) as unknown }
  } catch (error) {
    if (error instanceof SyntaxError) return undefined
    throw error
  }
}

function agree(text: string): void {
  const [own, native] = [parseJson(text), parseNatively(text)]
  expect(own.ok, text).toBe(native !== undefined)
  if (own.ok && native && own.problems.length === 0) expect(JSON.stringify(own.value)).toBe(JSON.stringify(native.value))
}

test('every JSON text reads as it does elsewhere', () => {
  fc.assert(fc.property(fc.json({ maxDepth: 4 }), agree))
})

test('every text of JSON marks is accepted or refused as it is elsewhere', () => {
  const marks = fc.constantFrom('{', '}', '[', ']', ',', ':', '"', '"a"', '"b":', '\\', '\\u00e9', '0', '1', '-', '.', 'e5', 'true', 'nul', 'null', ' ', '\n', '\t', '\u00a0', '\u0001')
  fc.assert(fc.property(fc.array(marks, { maxLength: 8 }).map((parts) => parts.join('')), agree), { numRuns: 3000 })
})

test('numbers are numbers and zero has no sign', () => {
  expect(parseJson('[-0, 1e3, 1.5E-2]')).toEqual({ ok: true, value: [0, 1000, 0.015], problems: [] })
  for (const text of ['01', '1.', '.5', '+1', '-', '1e', 'NaN']) expect(parseJson(text).ok).toBe(false)
})

test('a name that every object inherits is left out and told', () => {
  const parsed = parseJson('{"a": {"__proto__": {"polluted": true}, "b": 1}}')
  expect(parsed).toMatchObject({ ok: true, value: { a: { b: 1 } }, problems: [{ path: ['a', '__proto__'] }] })
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined()
})

test('the first of two values stays and the second is told', () => {
  expect(parseJson('{"a": 1,\n "a": 2}')).toMatchObject({ ok: true, value: { a: 1 }, problems: [{ sentence: 'a: a is written twice, the second time at line 2, column 2.' }] })
})

test('a text of many megabytes overflows nothing', () => {
  expect(parseJson(`"${'\\n'.repeat(5_000_000)}"`).ok).toBe(true)
  expect(parseJson(`[${' '.repeat(10_000_000)}]`).ok).toBe(true)
})
