// @ts-check
import { html } from 'lit-html';
import { movers, rows } from '../model/fits.js';
import { bits, lower, percentError } from '../model/numbers.js';
import { PAGES } from '../pages.js';
/** @typedef {import('../model/state.js').State} State */

const LEADING = 3;

/** The causes that weigh most, and what the last entry moved, in two lines. @param {State} s */
export function leading(s) {
  const a = s.page.assessment;
  const first = rows(a).slice(0, LEADING);
  if (first.length === 0) return '';
  const last = [...a.evidence].sort((x, y) => x.entry - y.entry).pop();
  const moved = last ? movers(a, last.bits, 1)[0] : undefined;
  const there = PAGES.some((p) => p.hash === 'causes');
  return html`<p class="leading"><span class="soft">Most likely</span> ${first.map((r, i) => html`${i ? html` <span class="soft">·</span> ` : ''}<span class="one-cause">${
    there && r.cause ? html`<a href=${`#cause/${encodeURIComponent(r.id)}`}>${lower(r.title)}</a>` : lower(r.title)} ${percentError(r.now, r.error)}</span>`)}</p>
    ${last ? html`<p class="leading"><span class="soft">Entry ${last.entry}</span> ${last.title}${moved ? html`<span class="soft">: ${moved.title} ${moved.bits < 0 ? 'down' : 'up'} ${bits(moved.bits)}</span>` : html`<span class="soft">: it moved nothing by as much as 0.1 bit</span>`}</p>`
      : html`<p class="leading"><span class="soft">Nothing is recorded yet: these are the chances before any evidence.</span></p>`}`;
}
