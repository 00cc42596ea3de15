import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { findRoomViolations, readRoomTable } from './rooms.ts'

const table = readRoomTable(`
| Room | Holds | May import |
| --- | --- | --- |
| \`math\` | numbers | |
| \`record\` | shape | |
| \`circuit\` | network | math, record |
| \`tasks\` | tasks | all of the above |

| Another | table | of the page |
`)

/** Each violation as `kind file import`. */
function violationsOf(files: Record<string, string>): string[] {
  const found = findRoomViolations(table, new Map(Object.entries(files)))
  return found.map(({ kind, file, import: written }) => `${kind} ${file} ${written}`.trim())
}

const lawful = {
  'src/main.ts': `export * from './circuit/index.ts'`,
  'src/math/index.ts': `export { solve } from './solve.ts'`,
  'src/math/solve.ts': `export const solve = () => 0`,
  'src/circuit/index.ts': `export { network } from './laws/network.ts'`,
  'src/circuit/laws/network.ts': `import { solve } from '../../math/index.ts'; export const network = solve`,
  'src/circuit/network.test.ts': `import { network } from './laws/network.ts'; import { aLamp } from '../../test/builders/lamp.ts'`,
}

test('the table gives each room its imports', () => {
  expect([...table]).toEqual([
    ['math', []],
    ['record', []],
    ['circuit', ['math', 'record']],
    ['tasks', ['math', 'record', 'circuit']],
  ])
})

test('a text without the table is refused', () => {
  expect(() => readRoomTable('# Rooms')).toThrow('found none')
})

test('the walk one way has no violations', () => {
  expect(violationsOf(lawful)).toEqual([])
})

test('a room outside its row is not allowed', () => {
  expect(violationsOf({ ...lawful, 'src/math/solve.ts': `export const solve = await import('../record/index.ts')`, 'src/record/index.ts': '' }))
    .toEqual(['not-allowed src/math/solve.ts ../record/index.ts'])
})

test('an import of a type alone counts', () => {
  const files = { ...lawful, 'src/record/index.ts': 'export type Wire = string' }
  for (const text of [
    `import type { Wire } from '../record/index.ts'`,
    `export type { Wire } from '../record/index.ts'`,
    `export type W = import('../record/index.ts').Wire`,
  ]) {
    expect(violationsOf({ ...files, 'src/math/solve.ts': text })).toEqual(['not-allowed src/math/solve.ts ../record/index.ts'])
  }
})

test('words in comments and strings are no imports', () => {
  const text = `// import { Wire } from '../record/index.ts'\nexport const solve = "import '../record/index.ts'"`
  expect(violationsOf({ ...lawful, 'src/math/solve.ts': text })).toEqual([])
})

test('another room is entered by its index', () => {
  expect(violationsOf({ ...lawful, 'src/circuit/laws/network.ts': `import { solve } from '../../math/solve.ts'` }))
    .toEqual(['not-by-index src/circuit/laws/network.ts ../../math/solve.ts'])
})

test('a file never imports its own index', () => {
  expect(violationsOf({ ...lawful, 'src/math/plane.ts': `import { solve } from './index.ts'` }))
    .toEqual(['own-index src/math/plane.ts ./index.ts'])
})

test('a cycle between two files is found once', () => {
  const files = { ...lawful, 'src/math/a.ts': `import './b.ts'`, 'src/math/b.ts': `import './a.ts'`, 'src/math/c.ts': `import './a.ts'` }
  expect(violationsOf(files)).toEqual(['cycle src/math/a.ts src/math/a.ts -> src/math/b.ts -> src/math/a.ts'])
})

test('a file that imports itself is a cycle', () => {
  expect(violationsOf({ 'src/math/a.ts': `import './a.ts'` })).toEqual(['cycle src/math/a.ts src/math/a.ts -> src/math/a.ts'])
})

test('a file outside every room has no place', () => {
  expect(violationsOf({ 'src/utils/clamp.ts': '', 'src/clamp.ts': '' })).toEqual(['no-room src/clamp.ts', 'no-room src/utils/clamp.ts'])
})

test('only main may gather the rooms', () => {
  expect(violationsOf({ ...lawful, 'src/tasks/index.ts': `import '../main.ts'` })).toEqual(['main src/tasks/index.ts ../main.ts'])
})

test('source leans on nothing outside src', () => {
  expect(violationsOf({ 'src/math/a.ts': `import '../../test/builders/lamp.ts'; import p from '../../package.json'` }))
    .toEqual(['outside src/math/a.ts ../../test/builders/lamp.ts'])
})

test('an import of no file is reported', () => {
  expect(violationsOf({ 'src/math/a.ts': `import './b'` })).toEqual(['missing src/math/a.ts ./b'])
})

test('a row that lists a room below it is refused', () => {
  const upward = new Map([['math', ['record', 'maths']], ['record', []]])
  expect(findRoomViolations(upward, new Map()).map((violation) => violation.import))
    .toEqual(['math may import record', 'math may import maths'])
})

test('the table in ARCHITECTURE.md keeps its own rule', () => {
  const own = readRoomTable(readFileSync(`${import.meta.dirname}/../ARCHITECTURE.md`, 'utf8'))
  expect(findRoomViolations(own, new Map())).toEqual([])
  expect(own.get('cli')).toEqual(['record', 'tasks', 'store', 'server'])
})
