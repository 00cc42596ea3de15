import { expect, test } from 'vitest'
import { plain } from './out.ts'

test('what would steer the terminal is shown, not done', () => {
  expect(plain('one\n\ttwo \u001b[2J\u0007\u0000\u009b1m')).toBe('one\n\ttwo \\u001b[2J\\u0007\\u0000\\u009b1m')
})

test('in JSON it stays the same text', () => {
  const title = 'bell \u0007, escape \u001b, next line \u0085'
  expect(JSON.parse(plain(JSON.stringify({ title }, null, 2)))).toEqual({ title })
})
