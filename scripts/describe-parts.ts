import type { Params, PartKind } from '../src/record/index.ts'

/** What a person needs to know to write a part into a record: every kind with its ends, parameters and failures. */
export function describeParts(kinds: readonly PartKind[]): string {
  const head = `# Part kinds

What can stand as \`kind\` in \`parts\` of a record. An end is written \`part:end\`; where the part carries another marking, the record
says so in \`terminals\`: \`{ "58": { "is": "in" } }\`. Every parameter may be absent (its usual value is then taken, and reported) or
\`"unknown"\`. The exact shapes are in [record.schema.json](record.schema.json). This page is written by \`npm run schema\`.
`
  return `${[head, ...kinds.map(describeKind)].join('\n')}`
}

function describeKind(kind: PartKind): string {
  const ends = endsOf(kind)
  return [
    `## ${kind.kind}\n`, `${kind.plain}\n`,
    ends.length ? `Ends: ${ends.map(({ is, what }) => `\`${is}\` ${what}`).join('; ')}.\n` : 'Ends: those that its rows and resistors name.\n',
    `Parameters: ${Object.keys(kind.params.shape).map((name) => `\`${name}\``).join(', ')}.\n`,
    `Fails: ${kind.fails(leastParams(kind)).map(({ what, fault }) => `${what} (\`${fault}\`)`).join('; ') || 'each of its contacts, burnt or open'}.\n`,
  ].join('\n')
}

const leastParams = ({ kind }: PartKind): Params => (kind === 'control' ? { axes: {}, rows: {} } : {})

function endsOf(kind: PartKind) {
  return kind.terminals(leastParams(kind))
}
