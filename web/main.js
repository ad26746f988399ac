// @ts-check
/** Wires the page: what the server sends, what a person does, what is drawn. */
import { render } from 'lit-html';
import { Refusal, fetchPage, fetchProcedure, fetchRecovery, fetchSky, postEntry } from './api/console.js';
import { listen } from './api/events.js';
import { wireEnergy } from './energy.js';
import { FORMS, formOf, keysOf } from './model/entry.js';
import { nothingAsked } from './model/energystate.js';
import { iso, ms } from './model/time.js';
import { likely, loggable } from './model/windows.js';
import { page } from './view/page.js';
import { OTHER } from './view/log.js';
import { shownWindow } from './view/pointing.js';
/** @typedef {import('./model/state.js').State} State */

const root = /** @type {HTMLElement} */ (document.getElementById('page'));
const TICK_MS = 1000;
const FAR_DAYS = 365;
const WORKING = 'Working the numbers again…';

/** @type {State} */
const s = {
  page: /** @type {any} */ (undefined), now: Date.now(), status: '', written: '', widths: {}, dayShift: 0,
  theme: document.documentElement.dataset.theme ?? 'light', selected: undefined, allWindows: false,
  opened: new Set(), procedures: new Map(), skies: new Map(), loggable: [], problems: [], sending: false,
  draft: { kind: 'nothing-heard', window: '', values: { who: localStorage.getItem('hark.who') ?? '' } },
  keysOn: localStorage.getItem('hark.keys') !== 'off', shown: {}, before: {},
  farAhead: { look: null, asked: false, problems: [] }, view: viewOf(location.hash), energy: nothingAsked(),
};
const energy = wireEnergy(s, draw);
let received = Date.now();
let drawing = false;
/** @type {Set<string>} */
const asked = new Set();

function draw() {
  if (!s.page || drawing) return;
  drawing = true;
  queueMicrotask(() => {
    drawing = false;
    s.now = ms(s.page.clock.now) + (s.page.clock.own ? 0 : Date.now() - received);
    s.loggable = loggable(s.page, s.now);
    if (s.draft.window !== OTHER && !s.loggable.some((w) => w.id === s.draft.window)) {
      s.draft.window = likely(s.loggable, s.page.clock.own)?.id ?? OTHER;
    }
    if (!root.firstElementChild?.classList.contains('skip')) root.replaceChildren();
    render(page(s, actions, energy.actions), root);
    measure();
    if (s.view === 'energy') energy.shown(s.page.revision); else lookUp();
  });
}

/** The hash names the page and the place on it. @param {string} hash @returns {'now'|'energy'} */
function viewOf(hash) { return hash.startsWith('#energy') ? 'energy' : 'now'; }

/** Asks once for the sky of the window shown; without it the page is whole but for that picture. */
async function lookUp() {
  const id = shownWindow(s)?.id;
  if (id === undefined || asked.has(id)) return;
  asked.add(id);
  try {
    s.skies.set(id, await fetchSky(id));
    draw();
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    if (e.status === 0) asked.delete(id);
  }
}

/** Widths are known only after a drawing; a change draws again. */
function measure() {
  let changed = false;
  for (const el of root.querySelectorAll('[data-measure]')) {
    const name = /** @type {HTMLElement} */ (el).dataset.measure ?? '';
    const width = Math.floor(el.clientWidth);
    if (width > 0 && s.widths[name] !== width) {
      s.widths[name] = width;
      changed = true;
    }
  }
  if (changed) draw();
}

/** @type {import('./model/state.js').Actions} */
const actions = {
  theme(id) {
    s.theme = id;
    localStorage.setItem('hark.theme', id);
    document.documentElement.dataset.theme = id;
    draw();
  },
  turn(days) { s.dayShift += days; draw(); },
  select(id) {
    s.selected = id;
    s.opened = new Set([id]);
    draw();
  },
  allWindows(all) { s.allWindows = all; draw(); },
  opened(id, open) {
    if (s.opened.has(id) === open) return;
    if (open) s.opened.add(id); else s.opened.delete(id);
    if (open) s.selected = id;
    draw();
  },
  async procedure(id) {
    if (s.procedures.has(id)) return;
    try {
      s.procedures.set(id, await fetchProcedure(id));
    } catch (e) {
      s.status = e instanceof Refusal ? e.message : String(e);
    }
    draw();
  },
  kind(kind) {
    s.draft.kind = kind;
    s.problems = [];
    const form = formOf(kind);
    if (form.place === 'moment' && !s.draft.values.at) s.draft.values.at = momentOf();
    for (const f of form.fields) {
      if (f.type === 'choice' && f.choices && s.draft.values[f.key] === undefined) s.draft.values[f.key] = f.choices[0][0];
    }
    if (form.place === 'span') s.draft.values.station = '';
    const stations = form.fields.some((f) => f.key === 'station' && f.type === 'choice');
    if (stations && !s.draft.values.station) s.draft.values.station = firstStation();
    draw();
  },
  window(id) {
    s.draft.window = id;
    if (id === OTHER && !s.draft.values.station) s.draft.values.station = firstStation();
    draw();
  },
  value(key, value) {
    s.draft.values[key] = value;
    if (key === 'of') prefillCorrection(value);
    draw();
  },
  keys(on) {
    s.keysOn = on;
    localStorage.setItem('hark.keys', on ? 'on' : 'off');
    draw();
  },
  send,
  async lookFar() {
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
  },
};

const firstStation = () => s.page.assessment.stations[0]?.station ?? '';

/** The culmination-side end of the likeliest window, else now. */
function momentOf() {
  const w = s.loggable.find((one) => one.when === 'past');
  return iso(s.page.clock.own || !w ? s.now : ms(w.to));
}

/** @param {string} number */
function prefillCorrection(number) {
  const of = s.page.journal.find((e) => String(e.number) === number);
  for (const key of Object.keys(s.draft.values)) if (key.startsWith('new:')) delete s.draft.values[key];
  for (const [key, was] of Object.entries(of?.keys ?? {})) s.draft.values[`new:${key}`] = was;
}

async function send() {
  if (s.sending) return;
  s.sending = true;
  s.problems = [];
  draw();
  const window = s.loggable.find((w) => w.id === s.draft.window);
  try {
    const { number } = await postEntry(s.draft.kind, keysOf(s.draft, window));
    localStorage.setItem('hark.who', s.draft.values.who ?? '');
    s.draft = { kind: s.draft.kind, window: '', values: { who: s.draft.values.who ?? '' } };
    s.written = `Entry ${number} is written down.`;
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    s.problems = e.problems;
  } finally {
    s.sending = false;
    draw();
  }
}

async function refresh() {
  try {
    const fresh = await fetchPage();
    s.before = s.page && fresh.revision !== s.page.revision ? s.shown : {};
    s.shown = {};
    if (fresh.revision !== s.page?.revision) s.farAhead = { look: null, asked: false, problems: [] };
    s.page = fresh;
    received = Date.now();
    s.status = fresh.working ? WORKING : counted(fresh);
    if (!fresh.working) s.written = '';
    title();
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    if (s.page) s.status = `${e.message}.`;
    else root.querySelector('.waiting')?.replaceChildren(`${e.message}.`);
  }
  draw();
}

function title() {
  document.title = `${s.page.assessment.mission}${s.view === 'energy' ? ', energy' : ''} · Hark`;
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
  lost() { s.status = 'The console does not answer; what stands here is from before. Trying again…'; draw(); },
  found() { if (s.page) s.status = counted(s.page); draw(); },
});

addEventListener('keydown', (e) => {
  const target = /** @type {HTMLElement} */ (e.target);
  const typing = target.closest('input:not([type=radio]):not([type=checkbox]), select, textarea') !== null;
  if (!s.page || s.view !== 'now' || !s.keysOn || typing || e.ctrlKey || e.metaKey || e.altKey) return;
  const form = FORMS.find((f) => f.letter !== '' && f.letter === e.key.toLowerCase());
  if (!form) return;
  e.preventDefault();
  actions.kind(form.kind);
  setTimeout(() => {
    const first = /** @type {HTMLElement|null} */ (document.getElementById('f-window'));
    first?.focus();
    first?.scrollIntoView({ block: 'center' });
  });
});

addEventListener('hashchange', () => {
  const view = viewOf(location.hash);
  if (view === s.view) return;
  s.view = view;
  if (s.page) title();
  draw();
  // The place named lies on a page that is only now drawn.
  setTimeout(() => {
    const place = document.getElementById(location.hash.slice(1));
    if (place) place.scrollIntoView(); else scrollTo(0, 0);
  });
});

new ResizeObserver(measure).observe(root);
setInterval(() => { if (s.page && !s.page.clock.own) draw(); }, TICK_MS);
