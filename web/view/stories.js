// @ts-check
import { html } from 'lit-html';
import { percent, percentError } from '../model/numbers.js';
import { stories } from '../model/fits.js';
/** @typedef {import('../model/types.js').Assessment} Assessment */

/** Explanations that exclude each other; with the rest they make all. @param {Assessment} a */
export function storiesView(a) {
  const { told, others, prior, posterior } = stories(a);
  return html`
    <details class="rest stories"><summary>As stories that exclude each other, together 100 %</summary>
      <table>
        <thead><tr><th scope="col">what is wrong, and nothing else</th><th scope="col">at the start</th><th scope="col">now</th></tr></thead>
        <tbody>
          ${told.map((e) => line(e.title, percent(e.prior), percentError(e.posterior, e.error)))}
          ${others > 0 ? line(`${others} others, each under 0.5 %`, percent(prior), percent(posterior)) : ''}
          ${line('three or more things at once', percent(a.remainderAtStart), percent(a.remainder))}
        </tbody>
      </table>
      <p>${remainderWords(a)}</p>
    </details>`;
}

/** @param {string} title @param {string} before @param {string} now */
const line = (title, before, now) => html`<tr><th scope="row">${title}</th><td>${before}</td><td>${now}</td></tr>`;

/** What the remainder is and when it matters. @param {Assessment} a */
const remainderWords = (a) => `Three or more things wrong at once are not worked out: their weight now is what it would be if they fitted the record
  as pairs do on average.${a.remainderBound > Math.max(0.05, 2 * a.remainder)
    ? ` Only if each of them fitted as well as the best single possibility would it be ${percent(a.remainderBound)}; nothing says so.` : ''}
  It matters where an action is right for one cause alone and wrong when another joins it.`;
