// @ts-check
import { ms } from './time.js';
/** @typedef {import('./types.js').PageData} PageData */
/**
 * A pass that is over, and what became of it.
 * @typedef {{station: string, from: number, to: number, maxElevationDeg: number,
 *   outcome: 'heard'|'nothing-heard'|'not-listened'|'', title: string}} PastPass
 */

const OUTCOMES = ['heard', 'nothing-heard', 'not-listened'];

/**
 * Passes over by now with the outcome written down for each, corrections applied; an outcome that
 * belongs to no known pass stands alone, without height.
 * @param {PageData} page
 * @returns {PastPass[]}
 */
export function pastPasses(page) {
  const outcomes = outcomesOf(page);
  const used = new Set();
  const passes = page.pastWindows.map((w) => {
    const from = ms(w.from);
    const to = ms(w.to);
    const own = outcomes.filter((o) => o.station === w.station && o.from < to && o.to > from);
    own.forEach((o) => used.add(o));
    const told = own.find((o) => o.outcome === 'heard') ?? own.find((o) => o.outcome === 'nothing-heard') ?? own[0];
    return /** @type {PastPass} */ ({
      station: w.station, from, to, maxElevationDeg: w.maxElevationDeg,
      outcome: told?.outcome ?? '', title: told?.title ?? 'nothing written down',
    });
  });
  return [...passes, ...outcomes.filter((o) => !used.has(o))];
}

/** @param {PageData} page @returns {PastPass[]} */
function outcomesOf(page) {
  return page.assessment.evidence.filter((e) => OUTCOMES.includes(e.kind)).flatMap((e) => {
    const written = page.journal.find((j) => j.number === e.entry);
    if (!written) return [];
    /** @type {Record<string, string>} */
    const keys = { ...written.keys };
    for (const j of page.journal) {
      if (j.kind === 'correction' && j.keys.of === String(e.entry)) Object.assign(keys, j.keys);
    }
    if (!keys.station || !keys.from || !keys.to) return [];
    return [/** @type {PastPass} */ ({
      station: keys.station, from: ms(keys.from), to: ms(keys.to), maxElevationDeg: 0,
      outcome: e.kind, title: e.title,
    })];
  });
}
