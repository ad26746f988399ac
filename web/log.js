// @ts-check
/** Wires the form for what happened; any page may show it. */
import { Refusal, postEntry } from './api/console.js';
import { formOf, keysOf } from './model/entry.js';
import { standings } from './model/record.js';
import { iso, ms } from './model/time.js';
import { likely, loggable } from './model/windows.js';
import { OTHER } from './view/log.js';
/** @typedef {import('./model/state.js').State} State */

/** The window a person most likely means, unless another is chosen. @param {State} s */
export function choosable(s) {
  s.loggable = loggable(s.page, s.now);
  if (s.draft.window !== OTHER && !s.loggable.some((w) => w.id === s.draft.window)) {
    s.draft.window = likely(s.loggable, s.page.clock.own)?.id ?? OTHER;
  }
}

/** @param {State} s @param {() => void} draw @returns {import('./model/state.js').LogActions} */
export function wireLog(s, draw) {
  /** Of what stands in the form; another once that is written down, or changed after a refusal. */
  let token = crypto.randomUUID();
  const firstStation = () => s.page.assessment.stations[0]?.station ?? '';

  /** The culmination-side end of the likeliest window, else now. */
  function momentOf() {
    const w = s.loggable.find((one) => one.when === 'past');
    return iso(s.page.clock.own || !w ? s.now : ms(w.to));
  }

  /** @param {string} number */
  function prefillCorrection(number) {
    s.draft.was = { ...standings(s.page.journal).get(Number(number))?.keys };
    delete s.draft.values.withdrawn;
    for (const key of Object.keys(s.draft.values)) if (key.startsWith('new:')) delete s.draft.values[key];
    for (const [key, was] of Object.entries(s.draft.was)) s.draft.values[`new:${key}`] = was;
  }

  return {
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
    async send() {
      if (s.sending) return;
      s.sending = true;
      s.problems = [];
      draw();
      const window = s.loggable.find((w) => w.id === s.draft.window);
      try {
        const { number } = await postEntry(s.draft.kind, keysOf(s.draft, window), token);
        localStorage.setItem('hark.who', s.draft.values.who ?? '');
        s.draft = { kind: s.draft.kind, window: '', values: { who: s.draft.values.who ?? '' } };
        token = crypto.randomUUID();
        s.written = `Entry ${number} is written down.`;
      } catch (e) {
        if (!(e instanceof Refusal)) throw e;
        s.problems = e.problems;
        if (e.status !== 0) token = crypto.randomUUID();
      } finally {
        s.sending = false;
        draw();
      }
    },
  };
}
