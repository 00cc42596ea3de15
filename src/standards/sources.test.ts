import { describe, expect, test } from 'vitest'
import { findSource, sources, type Source, type Sourced } from './sources.ts'

const [sourcesPage] = Object.values(import.meta.glob<string>('../../docs/sources.md', { eager: true, query: '?raw', import: 'default' }))
const tableFiles = import.meta.glob<Record<string, unknown>>('./*-rows.ts', { eager: true })
const codeFiles = import.meta.glob<string>(['./*.ts', '!./*.test.ts', '!./sources.ts'], { eager: true, query: '?raw', import: 'default' })

/** Rows of every exported table: arrays of rows, and objects of rows by key. */
const rows = Object.entries(tableFiles).flatMap(([file, tables]) =>
  Object.entries(tables).flatMap(([table, content]) =>
    Object.entries(content as object).map(([key, row]) => ({ name: `${file} ${table} ${key}`, row: row as Partial<Sourced> })),
  ),
)

/** A row may be less certain than its source, never more. */
function isHonest(row: Partial<Sourced>, source: Source): boolean {
  return row.status === source.status || (row.status === 'mixed' && row.note !== undefined)
}

describe('sources', () => {
  test('all tables are looked at', () => {
    expect(Object.keys(tableFiles)).toHaveLength(32)
    expect(rows.length).toBeGreaterThan(600)
  })

  test('every row has a known source', () => {
    expect(rows.filter(({ row }) => findSource(String(row.source)) === undefined)).toEqual([])
  })

  test('every row has the status of its source', () => {
    expect(rows.filter(({ row }) => !isHonest(row, findSource(String(row.source))!))).toEqual([])
  })

  test('every source is on the page for people', () => {
    const lines = sourcesPage.split('\n')
    for (const [id, { status, title, usedFor }] of Object.entries(sources)) {
      expect(lines).toContain(`| \`${id}\` | ${status} | ${title} | ${usedFor} |`)
    }
  })

  test('the page lists no other source', () => {
    const listed = [...sourcesPage.matchAll(/^\| `([^`]+)` \|/gm)].map((match) => match[1])
    expect(listed.toSorted()).toEqual(Object.keys(sources).toSorted())
  })

  test('every source is used by a row', () => {
    const code = Object.values(codeFiles).join('\n')
    expect(Object.keys(sources).filter((id) => !code.includes(`'${id}'`))).toEqual([])
  })

  test('an unknown source is undefined', () => {
    expect(findSource('toString')).toBeUndefined()
  })
})
