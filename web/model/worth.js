// @ts-check
import { shownOption } from './windows.js';
/** @typedef {import('./types.js').Assessment} Assessment */

/** Hours under this are nobody's, h. */
const NOBODYS = 0.02;

/**
 * Whether a window is worth people's time: what an hour there adds to the chance to hear it by the
 * horizon, against what the last hours of the plan add.
 *
 * @typedef {{hours: number, gain: number, perHour: number, threshold: number|null}} Worth
 *
 * @param {import('./types.js').Window} w
 * @param {Assessment} a
 * @returns {Worth|undefined} nothing without an option
 */
export function worthOf(w, a) {
  const option = shownOption(w);
  if (!option) return undefined;
  const without = w.options.filter((o) => o.heardThisPass === 0 && o.hazard === 0).map((o) => o.heardByHorizon);
  const gain = without.length > 0 ? Math.max(0, option.heardByHorizon - Math.max(...without)) : option.heardThisPass;
  const hours = option.costHours;
  return { hours, gain, perHour: hours < NOBODYS ? Infinity : gain / hours, threshold: lastAccepted(a.goingOn) };
}

/** What an hour of the plan's last step adds. @param {{costHours: number, heard: number}[]} steps cumulated, rising */
export function lastAccepted(steps) {
  for (let i = steps.length - 1; i > 0; i--) {
    const hours = steps[i].costHours - steps[i - 1].costHours;
    if (hours > 0) return Math.max(0, steps[i].heard - steps[i - 1].heard) / hours;
  }
  return null;
}
