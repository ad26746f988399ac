// @ts-check
/** Wires a cause's own page: the look far ahead, and the way to the next one. */
import { inOrder } from './model/causes.js';
import { lookFar } from './shell/farahead.js';
import { causeMain } from './view/causepage.js';

/** @param {import('./model/shell.js').Shell} shell @returns {import('./model/shell.js').Page} */
export function page({ s, draw }) {
  /** @param {number} steps */
  function walk(steps) {
    const all = inOrder(s.page.assessment);
    const at = all.findIndex((c) => c.id === s.rest);
    const to = all[at + steps];
    if (to) location.hash = `cause/${to.id}`;
  }

  return {
    title: 'a cause',
    skip: ['#causes-settle', 'to what would settle it'],
    draw: () => causeMain(s, { lookFar: () => lookFar(s, draw) }),
    keys: () => [
      { key: 'j', does: 'the next cause, by weight', run: () => walk(1) },
      { key: 'k', does: 'the one before', run: () => walk(-1) },
    ],
  };
}
