// @ts-check
import { html } from 'lit-html';
import { STEPS } from '../shell/guide.js';

/** @type {(() => unknown)[]} */
const SAYS = [
  () => html`<b>Begin with the sentence.</b> It says what to do next and why, in words that can be read aloud. Everything else on the page is its reason.`,
  () => html`<b>Then the numbers.</b> Each has its spread; ± is what the sampling leaves open, not what is unknown on board. Dotted words explain themselves when you point at them or tab to them.`,
  () => html`<b>One axis for the day.</b> Passes stand like reeds over sunlight and battery, so that you see why one is worth it. Choose one to see where to point; <i>Passes</i> has them all.`,
  () => html`<b>What still fits.</b> A hollow dot is where a cause began, a full one where it stands now. A row opens to what it is, what would settle it and when it ends by itself.`,
  () => html`<b>Write down every pass,</b> the silent ones most of all: all numbers follow in a moment, and a correction undoes a mistake. <kbd>h</kbd> heard, <kbd>n</kbd> nothing, <kbd>x</kbd> could not listen, <kbd>?</kbd> all keys.`,
];

/** One step at the foot of the first page; nothing once it was seen. @param {import('../model/state.js').State} s @param {(step: number) => void} show */
export const guide = (s, show) => s.guide === 0 || s.view !== '' ? '' : html`
  <aside class="guide" aria-label="First visit">
    <p role="status"><span class="soft">${s.guide} of ${STEPS}</span> ${SAYS[s.guide - 1]()}</p>
    <p class="guide-ways"><button type="button" @click=${() => show(s.guide + 1)}>${s.guide < STEPS ? 'next' : 'done'}</button>
      ${s.guide > 1 ? html`<button type="button" @click=${() => show(s.guide - 1)}>back</button>` : ''}
      ${s.guide < STEPS ? html`<button type="button" @click=${() => show(0)}>not now</button>` : ''}</p>
  </aside>`;
