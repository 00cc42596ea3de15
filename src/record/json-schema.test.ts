import { expect, test } from 'vitest'
import { fakeKinds } from '../../test/builders/fake-kinds.ts'
import { recordJsonSchema } from './json-schema.ts'

test('the published schema names its draft, its format and every part kind', () => {
  const schema = recordJsonSchema(fakeKinds) as { $schema: string, properties: { format: { const: string } } }
  expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema')
  expect(schema.properties.format.const).toBe('loomwright-record')
  for (const { kind } of fakeKinds) expect(JSON.stringify(schema)).toContain(`"const":"${kind}"`)
})
