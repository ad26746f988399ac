// @ts-check
/** Questions to the server that a page has under way: the newest of a kind counts, a slow one shows, any can be dropped. */
import { Refusal } from '../api/console.js';
/** @typedef {import('../model/types.js').Problem} Problem */

/** A person wonders what happens after this long. */
const SLOW_MS = 500;

/** @param {() => void} draw */
export function asking(draw) {
  /** @type {Map<string, AbortController>} */
  const running = new Map();
  /** @type {Record<string, boolean>} */
  const slow = {};

  /** @param {string} kind */
  function drop(kind) {
    running.get(kind)?.abort();
    running.delete(kind);
    slow[kind] = false;
  }

  return {
    /** Which kinds have been waiting for long. */
    slow,
    drop,
    /** @param {string} kind */
    asks: (kind) => running.has(kind),
    /** @template T @param {string} kind @param {(signal: AbortSignal) => Promise<T>} question @param {(answer: T) => void} take @param {(problems: Problem[]) => void} refuse */
    async ask(kind, question, take, refuse) {
      drop(kind);
      const mine = new AbortController();
      running.set(kind, mine);
      const timer = setTimeout(() => { slow[kind] = true; draw(); }, SLOW_MS);
      try {
        const answer = await question(mine.signal);
        if (running.get(kind) !== mine) return;
        refuse([]);
        take(answer);
      } catch (err) {
        if (running.get(kind) !== mine) return;
        if (!(err instanceof Refusal)) throw err;
        refuse(err.problems);
      } finally {
        clearTimeout(timer);
        if (running.get(kind) === mine) {
          running.delete(kind);
          slow[kind] = false;
          draw();
        }
      }
    },
  };
}
