// Runs before every test file. The everyday run repeats one seed, so that a failure is the change's own; `npm run
// test:long` gives the laws more runs and a new seed each time. fast-check prints the seed of a law that breaks.
import fc from 'fast-check'

const long = import.meta.env.MODE === 'long'

fc.configureGlobal(long ? { numRuns: 2000, interruptAfterTimeLimit: 300_000 } : { numRuns: 100, seed: 1930 })
