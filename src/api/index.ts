export { readRecordList, recordPath, RECORDS_PATH, type RecordList } from './record-list.ts'
