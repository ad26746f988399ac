// @ts-check
/** What the page asks about the plan and the case for going on; failures as everywhere in api/. */
import { ask } from './console.js';
/** @typedef {import('../model/plan.js').Plan} Plan */
/** @typedef {import('../model/plan.js').Edit} Edit */
/** @typedef {import('../model/plan.js').Trial} Trial */

/** @param {AbortSignal} signal @returns {Promise<Plan>} */
export const fetchPlan = (signal) => ask('/api/plan', { signal }).then((r) => r.json());

/** What another plan would be worth; nothing is changed by asking. @param {Edit[]} edits @param {AbortSignal} signal @returns {Promise<Trial>} */
export const tryPlan = (edits, signal) => ask('/api/plan', {
  method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify({ edits }), signal,
}).then((r) => r.json());

/** Takes some seconds the first time. @param {AbortSignal} signal @returns {Promise<import('../model/case.js').Case>} */
export const fetchCase = (signal) => ask('/api/case', { signal }).then((r) => r.json());

/** Where the case can be kept as a file. */
export const CASE_FILE = '/api/case/file';
