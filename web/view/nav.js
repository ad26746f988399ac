// @ts-check
import { html } from 'lit-html';
import { PAGES } from '../pages.js';
/** @typedef {import('../model/state.js').State} State */

/** The names of the pages in a line; the one looked at is marked. @param {State} s */
export function nav(s) {
  const open = PAGES.find((p) => p.hash === s.view);
  const marked = open?.under ?? s.view;
  return html`
    <nav class="pages" aria-label="Pages"><ol>${PAGES.filter((p) => p.name !== '').map((p) => html`
      <li><a href=${`#${p.hash}`} aria-current=${p.hash === marked ? 'page' : 'false'}>${p.name}</a></li>`)}</ol></nav>`;
}
