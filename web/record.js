// @ts-check
/** Wires the record: filters, the chain, which entries are open, corrections. */
import { fetchChain } from './api/record.js';
import { FORMS } from './model/entry.js';
import { noFilter } from './model/record.js';
import { asking } from './shell/asking.js';
import { recordMain } from './view/recordpage.js';

/** @param {import('./model/shell.js').Shell} shell @returns {import('./model/shell.js').Page} */
export function page({ s, draw, log }) {
  const { ask, asks, slow } = asking(draw);
  /** @type {import('./view/recordpage.js').Mine} */
  const mine = { filter: noFilter(), opened: new Set(), chain: undefined, problems: [], slow, asked: -1, came: '' };

  function toForm() {
    setTimeout(() => {
      const form = document.getElementById('log-title');
      form?.scrollIntoView({ block: 'start' });
      /** @type {HTMLElement|null|undefined} */ (form?.parentElement?.querySelector('.field input, .field select, .field textarea'))?.focus();
    });
  }

  /** @type {import('./view/recordpage.js').Actions} */
  const actions = {
    filter(key, value) { mine.filter = { ...mine.filter, [key]: value }; draw(); },
    all() { mine.filter = noFilter(); draw(); },
    open(number, open) {
      if (mine.opened.has(number) === open) return;
      if (open) mine.opened.add(number); else mine.opened.delete(number);
      draw();
    },
    toForm,
    correct(number) {
      log.kind('correction');
      log.value('of', String(number));
      toForm();
    },
  };

  /** A number behind the slash opens that entry, once. */
  function arrive() {
    if (mine.came === s.rest) return;
    mine.came = s.rest;
    if (!/^\d+$/.test(s.rest)) return;
    mine.filter = noFilter();
    mine.opened.add(Number(s.rest));
    draw();
    setTimeout(() => document.getElementById(`record-${s.rest}`)?.scrollIntoView({ block: 'center' }));
  }

  return {
    title: 'record',
    skip: ['#record-entries', 'to the entries'],
    draw: () => recordMain(s, mine, actions, log),
    shown() {
      arrive();
      if (mine.asked === s.page.journal.length || asks('chain')) return;
      mine.asked = s.page.journal.length;
      ask('chain', fetchChain, (chain) => { mine.chain = chain; }, (problems) => { mine.problems = problems; });
    },
    keys: () => [
      { key: '/', does: 'look for words', run: () => document.getElementById('record-text')?.focus() },
      { key: 'w', does: 'write an entry', run: toForm },
      ...FORMS.filter((f) => f.letter !== '').map((f) => ({ key: f.letter, does: `write down: ${f.label}`, run: () => { log.kind(f.kind); toForm(); } })),
    ],
  };
}
