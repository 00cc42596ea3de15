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

test.each([
  ['{\n  "a": 1\n  "b": 2\n}', 'line 3, column 3: expected a comma or }, found “"b": 2”; in line 2, “"a": 1”, put a comma at the end'],
  ['{"a": 1 "b": 2}', 'line 1, column 9: expected a comma or }, found “"b": 2}”; in line 1, “{"a": 1 "b": 2}”, put a comma before it, or look for a quote too many or too few'],
  ['[\n1,\n]', 'line 3, column 1: expected a value, found “]”; in line 2, “1,”, take out the last comma'],
  ['{"a": [1}', 'expected a comma or ], found “}”; in line 1, “{"a": [1}”, close with ] what is open'],
  ['{a: 1}', 'expected a key in quotes, found “a: 1}”; in line 1, “{a: 1}”, put the key in double quotes'],
  ['["a\nb"]', 'expected a closing quote, found the end of the line; in line 1, “["a”, close the text in quotes'],
  ['["\\x"]', 'expected an escape such as \\n, found “\\x"]”; in line 1, “["\\x"]”, write the backslash twice'],
  ['{} }', 'expected the end of the text, found “}”; in line 1, “{} }”, take out what follows the end of the record'],
  ['{"a": ', 'expected a value, found the end of the text; the end of the file is missing, or a bracket or a quote is not closed'],
])('%s is refused with what to do', (text, said) => {
  const parsed = parseJson(text)
  expect(parsed.ok ? '' : parsed.problem.sentence).toContain(said)
})

test.each([
  ['keys', `{"wires": {${'"k":1,'.repeat(20_001)}`, 'wires: this holds more than 20000 entries'],
  ['values', `[${'[],'.repeat(1_000_000)}`, 'the document: this holds more than 1000000 values'],
])('too many %s are refused where the limit is passed, whatever follows', (_what, text, said) => {
  const parsed = parseJson(text)
  expect(parsed.ok ? '' : parsed.problem.sentence).toContain(said)
})
