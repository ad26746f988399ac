// @ts-check
/** Keys: digits turn pages, a page's own letters act on it, ? lists them all. */
import { PAGES } from '../pages.js';
/** @typedef {import('../model/shell.js').Page} Page */
/** @typedef {import('../model/shell.js').Key} Key */

const TYPING = 'input:not([type=radio]):not([type=checkbox]):not([type=range]), select, textarea';

/** Opens the sheet that lists the keys. */
export function showKeys() {
  const sheet = /** @type {HTMLDialogElement|null} */ (document.getElementById('keys'));
  if (sheet && !sheet.open) sheet.showModal();
}

/** @param {import('../model/state.js').State} s @param {() => Page|undefined} page */
export function listenToKeys(s, page) {
  addEventListener('keydown', (e) => {
    const target = /** @type {HTMLElement} */ (e.target);
    if (!s.page || !s.keysOn || e.ctrlKey || e.metaKey || e.altKey) return;
    if (target.closest(TYPING) !== null || document.querySelector('dialog[open]')) return;
    const run = action(e.key, page());
    if (!run) return;
    e.preventDefault();
    run();
  });
}

/** @param {string} key @param {Page|undefined} page @returns {(() => void)|undefined} */
function action(key, page) {
  if (key === '?') return showKeys;
  const turn = PAGES.find((p) => p.name !== '' && p.digit === key);
  if (turn) return () => { location.hash = turn.hash; };
  return (page?.keys?.() ?? []).find((k) => k.run && k.key === key.toLowerCase())?.run;
}
