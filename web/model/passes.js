// @ts-check
/** Passes ahead as a list: which are shown, in what order, over which span of time. */
import { DAY, HOUR, ms } from './time.js';
import { shownOption } from './windows.js';
/** @typedef {import('./types.js').Window} Window */
/** @typedef {'aos'|'station'|'highest'|'beacon'|'heard'|'battery'|'sun'|'hours'|'planned'} Column */

/** Nobody looks closer than this, ms. */
const LEAST_SPAN = 2 * HOUR;

/** What a column is sorted by. @type {Record<Column, (w: Window) => number|string>} */
const BY = {
  aos: (w) => ms(w.aos),
  station: (w) => w.station,
  highest: (w) => w.maxElevationDeg,
  beacon: (w) => w.beaconOn,
  heard: (w) => shownOption(w)?.heardThisPass ?? 0,
  battery: (w) => w.socP50,
  sun: (w) => w.minutesSinceSunrise,
  hours: (w) => shownOption(w)?.costHours ?? 0,
  planned: (w) => (w.planned === null ? '' : w.planned),
};

/** @param {Window[]} windows @param {{column: Column, down: boolean}} order */
export function sorted(windows, { column, down }) {
  const by = BY[column];
  return [...windows].sort((a, b) => {
    const x = by(a);
    const y = by(b);
    const order = x < y ? -1 : x > y ? 1 : 0;
    return (down ? -order : order) || ms(a.aos) - ms(b.aos);
  });
}

/** @param {Window[]} windows @param {{station: string, plannedOnly: boolean}} filter @param {[number, number]} span */
export const chosen = (windows, { station, plannedOnly }, [from, to]) => windows.filter((w) =>
  (station === '' || w.station === station) && (!plannedOnly || w.planned !== null) && ms(w.los) > from && ms(w.aos) < to);

/** All the time there is to look at. @param {import('./types.js').Assessment} a @returns {[number, number]} */
export const whole = (a) => [ms(a.now), ms(a.now) + a.horizonDays * DAY];

/** A span moved and stretched to lie inside another. @param {[number, number]} wish @param {[number, number]} room @returns {[number, number]} */
export function within([from, to], [start, end]) {
  const long = Math.min(end - start, Math.max(LEAST_SPAN, to - from));
  const first = Math.max(start, Math.min(end - long, (from + to) / 2 - long / 2));
  return [first, first + long];
}

/** @param {[number, number]} span @param {number} factor under 1 comes closer @param {number} [about] stays where it is @returns {[number, number]} */
export function zoomed([from, to], factor, about = (from + to) / 2) {
  return [about - (about - from) * factor, about + (to - about) * factor];
}

/** Those planned, those that are not, and the best of all. @param {Window[]} windows */
export function summary(windows) {
  const planned = windows.filter((w) => w.planned !== null);
  const best = sorted(planned.length > 0 ? planned : windows, { column: 'heard', down: true })[0];
  return { planned: planned.length, all: windows.length, best };
}
