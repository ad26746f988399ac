// @ts-check
/**
 * What the energy page holds.
 *
 * @typedef {{data: import('./energy.js').Energy|undefined, problems: import('./types.js').Problem[],
 *   days: number, from: number, at: number,
 *   whyNow: import('./energy.js').WhyThere|undefined, why: import('./energy.js').WhyThere|undefined,
 *   whyProblems: import('./types.js').Problem[],
 *   trace: import('./energy.js').Trace|undefined, memberProblems: import('./types.js').Problem[],
 *   key: string, value: string, other: import('./energy.js').WhatIf|undefined,
 *   whatIfProblems: import('./types.js').Problem[],
 *   slow: Record<string, boolean>}} EnergyState
 *
 * `slow` tells which questions have been waiting for longer than a person should wonder.
 *
 * @typedef {{days: (days: number) => void, turn: (days: number) => void, key: (e: KeyboardEvent) => void,
 *   point: (e: MouseEvent) => void, member: (n: number) => void, figure: (key: string) => void,
 *   slide: (value: number) => void, type: (value: string) => void, asItIs: () => void}} EnergyActions
 */

/** @returns {EnergyState} */
export const nothingAsked = () => ({
  data: undefined, problems: [], days: 3, from: 0, at: 0, whyNow: undefined, why: undefined, whyProblems: [],
  trace: undefined, memberProblems: [], key: '', value: '', other: undefined, whatIfProblems: [],
  slow: {},
});
