export { partKinds } from './table.ts'
