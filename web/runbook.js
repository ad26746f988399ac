// @ts-check
/** Wires the runbook: procedures, ticks on their steps, the drafted entry. */
import { fetchDraft, fetchProcedures } from './api/runbook.js';
import { ofKind } from './model/runbook.js';
import { asking } from './shell/asking.js';
import { runbookMain } from './view/runbook.js';

/** The drafted entry stands behind this word. */
const DRAFT = 'draft';

/** Below this width list and procedure stand one under the other, px. */
const NARROW = 896;

/** The shell goes to the top of a page newly turned to before this, ms. */
const SETTLED_MS = 50;

/** @param {import('./model/shell.js').Shell} shell @returns {import('./model/shell.js').Page} */
export function page({ s, draw }) {
  const { ask, asks, slow } = asking(draw);
  /** @type {import('./view/runbook.js').Mine} */
  const mine = { procedures: undefined, draft: undefined, kind: '', ticks: new Set(), problems: [], draftProblems: [], slow, revision: -1 };

  /** @type {import('./view/runbook.js').Actions} */
  const actions = {
    kind(kind) { mine.kind = kind; draw(); },
    tick(name, on) {
      if (on) mine.ticks.add(name); else mine.ticks.delete(name);
      draw();
    },
    untick(id) {
      mine.ticks = new Set([...mine.ticks].filter((t) => !t.startsWith(`${id} `)));
      draw();
    },
    print() { window.print(); },
  };

  /** @param {number} steps */
  function walk(steps) {
    const all = ofKind(mine.procedures ?? [], mine.kind);
    const at = all.findIndex((p) => p.id === s.rest);
    const to = all[at < 0 ? 0 : at + steps];
    if (to) location.hash = `runbook/${to.id}`;
  }

  let came = '';

  /** On a narrow screen what was chosen lies below the list. */
  function arrive() {
    if (came === s.rest) return;
    came = s.rest;
    const sheet = document.getElementById('runbook-sheet');
    if (s.rest !== '' && sheet && innerWidth < NARROW) setTimeout(() => sheet.scrollIntoView(), SETTLED_MS);
  }

  return {
    title: 'runbook',
    skip: ['#runbook-sheet', 'to the procedure'],
    draw: () => runbookMain(s, mine, actions),
    shown() {
      if (mine.procedures) arrive();
      if (!mine.procedures && mine.problems.length === 0 && !asks('procedures')) {
        ask('procedures', fetchProcedures, (list) => { mine.procedures = list; }, (problems) => { mine.problems = problems; });
      }
      if (s.rest === DRAFT && mine.revision !== s.page.revision && !asks('draft')) {
        mine.revision = s.page.revision;
        ask('draft', fetchDraft, (draft) => { mine.draft = draft; }, (problems) => { mine.draftProblems = problems; });
      }
    },
    keys: () => [
      { key: 'j', does: 'the next procedure', run: () => walk(1) },
      { key: 'k', does: 'the one before', run: () => walk(-1) },
      { key: 'd', does: 'the drafted entry', run: () => { location.hash = `runbook/${DRAFT}`; } },
    ],
  };
}
