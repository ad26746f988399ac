// @ts-check
/** The clock of a rehearsal. */
import { ask } from './console.js';

/** @returns {Promise<import('../model/types.js').Clock>} */
export const fetchClock = () => ask('/api/clock').then((r) => r.json());

/** @param {{held?: boolean, speed?: number, to?: string}} wish @returns {Promise<import('../model/types.js').Clock>} */
export const moveClock = (wish) => ask('/api/clock', {
  method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(wish),
}).then((r) => r.json());
