// @ts-check
import { html } from 'lit-html';
/** @typedef {import('../model/state.js').State} State */

/** The sentence a person could say aloud, and why. @param {State} s */
export function answer(s) {
  const h = s.page.assessment.headline;
  return html`
    <section class="answer" aria-live="polite" aria-atomic="true">
      <h1>${h.action}${h.caution ? html` <em>${h.caution}</em>` : ''}</h1>
      <p class="why">${h.why}</p>
    </section>`;
}
