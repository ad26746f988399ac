// @ts-check
/** Wires the plan: what people take and skip, what that costs, and the case for going on. */
import { fetchCase, fetchPlan, tryPlan } from './api/plan.js';
import { doneIn, editsOf, nextDone, read, stepped, stillKnown, wish, written } from './model/plan.js';
import { asking } from './shell/asking.js';
import { planMain } from './view/plan.js';
/** @typedef {import('./model/plan.js').Row} Row */

/** A reed pulled so far counts, px. */
const PULL = 14;
/** It follows the hand so far, px. */
const MOST_PULL = 22;

/** @param {import('./model/shell.js').Shell} shell @returns {import('./model/shell.js').Page} */
export function page({ s, draw }) {
  const { ask, asks, drop, slow } = asking(draw);
  /** @type {import('./view/plan.js').Mine} */
  const mine = { plan: undefined, trial: undefined, wishes: read(null), chosen: undefined, pulled: undefined, problems: [], trialProblems: [], made: undefined, caseProblems: [], dropped: false, slow };
  const kept = () => `hark.plan.${s.page.assessment.mission}`;
  let pulledJustNow = false;
  /** Revisions that were asked for; a refusal is not asked again by itself. */
  let plannedAt = -1;
  let madeAt = -1;

  /** @param {import('./model/plan.js').Wishes} wishes */
  function want(wishes) {
    mine.wishes = wishes;
    localStorage.setItem(kept(), written(wishes));
    weigh();
    draw();
  }

  function weigh() {
    if (mine.wishes.edits.size === 0) {
      drop('trial');
      mine.trial = undefined;
      mine.trialProblems = [];
      return;
    }
    ask('trial', (signal) => tryPlan(editsOf(mine.wishes), signal), (trial) => { mine.trial = trial; }, (problems) => { mine.trialProblems = problems; });
  }

  function load() {
    plannedAt = s.page.revision;
    ask('plan', fetchPlan, (plan) => {
      mine.plan = plan;
      mine.wishes = stillKnown(read(localStorage.getItem(kept())), plan);
      if (!plan.windows.some((row) => row.window === mine.chosen)) mine.chosen = nextDone(plan, mine.wishes, s.now)?.window ?? plan.windows[0]?.window;
      weigh();
    }, (problems) => { mine.problems = problems; });
  }

  function askCase() {
    madeAt = s.page.revision;
    mine.dropped = false;
    ask('made', fetchCase, (made) => { mine.made = made; }, (problems) => { mine.caseProblems = problems; });
  }

  const chosen = () => mine.plan?.windows.find((row) => row.window === mine.chosen);

  /** @param {(row: Row) => void} then */
  const withChosen = (then) => () => { const row = chosen(); if (row) then(row); };

  /** @param {number} steps */
  function walk(steps) {
    if (!mine.plan) return;
    mine.chosen = stepped(mine.plan, mine.chosen, steps);
    draw();
    setTimeout(() => { /** @type {SVGElement|null} */ (document.querySelector(`.slot[data-window="${CSS.escape(mine.chosen ?? '')}"]`))?.focus(); });
  }

  /** @param {Row} row */
  const take = (row) => { if (row.best !== null && doneIn(row, mine.wishes) === null) actions.set(row, row.taken ?? row.best); };

  /** @type {import('./view/plan.js').Actions} */
  const actions = {
    choose(id) {
      if (pulledJustNow) { pulledJustNow = false; return; }
      mine.chosen = id;
      draw();
    },
    set(row, procedure) {
      mine.chosen = row.window;
      want(wish(mine.wishes, row, procedure));
    },
    agree(row) {
      if (row.taken === null || doneIn(row, mine.wishes) !== row.taken) return;
      const agreed = new Set(mine.wishes.agreed);
      if (!agreed.delete(row.window)) agreed.add(row.window);
      want({ edits: mine.wishes.edits, agreed });
    },
    undo() { want({ edits: new Map(), agreed: mine.wishes.agreed }); },
    press(ev, row) {
      if (ev.button !== 0) return;
      const from = ev.clientY;
      const hand = /** @type {SVGElement} */ (ev.currentTarget);
      const follow = (/** @type {PointerEvent} */ e) => {
        const by = Math.max(-MOST_PULL, Math.min(MOST_PULL, e.clientY - from));
        mine.pulled = { id: row.window, by };
        draw();
      };
      const release = (/** @type {PointerEvent} */ e) => {
        hand.removeEventListener('pointermove', follow);
        hand.removeEventListener('pointerup', release);
        hand.removeEventListener('pointercancel', release);
        const by = mine.pulled?.by ?? 0;
        mine.pulled = undefined;
        if (e.type === 'pointerup' && Math.abs(by) >= PULL) {
          pulledJustNow = true;
          setTimeout(() => { pulledJustNow = false; });
          mine.chosen = row.window;
          if (by < 0) take(row);
          else if (doneIn(row, mine.wishes) !== null) actions.set(row, null);
        }
        draw();
      };
      hand.setPointerCapture(ev.pointerId);
      hand.addEventListener('pointermove', follow);
      hand.addEventListener('pointerup', release);
      hand.addEventListener('pointercancel', release);
    },
    key(ev, row) {
      if (ev.ctrlKey || ev.metaKey || ev.altKey) return;
      if (ev.key === 'Enter' || ev.key === ' ') {
        mine.chosen = row.window;
        if (doneIn(row, mine.wishes) === null) take(row); else actions.set(row, null);
      } else if (ev.key === 'ArrowRight' || ev.key === 'ArrowLeft') {
        mine.chosen = row.window;
        walk(ev.key === 'ArrowRight' ? 1 : -1);
      } else return;
      ev.preventDefault();
      ev.stopPropagation();
      draw();
    },
    dropCase() { drop('made'); mine.dropped = true; draw(); },
    askCase() { askCase(); draw(); },
  };

  return {
    title: 'plan',
    skip: ['#plan-calendar', 'to the days ahead'],
    draw: () => planMain(s, mine, actions),
    shown() {
      if (plannedAt !== s.page.revision && !asks('plan')) load();
      if (madeAt !== s.page.revision && !asks('made') && !mine.dropped && mine.plan) askCase();
    },
    keys: () => [
      { key: 'j', does: 'the next pass', run: () => walk(1) },
      { key: 'k', does: 'the pass before', run: () => walk(-1) },
      { key: 't', does: 'take the pass', run: withChosen(take) },
      { key: 's', does: 'skip the pass', run: withChosen((row) => actions.set(row, null)) },
      { key: 'a', does: 'accept what is proposed', run: withChosen((row) => actions.agree(row)) },
      { key: 'u', does: 'this pass as proposed again', run: withChosen((row) => actions.set(row, row.taken)) },
      { key: '← →', does: 'from pass to pass, when a pass has the focus' },
    ],
  };
}
