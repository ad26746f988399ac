// @ts-check
import { html } from 'lit-html';
import { kept } from '../model/numbers.js';
import { MINUTE, countdown, ms, span } from '../model/time.js';
/** @typedef {import('../model/state.js').State} State */

/** A caution longer than this, in characters, stands on a line of its own. */
const SHORT = 32;

/** Below this the seconds count, ms. */
const CLOSE = 10 * MINUTE;

/** The sentence a person could say aloud, and why. The time in it runs; a change of it is not read aloud, a new sentence is. @param {State} s */
export function answer(s) {
  const h = s.page.assessment.headline;
  return html`
    <section class="answer" data-step="1">
      <h1>${kept(running(h, s))}${h.caution ? html` <em class=${h.caution.length > SHORT ? 'long' : ''}>${h.caution}</em>` : ''}</h1>
      <p class="unseen" aria-live="polite" aria-atomic="true">${h.action} ${h.caution}</p>
      <p class="why">${kept(h.why)}</p>
    </section>`;
}

/** The action with the time that is left now. @param {import('../model/types.js').Headline} h @param {State} s */
function running(h, s) {
  const w = s.page.assessment.windows.find((one) => one.id === h.window);
  const [said, task] = /^In [^,]+, (.*)$/s.exec(h.action) ?? [];
  if (!w || !said) return h.action;
  const left = ms(w.aos) - s.now;
  if (left <= 0) return s.now < ms(w.los) ? `Now, ${task}` : h.action.replace(/^In [^,]+, /, 'Over: ');
  return `In ${left < CLOSE ? countdown(left) : span(left)}, ${task}`;
}
