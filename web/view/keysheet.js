// @ts-check
import { html } from 'lit-html';
import { GLOSSARY } from '../model/glossary.js';
import { PAGES } from '../pages.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/shell.js').Key} Key */

/**
 * The sheet of keys and words. Closed it still holds the words, to which marked words point for
 * those who listen to the page.
 *
 * @param {State} s @param {Key[]} keys of the page looked at @param {import('../model/state.js').ShellActions} act
 */
export const keySheet = (s, keys, act) => html`
  <dialog id="keys" aria-labelledby="keys-title">
    <div class="heading"><h2 id="keys-title">Keys</h2><form method="dialog"><button>close</button></form></div>
    <label class="switch-keys"><input type="checkbox" .checked=${s.keysOn} @change=${() => act.keys(!s.keysOn)}> keys are on</label>
    <button type="button" class="guide-again" @click=${act.guideAgain}>the first visit again</button>
    ${keys.length === 0 ? '' : html`<h3>On this page</h3><dl class="keys-list">${keys.map(line)}</dl>`}
    <h3>Everywhere</h3>
    <dl class="keys-list">
      ${PAGES.filter((p) => p.name !== '').map((p) => line({ key: p.digit, does: p.name }))}
      ${line({ key: '?', does: 'this sheet' })}
      ${line({ key: 'Esc', does: 'close it; put an explanation away' })}
    </dl>
    <h3>Words</h3>
    <dl class="words">${Object.entries(GLOSSARY).map(([key, { word, means }]) => html`<div><dt>${word}</dt><dd id=${`word-${key}`}>${means}</dd></div>`)}</dl>
  </dialog>`;

/** @param {Key} k */
const line = (k) => html`<dt><kbd>${k.key}</kbd></dt><dd>${k.does}</dd>`;
