// @ts-check
/** What the page asks to sit through a pass. */
import { ask } from './console.js';

/** @param {string} windowId @returns {Promise<import('../model/pass.js').PassData>} */
export const fetchPass = (windowId) => ask(`/api/windows/${encodeURIComponent(windowId)}/pass`).then((r) => r.json());

/**
 * @typedef {{id: string, title: string, kind: string, cautions: string[], forbiddenIf: string[],
 *   sections: {title: string, html: string, steps: {html: string, detail: string}[]}[]}} Steps
 *
 * HTML made by the server, with everything raw escaped.
 */
/** @param {string} procedure @returns {Promise<Steps>} */
export const fetchSteps = (procedure) => ask(`/api/procedures/${encodeURIComponent(procedure)}/steps`).then((r) => r.json());
