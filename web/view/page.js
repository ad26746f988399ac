// @ts-check
import { html } from 'lit-html';
import { guide } from './guide.js';
import { keySheet } from './keysheet.js';
import { masthead } from './masthead.js';
import { nav } from './nav.js';
import { outbox } from './outbox.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/shell.js').Page} Page */

/** What stands around the page looked at. @param {State} s @param {Page|undefined} page @param {import('../model/state.js').ShellActions} act */
export const frame = (s, page, act) => html`
  <a class="skip" href=${page?.skip[0] ?? '#'}>${page?.skip[1] ?? ''}</a>
  ${masthead(s, act)}
  ${nav(s)}
  ${outbox(s, act)}
  ${s.unopened ? html`<main><h1>This page is not here yet.</h1><p class="why" role="alert">${s.unopened}</p></main>`
    : page ? page.draw() : html`<main><p class="waiting" role="status">Fetching the page…</p></main>`}
  ${footer(s, act)}
  ${guide(s, act.guide)}
  ${keySheet(s, page?.keys?.() ?? [], act)}`;

/** @param {State} s @param {import('../model/state.js').ShellActions} act */
const footer = (s, act) => html`
  <footer>
    <p>${s.page.assessment.members.toLocaleString('en')} simulated bodies, seed ${s.page.assessment.seed}, revision ${s.page.revision}.
      Hark never transmits and drives no hardware by itself. Whether to send is for the licence holder to decide, under the
      rules of the place.</p>
    <p><button type="button" class="ask-keys" @click=${act.showKeys}>keys and words</button> ${s.keysOn ? html`<kbd>?</kbd>` : ''}</p>
  </footer>`;
