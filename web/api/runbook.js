// @ts-check
/** What the page asks about procedures and the drafted entry; failures as everywhere in api/. */
import { ask } from './console.js';
/**
 * HTML is made by the server, with everything raw escaped.
 *
 * @typedef {{text: string, expect?: string, timeOut?: string, ifNot?: string, more?: string}} Step
 * @typedef {{title: string, html?: string, steps?: Step[]}} Part
 * @typedef {{id: string, title: string, kind: 'listen'|'command'|'desk'|'wait', needs: string[], costHours: number,
 *   cautions: string[], forbiddenIf: string[], parts: Part[]}} Procedure
 * @typedef {{id: string, html: string}} Draft
 */

/** @param {AbortSignal} signal @returns {Promise<Procedure[]>} */
export const fetchProcedures = (signal) => ask('/api/runbook', { signal }).then((r) => r.json()).then((o) => o.procedures);

/** @param {AbortSignal} signal @returns {Promise<Draft>} */
export const fetchDraft = (signal) => ask('/api/runbook-entry', { signal }).then((r) => r.json());

/** Where the drafted entry can be kept as a file. */
export const DRAFT_FILE = '/api/runbook-entry/file';
