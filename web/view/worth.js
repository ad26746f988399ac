// @ts-check
import { html } from 'lit-html';
import { next } from '../model/windows.js';
import { worthOf } from '../model/worth.js';
import { term } from './term.js';
/** @typedef {import('../model/state.js').State} State */

/** Under this an hour does not change the chance, only how soon it comes. A twentieth of a point. */
const NOTHING_PER_HOUR = 5e-4;

/** Whether to get up for it, with the plan's threshold. @param {State} s */
export function worth(s) {
  const a = s.page.assessment;
  const w = next(a.windows, s.now);
  const found = w && worthOf(w, a);
  if (!w || !found) return '';
  const { perHour, threshold } = found;
  if (perHour === Infinity) return html`<p class="worth"><b>Nobody need get up for it:</b> it takes no hours of people’s time.</p>`;
  const here = html`an hour here adds ${points(perHour)} to the ${term('by-horizon', 'chance to hear it by the horizon')}`;
  if (threshold === null) return html`<p class="worth">For what it is worth: ${here}.</p>`;
  if (w.planned !== null && perHour < NOTHING_PER_HOUR) {
    return html`<p class="worth"><b>Worth it for a sooner sound, not for a likelier one:</b> missed, the plan’s other passes
      leave the ${term('by-horizon', 'chance to hear it by the horizon')} as it is.</p>`;
  }
  const verdict = perHour >= threshold && w.planned !== null;
  return html`<p class="worth"><b>${verdict ? 'Worth getting up for:' : 'Not worth getting up for alone:'}</b>
    ${here}; ${w.planned === null ? 'the plan leaves it out, and ' : ''}the ${term('threshold', 'last hour the plan still takes')} adds ${points(threshold)}.</p>`;
}

/** 12 points, 0.8 points @param {number} share */
function points(share) {
  const value = 100 * share;
  if (share < NOTHING_PER_HOUR) return 'less than 0.1\u00a0points';
  const text = value >= 10 ? value.toFixed(0) : value.toFixed(1);
  return `${text}\u00a0${text === '1.0' ? 'point' : 'points'}`;
}
