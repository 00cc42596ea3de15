/** The states of the engine that a setting may name; `stopped-open`: it stands with the points apart. A number is a speed. */
export const ENGINE_STATES = ['stopped', 'stopped-open', 'cranking', 'idle', 'cruise'] as const
