import { expect, test } from 'vitest'
import { lampLaw } from './lamp-law-rows.ts'

// StVZO section 53 (1): both required tail lamps on one fuse are not allowed in Germany; where the rule is off, no note.
test('tail lamps on one fuse', () => {
  const rules = Object.values(lampLaw).filter(({ rule }) => rule.includes('share one fuse'))
  expect(rules).toEqual([expect.objectContaining({ where: 'Germany', source: 'stvzo', status: 'read' })])
})
