// @ts-check
/** What the page asks about the electrical system; failures as everywhere in api/. */
import { ask } from './console.js';
/** @typedef {import('../model/energy.js').Energy} Energy */

/** Tells the server which of its questions come from the same page, so that the newest wins. */
const asker = Math.random().toString(36).slice(2);

/** @returns {Promise<Energy>} */
export const fetchEnergy = () => ask('/api/energy').then((r) => r.json());

/** @param {string} at @param {AbortSignal} signal @returns {Promise<import('../model/energy.js').WhyThere>} */
export const fetchWhy = (at, signal) => ask(`/api/energy/why?at=${encodeURIComponent(at)}`, { signal }).then((r) => r.json());

/** @param {number} n @param {AbortSignal} signal @returns {Promise<import('../model/energy.js').Trace>} */
export const fetchMember = (n, signal) => ask(`/api/energy/member?n=${n}`, { signal }).then((r) => r.json());

/** @param {string} key @param {string} value @param {AbortSignal} signal @returns {Promise<import('../model/energy.js').WhatIf>} */
export const askWhatIf = (key, value, signal) =>
  ask('/api/energy/what-if', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ set: { [key]: value }, asker }),
    signal,
  }).then((r) => r.json());
