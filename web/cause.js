// @ts-check
/** Wires a cause's own page: the look far ahead, and the way to the next one. */
import { Refusal, fetchRecovery } from './api/console.js';
import { inOrder } from './model/causes.js';
import { causeMain } from './view/causepage.js';

const FAR_DAYS = 365;

/** @param {import('./model/shell.js').Shell} shell @returns {import('./model/shell.js').Page} */
export function page({ s, draw }) {
  async function lookFar() {
    const far = s.farAhead = { ...s.farAhead, asked: true, problems: [] };
    draw();
    try {
      far.look = await fetchRecovery(FAR_DAYS);
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
      far.problems = e.problems;
    }
    far.asked = false;
    draw();
  }

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
    draw: () => causeMain(s, { lookFar }),
    keys: () => [
      { key: 'j', does: 'the next cause, by weight', run: () => walk(1) },
      { key: 'k', does: 'the one before', run: () => walk(-1) },
    ],
  };
}
