// @ts-check
/** Wires a pass, before and during: loaded once, it then needs the server no more. */
import { Refusal } from './api/console.js';
import { fetchPass, fetchSteps } from './api/pass.js';
import { checksOf, keepChecks } from './model/checks.js';
import { OUTCOMES, keysOfOutcome, nothingSaid, spanOf } from './model/outcome.js';
import { heaviest, momentAt, receivedHz } from './model/pass.js';
import { clock } from './model/time.js';
import { shownOption } from './model/windows.js';
import { passMain } from './view/pass.js';
/** @typedef {import('./model/passstate.js').PassState} PassState */

/** @param {import('./model/shell.js').Shell} shell @returns {import('./model/shell.js').Page} */
export function page({ s, draw, put }) {
  /** @type {PassState} */
  let mine = fresh('');

  /** @param {string} id @returns {PassState} */
  function fresh(id) {
    return { id, window: undefined, data: undefined, procedure: '', steps: undefined, problems: [], asked: false,
      said: nothingSaid(), checks: checksOf(id), burst: 0, heardAt: [] };
  }

  /** Takes the window from the newest answer, and keeps it when that no longer has it. */
  function look() {
    if (mine.id !== s.rest) mine = fresh(s.rest);
    mine.window = s.page.assessment.windows.find((w) => w.id === mine.id) ?? mine.window;
    if (mine.window && mine.procedure === '') mine.procedure = shownOption(mine.window)?.procedure ?? '';
  }

  async function load() {
    if (mine.asked || !mine.window) return;
    mine.asked = true;
    const of = mine;
    try {
      [of.data, of.steps] = await Promise.all([fetchPass(of.id), fetchSteps(of.procedure)]);
      of.problems = [];
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
      of.problems = e.problems;
      if (e.status === 0) setTimeout(() => { of.asked = false; draw(); }, 3000);
    }
    draw();
  }

  /** @param {import('./model/outcome.js').Outcome} outcome */
  function say(outcome) {
    mine.said.outcome = outcome;
    const here = tuned();
    if (outcome === 'heard') {
      mine.heardAt.push(s.now);
      if (mine.said.frequency === '' && here) mine.said.frequency = (here / 1e6).toFixed(5);
    }
    draw();
    setTimeout(() => document.getElementById('pass-write')?.querySelector('input')?.focus());
  }

  /** Where the first beacon should be heard now, Hz; unknown outside the pass. */
  function tuned() {
    const track = mine.data && heaviest(mine.data, new Map(s.page.assessment.objects.map((o) => [o.object, o.posterior])));
    const moment = track && momentAt(track, s.now);
    return moment && moment.elevationDeg > 0 && mine.data?.beacons[0] ? receivedHz(mine.data.beacons[0].frequencyHz, moment.hzPerGhz) : undefined;
  }

  /** @type {import('./model/passstate.js').PassActions} */
  const actions = {
    say,
    value(key, value) { mine.said[key] = value; draw(); },
    cancel() { mine.said = { ...nothingSaid(), who: mine.said.who }; draw(); },
    write() {
      const w = mine.window;
      if (!w || mine.said.outcome === '') return;
      const span = spanOf(w, s.now, s.page.clock.own);
      if (span.early) return;
      const label = OUTCOMES.find((o) => o.outcome === mine.said.outcome)?.label ?? '';
      put(mine.said.outcome, keysOfOutcome(mine.said, w, span), `${label}, ${w.station} ${clock(w.aos)}`);
      localStorage.setItem('hark.who', mine.said.who);
      mine.said = { ...nothingSaid(), who: mine.said.who };
      draw();
    },
    check(step) {
      if (mine.checks.has(step)) mine.checks.delete(step); else mine.checks.add(step);
      keepChecks(mine.id, mine.checks);
      draw();
    },
    async choose(procedure) {
      mine.procedure = procedure;
      try {
        mine.steps = await fetchSteps(procedure);
      } catch (e) {
        if (!(e instanceof Refusal)) throw e;
        mine.problems = e.problems;
      }
      draw();
    },
    burst() { mine.burst = s.now; draw(); },
    print() { window.print(); },
  };

  function nextStep() {
    const open = [...document.querySelectorAll('.step input')].map((e) => /** @type {HTMLInputElement} */ (e)).find((e) => !e.checked);
    if (open) actions.check(open.value);
  }

  addEventListener('beforeunload', (e) => {
    // What is loaded would be lost with the server away; what was written is safe in the browser.
    if (s.view === 'pass' && s.lost > 0) e.preventDefault();
  });

  return {
    get title() { return mine.window ? `${mine.window.station} ${clock(mine.window.aos)}` : 'a pass'; },
    skip: ['#pass-outcome', 'to what happened'],
    draw() { look(); return passMain(s, mine, actions); },
    shown: load,
    keys: () => [
      ...OUTCOMES.map((o) => ({ key: o.letter, does: o.label, run: () => say(o.outcome) })),
      { key: 'b', does: 'a burst now: the ticks go by it', run: actions.burst },
      { key: 'c', does: 'tick off the next step', run: nextStep },
    ],
  };
}
