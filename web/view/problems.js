// @ts-check
import { html } from 'lit-html';

/** What, where, mend. @param {import('../model/types.js').Problem[]} list */
export const problemList = (list) => list.length === 0 ? '' : html`
  <ul class="problems">${list.map((p) => html`<li><span class="what">${p.what}</span>
    ${p.where ? html`<span class="where">where: ${p.where}</span>` : ''}
    ${p.mend ? html`<span class="mend">mend: ${p.mend}</span>` : ''}</li>`)}</ul>`;
