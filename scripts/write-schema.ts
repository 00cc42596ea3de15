// npm run schema: writes the published JSON Schema of the record, and the page on part kinds.
import { writeFileSync } from 'node:fs'
import { partKinds } from '../src/parts/index.ts'
import { recordJsonSchema } from '../src/record/index.ts'
import { describeParts } from './describe-parts.ts'

const file = new URL('../docs/record.schema.json', import.meta.url)
writeFileSync(file, `${JSON.stringify(recordJsonSchema(partKinds), null, 2)}\n`)
console.log(`wrote ${file.pathname}`)
writeFileSync(new URL('../docs/parts.md', import.meta.url), describeParts(partKinds))
