// @ts-check
import { html } from 'lit-html';
import { LEAST_BITS, movements } from '../model/fits.js';
import { count, signedBits } from '../model/numbers.js';
import { dayClock } from '../model/time.js';
/** @typedef {import('../model/types.js').Assessment} Assessment */

const ODD = 0.05;

/** What moved what: entries down, causes across. @param {Assessment} a */
export function movedTable(a) {
  const { columns, moved, still, sums } = movements(a);
  if (moved.length === 0) return '';
  return html`
    <details class="moved-table rest"><summary>What moved what: every entry against the heaviest causes</summary>
      <p class="legend">Bits of odds: +1 doubles them, −1 halves them. Of causes that cannot be told apart one stands for all.</p>
      <div class="scroll" tabindex="0" role="region" aria-label="What each entry moved, by cause"><table>
        <thead><tr><th scope="col">entry</th>${columns.map((c) => html`<th scope="col">${c.title}</th>`)}</tr></thead>
        <tbody>${moved.map(({ e, cells }) => html`
          <tr><th scope="row">${e.title} <span class="soft">${e.entry}, ${dayClock(e.at)}${odd(e)}</span></th>
            ${cells.map((b) => html`<td>${Math.abs(b) < LEAST_BITS ? '·' : signedBits(b)}</td>`)}</tr>`)}</tbody>
        <tfoot><tr><th scope="row">all together</th>${sums.map((b) => html`<td>${signedBits(b)}</td>`)}</tr></tfoot>
      </table></div>
      ${still > 0 ? html`<p class="soft">${count(still, 'other entry moves', 'other entries move')} none of these by as much as ${LEAST_BITS} bit.</p>` : ''}
    </details>`;
}

/** An entry that is unlikely under all that fits. @param {import('../model/types.js').EvidenceView} e */
const odd = (e) => (e.tail !== undefined && e.tail < ODD ? `, odd: chance 1 in ${Math.round(1 / Math.max(e.tail, 1e-5))}` : '');
