import type { WiringRecord } from '../../src/record/index.ts'

const OTHER: Readonly<Record<string, string>> = {
  'battery:+': 'battery:-', 'battery:-': 'battery:+', 'positive': 'negative', 'negative': 'positive',
}

/** The same vehicle earthed by its battery's other post. */
export function reversePolarity(record: WiringRecord): WiringRecord {
  const text = JSON.stringify(record).replace(/"(battery:[+-]|positive|negative)"/g, (_, word: string) => `"${OTHER[word]}"`)
  return JSON.parse(text) as WiringRecord
}
