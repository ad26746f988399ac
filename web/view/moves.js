// @ts-check
import { html } from 'lit-html';
import { drawBit } from '../chart/bit.js';
import { drawWays } from '../chart/ways.js';
import { LEAST_BITS, movements, movers } from '../model/fits.js';
import { ways } from '../model/causes.js';
import { bits, count, signedBits } from '../model/numbers.js';
import { dayClock } from '../model/time.js';
import { term } from './term.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/types.js').EvidenceView} EvidenceView */
/** @typedef {import('./causes.js').Mine} Mine */
/** @typedef {import('./causes.js').Actions} Actions */

const ODD = 0.05;
const ALL = 40;

/** Entry by entry, what moved what. @param {State} s @param {Mine} mine @param {Actions} act */
export function moves(s, mine, act) {
  const a = s.page.assessment;
  const { columns, moved, still, sums } = movements(a);
  if (moved.length === 0) {
    return html`<section id="causes-moves"><h2>Entry by entry</h2>
      <p>No entry has moved anything yet. <a href="#record">Write down what happened</a> at a pass, heard or not, and this fills.</p></section>`;
  }
  const width = s.widths['causes-ways'];
  return html`
    <section id="causes-moves" class="entry-by-entry" aria-labelledby="causes-moves-title">
      <h2 id="causes-moves-title">Entry by entry, what moved what</h2>
      <p class="legend">How the odds of the heaviest causes went, in ${term('bit', 'bits')} since the start: up one, twice as likely against all else. Below, the number of the entry.</p>
      <div class="ways-ground" data-measure="causes-ways">${width ? drawWays(ways(a), width) : ''}</div>
      <div class="scroll" tabindex="0" role="region" aria-label="What each entry moved, by cause"><table class="moves">
        <thead><tr><th scope="col">entry</th>${columns.map((c) => html`<th scope="col"><a href=${`#cause/${c.id}`}>${c.title}</a></th>`)}</tr></thead>
        <tbody>${moved.map(({ e, cells }) => html`
          <tr class=${mine.entry === e.entry ? 'open' : ''}><th scope="row"><button type="button" aria-expanded=${mine.entry === e.entry ? 'true' : 'false'}
              @click=${() => act.entry(mine.entry === e.entry ? 0 : e.entry)}><span class="number">${e.entry}</span> ${e.title}</button>
              <span class="soft">${dayClock(e.at)}${odd(e)}</span></th>
            ${cells.map((b) => html`<td>${Math.abs(b) < LEAST_BITS ? html`<span class="soft" aria-label="hardly">·</span>` : html`${drawBit(b)} <span>${signedBits(b)}</span>`}</td>`)}</tr>
          ${mine.entry === e.entry ? html`<tr class="opened"><td colspan=${columns.length + 1}>${opened(e, s)}</td></tr>` : ''}`)}</tbody>
        <tfoot><tr><th scope="row">all together</th>${sums.map((b) => html`<td>${drawBit(b)} <span>${signedBits(b)}</span></td>`)}</tr></tfoot>
      </table></div>
      ${still > 0 ? html`<p class="soft">${count(still, 'other entry moves', 'other entries move')} none of these by as much as ${LEAST_BITS} bit.</p>` : ''}
    </section>`;
}

/** An entry that is unlikely under all that fits. @param {EvidenceView} e */
const odd = (e) => (e.tail !== undefined && e.tail < ODD ? `, odd: chance 1 in ${Math.round(1 / Math.max(e.tail, 1e-5))}` : '');

/** All that one entry moved, and what was written. @param {EvidenceView} e @param {State} s */
function opened(e, s) {
  const list = movers(s.page.assessment, e.bits, ALL);
  const written = s.page.journal.find((j) => j.number === e.entry);
  return html`
    <div class="opened-entry">
      <p>${written ? Object.entries(written.keys).map(([key, value]) => html`<span class="key"><span class="soft">${key}</span> ${value}</span> `) : ''}
        ${written?.note ? html`<i>${written.note}</i>` : ''} <a href=${`#record/${e.entry}`}>entry ${e.entry} in the record</a></p>
      ${e.tail === undefined ? '' : html`<p class="soft">Chance of an outcome as odd as this, all evidence counted: ${e.tail < 0.01 ? `1 in ${Math.round(1 / Math.max(e.tail, 1e-5))}` : `${Math.round(100 * e.tail)} %`}.</p>`}
      <ul class="bits">${list.map((m) => html`<li><span>${m.title}</span> <b>${m.bits < 0 ? 'down' : 'up'} ${bits(m.bits)}</b></li>`)}</ul>
    </div>`;
}
