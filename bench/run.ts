// npm run bench -- [--json FILE] [NAME …]: asks every question, or those named, and prints the figures.
import { writeFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import type { Figure } from './question.ts'
import { questions } from './table.ts'

const { values, positionals } = parseArgs({ options: { json: { type: 'string' } }, allowPositionals: true })
const figures: Figure[] = []
for (const question of questions) {
  if (positionals.length > 0 && !positionals.includes(question.name)) continue
  for (const figure of await question.ask()) {
    figures.push(figure)
    console.log(describe(figure))
  }
}
if (values.json !== undefined) writeFileSync(values.json, `${JSON.stringify(figures, null, 2)}\n`)

function describe({ name, value, unit, goal, better }: Figure): string {
  if (value === null) return `${name}: not measured, a tool is missing`
  const reached = better === 'lower' ? value <= goal : value >= goal
  return `${name}: ${Number(value.toPrecision(4))} ${unit}, goal ${goal} ${better === 'lower' ? 'or less' : 'or more'}: ${reached ? 'reached' : 'not reached'}`
}
