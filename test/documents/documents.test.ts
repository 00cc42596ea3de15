import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { HELP, HELP_OF } from '../../src/cli/help.ts'
import { runCommand } from '../../src/cli/run-command.ts'
import { partKinds } from '../../src/parts/index.ts'
import { readRecord, recordJsonSchema } from '../../src/record/index.ts'
import { describeParts } from '../../scripts/describe-parts.ts'

const root = new URL('../../', import.meta.url)
const read = (path: string) => readFileSync(new URL(path, root), 'utf8')
const demo = fileURLToPath(new URL('examples/vehicles/tessarby-errand.json', root))

/** Runs a program and answers the lines it prints. */
async function linesOf(url: string): Promise<string[]> {
  const lines: string[] = []
  vi.spyOn(console, 'log').mockImplementation((...words: unknown[]) => { lines.push(words.join(' ')) })
  await import(/* @vite-ignore */ url)
  return lines
}

/** Command lines of a text that call loomwright, as arguments. */
function commandsIn(text: string, prefix: RegExp): string[][] {
  return text.split('\n').map((line) => line.trim()).filter((line) => prefix.test(line)).map((line) => line.replace(prefix, '').trim().split(/\s+/))
}

/** The blocks of JSON in a text: entries of `parts`. */
function jsonIn(text: string): Record<string, { kind: string }>[] {
  return [...text.matchAll(/```json\n([\s\S]*?)```/g)].map(([, block]) => JSON.parse(block) as Record<string, { kind: string }>)
}

interface SchemaNode {
  readonly const?: unknown
  readonly description?: string
  readonly $ref?: string
  readonly properties?: Readonly<Record<string, SchemaNode>>
  readonly additionalProperties?: SchemaNode
}

/** Paths of the fields, nested ones too, that neither describe themselves nor are described elsewhere. */
function fieldsWithoutWords({ properties = {}, additionalProperties }: SchemaNode, path: string): string[] {
  const own = Object.entries(properties).flatMap(([name, field]) => [
    ...(field.description ?? field.$ref ? [] : [`${path}.${name}`]), ...fieldsWithoutWords(field, `${path}.${name}`),
  ])
  return [...own, ...(typeof additionalProperties === 'object' ? fieldsWithoutWords(additionalProperties, `${path}.*`) : [])]
}

afterEach(() => { vi.restoreAllMocks() })

describe('documents', () => {
  it('the published JSON Schema is current', () => {
    expect(read('docs/record.schema.json')).toBe(`${JSON.stringify(recordJsonSchema(partKinds), null, 2)}\n`)
  })

  it('the page on part kinds is current', () => {
    expect(read('docs/parts.md')).toBe(describeParts(partKinds))
  })

  it.each(jsonIn(read('docs/parts.md')).map((parts) => [Object.values(parts)[0].kind, parts] as const))('the example of a %s can be read', (_, parts) => {
    const record = { format: 'loomwright-record', version: 1, id: 'example', title: 'Example', supply: { all: { systemV: 12, earth: 'negative' } }, parts }
    expect(readRecord(JSON.stringify(record), partKinds)).toMatchObject({ ok: true })
  })

  it('the published schema says what every parameter means', () => {
    const { properties } = recordJsonSchema(partKinds) as { properties: { parts: { additionalProperties: { oneOf: SchemaNode[] } } } }
    const kinds = properties.parts.additionalProperties.oneOf
    expect(kinds).toHaveLength(partKinds.length)
    expect(kinds.flatMap(({ properties: fields }) => fieldsWithoutWords(fields!.params, `${fields!.kind.const}`))).toEqual([])
  })

  it.each(readdirSync(new URL('examples/', root)).filter((name) => name.endsWith('.ts')))('example %s runs', async (name) => {
    expect((await linesOf(new URL(`examples/${name}`, root).href)).join('\n')).toMatch(/Tessarby|rated volts/)
  })

  it('the code in README runs', async () => {
    const code = /```ts\n([\s\S]*?)```/.exec(read('README.md'))?.[1] ?? ''
    const folder = new URL('test-results/', root)
    mkdirSync(folder, { recursive: true })
    const file = new URL('readme-example.ts', folder)
    const text = `import { readFileSync } from 'node:fs'\nconst text = readFileSync(${JSON.stringify(demo)}, 'utf8')\n`
    writeFileSync(file, code.replace(`'loomwright'`, `'../src/main.ts'`).replace(/\n\n/, `\n${text}\n`))
    const [line] = await linesOf(pathToFileURL(fileURLToPath(file)).href)
    const [percent, amps] = line.split(' ').map(Number)
    expect(percent).toBeGreaterThan(80)
    expect(Math.abs(amps)).toBeGreaterThan(1)
  })

  const commands = [...['README.md', 'docs/first-record.md'].flatMap((path) => commandsIn(read(path), /^npm run -s loomwright --/)), ...commandsIn([HELP, ...Object.values(HELP_OF)].join('\n'), /^loomwright (?=(check|solve|meter) examples)/)]
  it.each(commands.map((args) => [args.join(' '), args] as const))('loomwright %s ends well and prints', async (_, args) => {
    let printed = ''
    const at = args.map((word) => (word.startsWith('examples/') ? fileURLToPath(new URL(word, root)) : word))
    const code = await runCommand(at, { print: (text) => { printed += text }, complain: (text) => { printed += text }, progress: () => undefined })
    expect(printed.length).toBeGreaterThan(60)
    expect(code, printed).toBe(0)
  })
})
