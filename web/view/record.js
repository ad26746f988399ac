// @ts-check
import { html } from 'lit-html';
import { dayClock } from '../model/time.js';
/** @typedef {import('../model/state.js').State} State */

const SHOWN = 6;

/** The last entries of the record. @param {State} s */
export function record(s) {
  const last = [...s.page.journal].reverse();
  const titles = new Map(s.page.assessment.evidence.map((e) => [e.entry, e.title]));
  const line = (/** @type {import('../model/types.js').JournalEntry} */ e) => html`
    <li data-number=${e.number}><span class="number">${e.number}</span> <span>${titles.get(e.number) ?? e.kind}${e.note ? html`, <i>${e.note}</i>` : ''}
      <span class="soft">${dayClock(e.at)}${e.who ? `, ${e.who}` : ''}</span></span></li>`;
  return html`
    <section class="record">
      <h2>The record</h2>
      ${last.length === 0 ? html`<p>Nothing is recorded yet; the first entry begins the record.</p>` : html`<ol class="plain">${last.slice(0, SHOWN).map(line)}</ol>`}
      ${last.length > SHOWN ? html`<details><summary>${last.length - SHOWN} before these</summary><ol class="plain">${last.slice(SHOWN).map(line)}</ol></details>` : ''}
    </section>`;
}
