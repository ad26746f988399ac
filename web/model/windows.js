// @ts-check
import { MINUTE, ms } from './time.js';
/** @typedef {import('./types.js').Window} Window */
/** @typedef {import('./types.js').PageData} PageData */
/** @typedef {import('./types.js').Option} Option */

/** The option the plan takes here, else the best ranked. @param {Window} w @returns {Option|undefined} */
export function shownOption(w) {
  const planned = w.options.find((o) => o.procedure === w.planned);
  return planned ?? [...w.options].sort((x, y) => x.rank - y.rank)[0];
}

/** The most we could hear here, whatever is planned. @param {Window} w */
export function chance(w) {
  return w.planned ? (shownOption(w)?.heardThisPass ?? 0) : mostHeard(w);
}

/** @param {Window} w */
function mostHeard(w) {
  return Math.max(0, ...w.options.map((o) => o.heardThisPass));
}

/** The first planned window not yet over, else the first. @param {Window[]} windows @param {number} now */
export function next(windows, now) {
  const ahead = windows.filter((w) => ms(w.los) > now);
  return ahead.find((w) => w.planned !== null) ?? ahead[0];
}

/** @param {{station: string}[]} windows */
export const stationsOf = (windows) => [...new Set(windows.map((w) => w.station))].sort();

/**
 * Something an outcome can be logged for.
 * @typedef {{id: string, station: string, from: string, to: string, maxElevationDeg: number,
 *   when: 'now'|'past'|'ahead'}} Loggable
 */

/**
 * Windows for the form: the one in progress, those past (latest first), and, when the mission has
 * its own clock, the next few.
 * @param {PageData} page
 * @param {number} now
 * @returns {Loggable[]}
 */
export function loggable(page, now) {
  const known = page.assessment.windows.map((w) => ({
    id: `${w.station} ${w.aos}`, station: w.station, from: w.aos, to: w.los,
    maxElevationDeg: w.maxElevationDeg,
  }));
  const past = page.pastWindows.map((w) => ({ ...w, id: `${w.station} ${w.from}` }));
  const seen = new Set();
  const all = [...known, ...past].filter((w) => !seen.has(w.id) && seen.add(w.id));
  const running = all.filter((w) => ms(w.from) <= now + MINUTE && ms(w.to) > now);
  const over = all.filter((w) => ms(w.to) <= now).sort((x, y) => ms(y.from) - ms(x.from));
  const ahead = page.clock.own ? known.filter((w) => ms(w.from) > now + MINUTE).slice(0, 6) : [];
  return [
    ...running.map((w) => /** @type {Loggable} */ ({ ...w, when: 'now' })),
    ...ahead.map((w) => /** @type {Loggable} */ ({ ...w, when: 'ahead' })),
    ...over.map((w) => /** @type {Loggable} */ ({ ...w, when: 'past' })),
  ];
}

/**
 * The window a person most likely means: in progress, else the one just over, else, under the
 * mission's own clock, the one to come.
 * @param {Loggable[]} list
 * @param {boolean} ownClock
 */
export function likely(list, ownClock) {
  const first = (/** @type {string} */ when) => list.find((w) => w.when === when);
  const order = ownClock ? ['now', 'ahead', 'past'] : ['now', 'past', 'ahead'];
  return order.map(first).find((w) => w !== undefined);
}
