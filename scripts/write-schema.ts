// Writes the published JSON Schema of the record: npx tsx scripts/write-schema.ts
import { writeFileSync } from 'node:fs'
import { partKinds } from '../src/parts/index.ts'
import { recordJsonSchema } from '../src/record/index.ts'

const file = new URL('../docs/record.schema.json', import.meta.url)
writeFileSync(file, `${JSON.stringify(recordJsonSchema(partKinds), null, 2)}\n`)
console.log(`wrote ${file.pathname}`)
