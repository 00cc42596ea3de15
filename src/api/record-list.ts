/** The records that a server offers, by the names under which it gives them out. */
export interface RecordList { readonly records: readonly string[] }

export const RECORDS_PATH = '/api/records'

export function recordPath(name: string): string {
  return `${RECORDS_PATH}/${encodeURIComponent(name)}`
}

/** Reads the answer of a server; throws a RangeError when it is none. */
export function readRecordList(value: unknown): RecordList {
  const { records } = (value ?? {}) as { records?: unknown }
  if (!Array.isArray(records) || !records.every((name) => typeof name === 'string')) throw new RangeError('expected a list of records')
  return { records }
}
