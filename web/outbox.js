// @ts-check
/**
 * Entries on their way to the journal. Each is kept in the browser until the server has said that
 * it is on disk; it carries a token, so that sending it twice writes it down once. Each has a place
 * of its own in the store, so that two open pages cannot lose each other's.
 */
import { Refusal, postEntry } from './api/console.js';
/** @typedef {import('./model/state.js').State} State */
/** @typedef {import('./model/state.js').Waiting} Waiting */

const PLACE = 'hark.waiting.';
const AGAIN_MS = 3000;

/** @param {State} s @param {() => void} draw */
export function wireOutbox(s, draw) {
  let sending = false;
  /** @type {ReturnType<typeof setTimeout>|undefined} */
  let later;

  function load() {
    s.waiting = Object.keys(localStorage).filter((k) => k.startsWith(PLACE))
      .map((k) => /** @type {Waiting} */ (JSON.parse(localStorage.getItem(k) ?? 'null')))
      .filter((one) => one !== null)
      .sort((a, b) => a.since - b.since);
  }

  /** @param {Waiting} one */
  function keep(one) { localStorage.setItem(PLACE + one.token, JSON.stringify(one)); }

  /** @param {Waiting} one @returns {Promise<boolean>} whether the next may be tried */
  async function deliver(one) {
    try {
      const { number } = await postEntry(one.kind, one.keys, one.token);
      localStorage.removeItem(PLACE + one.token);
      s.written = `Entry ${number} is written down.`;
      return true;
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
      if (e.status === 0 || e.status >= 500) return false;
      keep({ ...one, problems: e.problems });
      return true;
    }
  }

  async function send() {
    if (sending) return;
    sending = true;
    clearTimeout(later);
    try {
      load();
      for (const one of s.waiting) {
        if (one.problems.length === 0 && !(await deliver(one))) break;
        load();
        draw();
      }
    } finally {
      sending = false;
      load();
      if (s.waiting.some((one) => one.problems.length === 0)) later = setTimeout(send, AGAIN_MS);
      draw();
    }
  }

  load();
  return {
    /** @param {string} kind @param {Record<string, string>} keys @param {string} title in a few words */
    put(kind, keys, title) {
      keep({ token: crypto.randomUUID(), kind, keys, title, since: Date.now(), problems: [] });
      load();
      draw();
      send();
    },
    /** Gives up one that was refused. @param {string} token */
    drop(token) {
      localStorage.removeItem(PLACE + token);
      load();
      draw();
    },
    send,
  };
}
