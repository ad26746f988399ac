// @ts-check
/** What the page asks about the orbits; failures as everywhere in api/. */
import { ask } from './console.js';

/** @param {AbortSignal} signal @returns {Promise<import('../model/orbit.js').Orbit>} */
export const fetchOrbit = (signal) => ask('/api/orbit', { signal }).then((r) => r.json());
