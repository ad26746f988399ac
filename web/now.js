// @ts-check
/** Wires the page Now: which pass is looked at, what is opened, what lies far ahead. */
import { Refusal, fetchProcedure, fetchSky } from './api/console.js';
import { FORMS } from './model/entry.js';
import { nowMain } from './view/now.js';
import { lookFar } from './shell/farahead.js';
import { shownWindow } from './view/pointing.js';

/** @param {import('./model/shell.js').Shell} shell @returns {import('./model/shell.js').Page} */
export function page({ s, draw, log }) {
  /** @type {Set<string>} */
  const asked = new Set();

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

  /** @type {import('./model/state.js').NowActions} */
  const actions = {
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
    lookFar: () => lookFar(s, draw),
  };

  /** Chooses what happened and goes to the form. @param {string} kind */
  function write(kind) {
    log.kind(kind);
    setTimeout(() => {
      const first = document.getElementById('f-window');
      first?.focus();
      first?.scrollIntoView({ block: 'center' });
    });
  }

  return {
    title: '',
    skip: ['#log-title', 'to the form'],
    draw: () => nowMain(s, actions, log),
    shown: lookUp,
    keys: () => FORMS.filter((f) => f.letter !== '').map((f) => ({ key: f.letter, does: f.label, run: () => write(f.kind) })),
  };
}
