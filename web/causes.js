// @ts-check
/** Wires the page of causes: which gates are folded, which entry is open. */
import { causesMain } from './view/causes.js';

/** @param {import('./model/shell.js').Shell} shell @returns {import('./model/shell.js').Page} */
export function page({ s, draw }) {
  const mine = { folded: /** @type {Map<string, boolean>} */ (new Map()), entry: 0 };
  /** @type {import('./view/causes.js').Actions} */
  const actions = {
    fold(path, folded) { mine.folded.set(path, folded); draw(); },
    // The empty path stands for every gate of which nothing else was said; the top stays open.
    foldAll(folded) {
      const top = s.page.assessment.tree[0]?.id ?? '';
      mine.folded = new Map([['', folded], [top, false]]);
      draw();
    },
    entry(n) { mine.entry = n; draw(); },
  };
  return {
    title: 'causes',
    skip: ['#causes-list', 'to the causes'],
    draw: () => causesMain(s, mine, actions),
  };
}
