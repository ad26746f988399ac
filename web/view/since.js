// @ts-check
import { html } from 'lit-html';
import { dayClock } from '../model/time.js';
import { bits } from '../model/numbers.js';
import { movers } from '../model/fits.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/types.js').EvidenceView} EvidenceView */

const MOVERS = 4;
const EARLIER = 5;

/** What the last entries changed. @param {State} s */
export function since(s) {
  const evidence = [...s.page.assessment.evidence].sort((x, y) => x.entry - y.entry);
  const last = evidence.pop();
  if (!last) return html`<section><h2>Since the last entry</h2><p>Nothing is recorded yet. Begin with the last pass anybody sat through, heard or not: <a href="#log-title">write it down</a>, or <code>hark log</code>. Each entry then stands here with what it moved.</p></section>`;
  return html`
    <section class="since">
      <h2>Since the last entry</h2>
      ${moved(last, s)}
      ${evidence.length > 0 ? html`<details><summary>entries before it</summary>
        ${evidence.slice(-EARLIER).reverse().map((e) => moved(e, s))}</details>` : ''}
    </section>`;
}

/** @param {EvidenceView} e @param {State} s */
function moved(e, s) {
  const list = movers(s.page.assessment, e.bits, MOVERS);
  return html`
    <div class="moved" data-entry=${e.entry}>
      <p>${e.title} <span class="soft">entry ${e.entry}, ${dayClock(e.at)}</span></p>
      ${list.length === 0 ? html`<p class="soft">It moved nothing by as much as 0.1 bit.</p>` : html`
        <ul class="bits">${list.map((m) => html`
          <li><span>${m.title}</span> <b>${m.bits < 0 ? 'down' : 'up'} ${bits(m.bits)}</b></li>`)}</ul>`}
    </div>`;
}
