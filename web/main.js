// @ts-check
/** Wires the shell: what the server sends, which page is looked at, what is drawn. */
import { render } from 'lit-html';
import { Refusal, fetchPage } from './api/console.js';
import { fetchClock, moveClock } from './api/clock.js';
import { listen } from './api/events.js';
import { choosable, wireLog } from './log.js';
import { wireOutbox } from './outbox.js';
import { nowOf } from './model/clock.js';
import { freshState } from './model/state.js';
import { listenForWords } from './shell/gloss.js';
import { listenToKeys, showKeys } from './shell/keys.js';
import { measure } from './shell/measure.js';
import { wireGuide } from './shell/guide.js';
import { wireRouter } from './shell/router.js';
import { frame } from './view/page.js';

const root = /** @type {HTMLElement} */ (document.getElementById('page'));
const TICK_MS = 1000;
/** A clock that runs fast is drawn more often, ms. */
const QUICK_MS = 250;
const WORKING = 'Working the numbers again…';
const PROVISIONAL = 'Provisional: what still fits counts the new entry; the whole is being worked out…';

const s = freshState();
const log = wireLog(s, draw);
const outbox = wireOutbox(s, draw);
const guide = wireGuide(s, draw);
const act = { theme, keys: log.keys, showKeys, drop: outbox.drop, clock, guide: guide.show, guideAgain: guide.again };
const router = wireRouter({ s, draw, act, log, put: outbox.put });
let received = Date.now();
let drawing = false;

function draw() {
  if (!s.page || drawing) return;
  drawing = true;
  queueMicrotask(() => {
    drawing = false;
    s.now = nowOf(s.page.clock, Date.now() - received);
    choosable(s);
    const page = router.page();
    document.title = `${s.page.assessment.mission}${page?.title ? `, ${page.title}` : ''} · Hark`;
    if (!root.firstElementChild?.classList.contains('skip')) root.replaceChildren();
    render(frame(s, page, act), root);
    if (measure(root, s.widths)) draw();
    page?.shown?.();
  });
}

/** @param {string} id */
function theme(id) {
  s.theme = id;
  localStorage.setItem('hark.theme', id);
  document.documentElement.dataset.theme = id;
  draw();
}

/** @param {{held?: boolean, speed?: number, to?: string}} [wish] without it only looks */
async function clock(wish) {
  try {
    s.page.clock = await (wish ? moveClock(wish) : fetchClock());
    received = Date.now();
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    s.status = `${e.message}.`;
  }
  draw();
}

async function refresh() {
  try {
    const fresh = await fetchPage();
    s.before = s.page && fresh.revision !== s.page.revision ? s.shown : {};
    s.shown = {};
    if (fresh.revision !== s.page?.revision) s.farAhead = { look: null, asked: false, problems: [] };
    const first = !s.page;
    s.page = fresh;
    received = Date.now();
    s.status = fresh.provisional ? PROVISIONAL : fresh.working ? WORKING : counted(fresh);
    if (!fresh.working) s.written = '';
    if (first) setTimeout(router.foresee, TICK_MS);
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    if (s.page) s.status = `${e.message}.`;
    else root.querySelector('.waiting')?.replaceChildren(`${e.message}.`);
  }
  draw();
}

/** @param {import('./model/types.js').PageData} fresh */
function counted(fresh) {
  const last = fresh.journal[fresh.journal.length - 1];
  return last ? `All ${fresh.journal.length} entries are counted; the last is entry ${last.number}.` : 'No entry is recorded yet.';
}

listen({
  working() { s.status = WORKING; draw(); },
  changed: refresh,
  failed(problems) { s.status = problems.map((p) => `${p.what}. ${p.mend}`).join(' '); draw(); },
  clock() { if (s.page) clock(); },
  lost() { s.lost ||= Date.now(); s.status = 'The console does not answer; what stands here is from before. Trying again…'; draw(); },
  found() { s.lost = 0; outbox.send(); if (s.page) s.status = counted(s.page); draw(); },
});
listenToKeys(s, router.page);
listenForWords();
router.go();
new ResizeObserver(() => { if (measure(root, s.widths)) draw(); }).observe(root);
let second = 0;
setInterval(() => {
  const now = Math.floor(Date.now() / TICK_MS);
  if (!s.page || s.page.clock.pace === 0 || (s.page.clock.pace <= 1 && now === second)) return;
  second = now;
  draw();
}, QUICK_MS);
