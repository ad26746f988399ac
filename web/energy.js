// @ts-check
/** Wires the energy page: what a person asks there, and what became of it. */
import { askWhatIf, fetchEnergy, fetchMember, fetchWhy } from './api/energy.js';
import { timeAt } from './chart/energy.js';
import { firstFigure, moved, shownSpan, typed } from './model/energy.js';
import { nothingAsked } from './model/energystate.js';
import { DAY, iso, ms } from './model/time.js';
import { asking } from './shell/asking.js';
import { energyMain } from './view/energy.js';
/** @typedef {import('./model/state.js').State} State */
/** @typedef {import('./model/types.js').Problem} Problem */
/** @typedef {'report'|'why'|'member'|'whatIf'} Kind */

/** On a page narrower than this one day is shown at first, px. */
const NARROW = 620;
const SLIDING_MS = 150;
const TYPING_MS = 450;
const KEYS_MS = 200;

/** @param {State} s @param {() => void} draw */
export function wireEnergy(s, draw) {
  const questions = asking(draw);
  s.energy.slow = questions.slow;
  /** @type {Map<Kind, ReturnType<typeof setTimeout>>} */
  const later = new Map();

  /** Asks; what was to be asked soon is asked now. @template T @param {Kind} kind @param {(signal: AbortSignal) => Promise<T>} question @param {(answer: T) => void} take @param {(problems: Problem[]) => void} refuse */
  function ask(kind, question, take, refuse) {
    clearTimeout(later.get(kind));
    return questions.ask(kind, question, take, refuse);
  }

  /** @param {Kind} kind */
  function drop(kind) {
    clearTimeout(later.get(kind));
    questions.drop(kind);
  }

  /** @param {Kind} kind @param {number} wait @param {() => void} then */
  function soon(kind, wait, then) {
    clearTimeout(later.get(kind));
    later.set(kind, setTimeout(then, wait));
  }

  function load() {
    ask('report', fetchEnergy, (data) => {
      const e = s.energy;
      const kept = e.data !== undefined && e.at >= ms(data.energy[0].time) && e.at !== ms(e.data.now);
      e.data = data;
      if (!kept) {
        e.at = ms(data.now);
        e.from = ms(data.energy[0].time);
        if (innerWidth < NARROW) actions.days(1);
      }
      if (e.key === '') choose(firstFigure(data.numbers)?.key ?? '');
      else if (e.other) whatIf();
      e.trace = undefined;
      askWhy();
    }, (problems) => { s.energy.problems = problems; });
  }

  function askWhy() {
    const at = s.energy.at;
    ask('why', (signal) => fetchWhy(iso(at), signal), (there) => {
      s.energy.why = there;
      if (s.energy.data && at === ms(s.energy.data.now)) s.energy.whyNow = there;
    }, (problems) => { s.energy.whyProblems = problems; });
  }

  /** @param {number} at */
  function look(at) {
    const e = s.energy;
    if (!e.data) return;
    e.at = Math.round(at / 1000) * 1000;
    const [from, to] = shownSpan(e.data, e.days, e.from);
    if (e.at < from || e.at > to) e.from = e.at - (e.days * DAY) / 2;
    draw();
  }

  /** @param {string} key */
  function choose(key) {
    const e = s.energy;
    drop('whatIf');
    e.key = key;
    const figure = e.data?.numbers.find((n) => n.key === key);
    e.value = figure ? typed(figure.mean, figure) : '';
    e.other = undefined;
    e.whatIfProblems = [];
  }

  function whatIf() {
    const { key, value } = s.energy;
    ask('whatIf', (signal) => askWhatIf(key, value, signal), (other) => { s.energy.other = other; },
      (problems) => { s.energy.whatIfProblems = problems; });
  }

  /** @type {import('./model/energystate.js').EnergyActions} */
  const actions = {
    days(days) {
      const e = s.energy;
      e.days = days;
      e.from = e.at - (days * DAY) / 2;
      draw();
    },
    turn(days) {
      const e = s.energy;
      if (e.data) e.from = shownSpan(e.data, e.days, e.from)[0] + days * DAY;
      draw();
    },
    key(ev) {
      const e = s.energy;
      if (!e.data || ev.ctrlKey || ev.metaKey || ev.altKey) return;
      const to = moved(e.data, e.at, ev.key);
      if (to === undefined) return;
      ev.preventDefault();
      look(to);
      soon('why', KEYS_MS, askWhy);
    },
    point(ev) {
      const e = s.energy;
      if (!e.data) return;
      const box = /** @type {HTMLElement} */ (ev.currentTarget).getBoundingClientRect();
      look(timeAt(ev.clientX - box.left, s.widths.energy, shownSpan(e.data, e.days, e.from)));
      askWhy();
    },
    member(n) {
      if (n === 0) { s.energy.trace = undefined; draw(); return; }
      ask('member', (signal) => fetchMember(n, signal), (trace) => { s.energy.trace = trace; },
        (problems) => { s.energy.memberProblems = problems; });
    },
    figure(key) { choose(key.trim()); draw(); },
    slide(value) {
      const figure = s.energy.data?.numbers.find((n) => n.key === s.energy.key);
      if (!figure) return;
      s.energy.value = typed(value, figure);
      draw();
      soon('whatIf', SLIDING_MS, whatIf);
    },
    type(value) {
      s.energy.value = value;
      draw();
      soon('whatIf', TYPING_MS, whatIf);
    },
    asItIs() { choose(s.energy.key); draw(); },
  };

  return {
    actions,
    /** The page is looked at, or a new revision came while it is. @param {number} revision */
    shown(revision) {
      if (s.energy.data?.revision !== revision && !questions.asks('report')) load();
    },
  };
}

/** @param {import('./model/shell.js').Shell} shell @returns {import('./model/shell.js').Page} */
export function page({ s, draw }) {
  s.energy = nothingAsked();
  const wired = wireEnergy(s, draw);
  return {
    title: 'energy',
    skip: ['#energy-axis', 'to the battery'],
    draw: () => energyMain(s, wired.actions),
    shown: () => wired.shown(s.page.revision),
    keys: () => [{ key: '← →', does: 'move the time looked at, when the chart has the focus' }, { key: 'PgUp PgDn', does: 'from orbit to orbit' }],
  };
}
