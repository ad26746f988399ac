// @ts-check
/** What the page asks about the mission's files; failures as everywhere in api/. Nothing here writes a file. */
import { ask } from './console.js';
/**
 * @typedef {import('../model/types.js').Problem} Problem
 * @typedef {{key: string, value: string, unit: string, line: number, mean?: number, least?: number, greatest?: number}} Key
 * @typedef {{id: string, title: string, branch: string, prior: number}} Prior
 * @typedef {Record<string, string>} Texts by file name
 * @typedef {{texts: Texts, problems: Problem[], warnings: Problem[], notes: Problem[], notComputed: string[], keys: Key[],
 *   mission?: {name: string, separation: string, now: string|null, crewHoursPerWeek: number, hazardLimit: number, causes: Prior[]}}} SetUp
 * @typedef {{file: string, key: string, value: string}} Edit
 * @typedef {{state: 'running'|'done'|'failed'|'stopped', seconds?: number, problems?: Problem[],
 *   assessment?: import('../model/types.js').Assessment}} Reckoning
 */

/** @param {string} path @param {unknown} body @param {AbortSignal} [signal] */
const post = (path, body, signal) => ask(path, {
  method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body), signal,
}).then((r) => r.json());

/** @param {AbortSignal} signal @returns {Promise<SetUp>} */
export const fetchSetUp = (signal) => ask('/api/set-up', { signal }).then((r) => r.json());

/** What a simulation tells of the tree; the first question sets it going. @param {AbortSignal} signal @returns {Promise<{done: boolean, warnings: Problem[]}>} */
export const fetchTreeWarnings = (signal) => ask('/api/set-up/tree', { signal }).then((r) => r.json());

/** @param {Texts} texts @param {Edit[]} set @param {AbortSignal} signal @returns {Promise<SetUp>} */
export const checkTexts = (texts, set, signal) => post('/api/set-up/check', { texts, set }, signal);

/** @param {Texts} texts @param {AbortSignal} signal @returns {Promise<{number: number, usualSeconds: number}>} */
export const reckon = (texts, signal) => post('/api/set-up/reckon', { texts }, signal);

/** @param {number} n @param {AbortSignal} signal @returns {Promise<Reckoning>} */
export const fetchReckoning = (n, signal) => ask(`/api/set-up/reckon/${n}`, { signal }).then((r) => r.json());

/** @param {number} n @returns {Promise<Reckoning>} */
export const stopReckoning = (n) => post(`/api/set-up/reckon/${n}/stop`, {});
