// @ts-check
/** What the page asks about the record as a whole; failures as everywhere in api/. */
import { ask } from './console.js';
/** @typedef {{entries: number, head: {number: number, hash: string}, fault: import('../model/types.js').Problem|null}} Chain */

/** @param {AbortSignal} signal @returns {Promise<Chain>} */
export const fetchChain = (signal) => ask('/api/record/chain', { signal }).then((r) => r.json());

/** Addresses under which the record can be kept as a file, with their names. @type {[string, string, string][]} */
export const FILES = [
  ['/api/record/csv', 'CSV', 'a table for a spreadsheet'],
  ['/api/record/json', 'JSON', 'one document'],
  ['/api/record/lines', 'lines', 'an entry a line, for another journal'],
];
