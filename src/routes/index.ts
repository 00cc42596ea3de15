export { DEFAULT_LENGTH_MM, measureWires, type WireRoute } from './measure-wires.ts'
