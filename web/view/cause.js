// @ts-check
import { html } from 'lit-html';
import { percent, percentError } from '../model/numbers.js';
import { recoverySentence } from './recovery.js';
/** @typedef {import('../model/state.js').State} State */

/** A cause one step away: how it comes about, what would settle it, when it ends. @param {import('../model/types.js').Cause} c @param {State} s */
export function particulars(c, s) {
  const far = s.farAhead.look?.returns.find((r) => r.cause === c.id);
  const rest = html`${c.later >= 0.001 ? ` Still to come: ${percent(c.later)}.` : ''}`;
  return html`
    <p>${c.mechanism}</p>
    <p>Began at ${percent(c.prior)}, now ${percentError(c.posterior, c.error)}. With half that start it would stand at
      ${percent(c.ifPriorHalved)}, with double at ${percent(c.ifPriorDoubled)}.${rest}</p>
    <dl class="settle">
      ${item('Would speak against it', c.detail.refutes)}
      ${item('Ended by', either(c.detail.endedBy))}
      ${item('Procedures', c.detail.procedures.join(', '))}
    </dl>
    <p>${recoverySentence(c.selfRecovery, s.page.assessment)}${far ? ` Far ahead: ${far.words}.` : ''}</p>`;
}

/** @param {string} name @param {string} words */
const item = (name, words) => (words ? html`<div><dt>${name}</dt><dd>${words}</dd></div>` : '');

/** @param {string[]} items */
const either = (items) => (items.length < 2 ? items.join('') : `${items.slice(0, -1).join('; ')}; or ${items[items.length - 1]}`);
