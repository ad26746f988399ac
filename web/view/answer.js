// @ts-check
import { html } from 'lit-html';
import { kept } from '../model/numbers.js';
/** @typedef {import('../model/state.js').State} State */

/** A caution longer than this, in characters, stands on a line of its own. */
const SHORT = 32;

/** The sentence a person could say aloud, and why. @param {State} s */
export function answer(s) {
  const h = s.page.assessment.headline;
  return html`
    <section class="answer" aria-live="polite" aria-atomic="true">
      <h1>${kept(h.action)}${h.caution ? html` <em class=${h.caution.length > SHORT ? 'long' : ''}>${h.caution}</em>` : ''}</h1>
      <p class="why">${kept(h.why)}</p>
    </section>`;
}
