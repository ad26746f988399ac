// @ts-check
/**
 * What the page of a pass holds.
 *
 * @typedef {{id: string, window: import('./types.js').Window|undefined, data: import('./pass.js').PassData|undefined,
 *   procedure: string, steps: import('../api/pass.js').Steps|undefined, problems: import('./types.js').Problem[],
 *   asked: boolean, said: import('./outcome.js').Said, checks: Set<string>, burst: number, heardAt: number[]}} PassState
 *
 * `burst` is when somebody last noticed one, 0 for never; `heardAt` when *heard* was pressed.
 *
 * @typedef {{say: (outcome: import('./outcome.js').Outcome) => void,
 *   value: (key: 'level'|'frequency'|'why'|'note'|'who', value: string) => void, cancel: () => void, write: () => void,
 *   check: (step: string) => void, choose: (procedure: string) => void, burst: () => void, print: () => void}} PassActions
 */
export {};
