import { readRecordList, recordPath, RECORDS_PATH } from '../api/index.ts'

/** Names of the records that the server offers. */
export async function fetchNames(): Promise<readonly string[]> {
  const response = await fetch(RECORDS_PATH)
  if (!response.ok) throw new Error(`The server does not give its list of records (${response.status}).`)
  return readRecordList(await response.json()).records
}

export async function fetchText(name: string): Promise<string> {
  const response = await fetch(recordPath(name))
  if (!response.ok) throw new Error(`There is no record “${name}” here.`)
  return response.text()
}
