// @ts-check
/** Wires the set-up: numbers tried on copies of the files, and what follows from them. */
import { Refusal } from './api/console.js';
import { checkTexts, fetchReckoning, fetchSetUp, fetchTreeWarnings, reckon, stopReckoning } from './api/setup.js';
import { CAUSES, MISSION, priorKey, shareOf, spanOf, withEdit } from './model/setup.js';
import { asking } from './shell/asking.js';
import { setUpMain } from './view/setup.js';

const TYPING_MS = 450;
const POLL_MS = 400;

/** @param {import('./model/shell.js').Shell} shell @returns {import('./model/shell.js').Page} */
export function page({ s, draw }) {
  const { ask, asks, drop, slow } = asking(draw);
  /** @type {ReturnType<typeof setTimeout>|undefined} */
  let later;
  let came = '';
  let treeAsked = false;
  /** @type {import('./view/setup.js').Mine} */
  const mine = {
    asIs: undefined, base: {}, edits: [], now: undefined, problems: [], editProblems: [], tree: undefined, slow,
    key: '', value: '', words: '', file: MISSION, job: undefined, result: undefined,
  };

  /** Lays the edits over the base and asks what the reader says. */
  function check() {
    clearTimeout(later);
    ask('check', (signal) => checkTexts(mine.base, mine.edits, signal), (found) => { mine.now = found; }, (problems) => { mine.editProblems = problems; });
  }

  function soon() {
    clearTimeout(later);
    later = setTimeout(check, TYPING_MS);
  }

  /** @param {import('./api/setup.js').Edit} edit */
  function set(edit) {
    mine.edits = withEdit(mine.edits, edit);
    draw();
    soon();
  }

  async function workOut() {
    stop();
    const texts = mine.now?.texts ?? mine.base;
    const began = Date.now();
    mine.job = { number: 0, seconds: 0, usual: 0, problems: [] };
    draw();
    await ask('start', (signal) => reckon(texts, signal), ({ number, usualSeconds }) => {
      mine.job = { number, seconds: 0, usual: usualSeconds, problems: [] };
      follow(number, texts, began);
    }, (problems) => { if (problems.length > 0) mine.job = { number: 0, seconds: 0, usual: 0, problems }; });
    draw();
  }

  /** @param {number} number @param {import('./api/setup.js').Texts} texts @param {number} began */
  function follow(number, texts, began) {
    ask('follow', (signal) => fetchReckoning(number, signal), (found) => {
      if (mine.job?.number !== number) return;
      if (found.state === 'running') {
        mine.job.seconds = (Date.now() - began) / 1000;
        setTimeout(() => { if (mine.job?.number === number) follow(number, texts, began); }, POLL_MS);
        return;
      }
      mine.job = found.state === 'failed' ? { ...mine.job, number: 0, problems: found.problems ?? [] } : undefined;
      if (found.state === 'done' && found.assessment) mine.result = { after: found.assessment, texts, revision: s.page.revision, seconds: found.seconds ?? 0 };
    }, (problems) => { if (problems.length > 0 && mine.job) mine.job = { ...mine.job, number: 0, problems }; });
  }

  function askTree() {
    ask('tree', fetchTreeWarnings, ({ done, warnings }) => {
      if (done) mine.tree = warnings; else setTimeout(askTree, 2 * POLL_MS);
    }, () => {});
  }

  function stop() {
    const number = mine.job?.number;
    drop('start');
    drop('follow');
    mine.job = undefined;
    if (number) stopReckoning(number).catch((e) => { if (!(e instanceof Refusal)) throw e; });
    draw();
  }

  /** @type {import('./view/setup.js').Actions} */
  const actions = {
    prior(id, percent) { set({ file: CAUSES, key: priorKey(id), value: shareOf(percent) }); },
    pick(key, value) {
      mine.key = key;
      const known = mine.now?.keys.find((k) => k.key === key);
      mine.value = value ?? known?.value ?? mine.value;
      draw();
    },
    value(value) { mine.value = value; draw(); },
    setKey() { if (mine.key.trim() !== '') set({ file: MISSION, key: mine.key.trim(), value: mine.value }); },
    takeBack(edit) {
      mine.edits = mine.edits.filter((e) => e !== edit);
      draw();
      check();
    },
    asItIs() {
      mine.edits = [];
      mine.base = { ...mine.asIs?.texts };
      mine.result = undefined;
      stop();
      check();
    },
    words(words) { mine.words = words; draw(); },
    file(file) { mine.file = file; draw(); },
    // A text changed by hand is the new ground: edits made before are part of it by then.
    type(text) {
      mine.base = { ...(mine.now?.texts ?? mine.base), [mine.file]: text };
      mine.edits = [];
      if (mine.now) mine.now = { ...mine.now, texts: mine.base };
      soon();
      draw();
    },
    toLine(file, line) {
      mine.file = file;
      draw();
      setTimeout(() => {
        const area = /** @type {HTMLTextAreaElement|null} */ (document.getElementById('setup-text'));
        if (!area) return;
        const [from, to] = spanOf(area.value, line);
        area.focus();
        area.setSelectionRange(from, to);
        area.scrollTop = (area.scrollHeight / Math.max(1, area.value.split('\n').length)) * Math.max(0, line - 4);
      });
    },
    keep(file) {
      const link = document.createElement('a');
      link.href = URL.createObjectURL(new Blob([(mine.now?.texts ?? mine.base)[file] ?? ''], { type: 'application/yaml' }));
      link.download = file;
      link.click();
      setTimeout(() => URL.revokeObjectURL(link.href), 0);
    },
    workOut,
    stop,
  };

  /** A cause behind the slash is the one whose prior is meant. */
  function arrive() {
    if (came === s.rest || !mine.now) return;
    came = s.rest;
    const field = document.getElementById(`prior-${s.rest}`);
    if (s.rest !== '' && field) setTimeout(() => { field.scrollIntoView({ block: 'center' }); field.focus(); }, 60);
  }

  return {
    title: 'set-up',
    skip: ['#setup-try', 'to other numbers'],
    draw: () => setUpMain(s, mine, actions),
    shown() {
      arrive();
      if (!mine.asIs && mine.problems.length === 0 && !asks('whole')) {
        ask('whole', fetchSetUp, (found) => {
          mine.asIs = mine.now = found;
          mine.base = { ...found.texts };
        }, (problems) => { mine.problems = problems; });
      }
      if (mine.asIs && !treeAsked) {
        treeAsked = true;
        askTree();
      }
    },
    keys: () => [{ key: 'o', does: 'work out what the changed numbers come to', run: () => { if (mine.edits.length > 0) workOut(); } }],
  };
}
