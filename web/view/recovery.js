// @ts-check
import { DAY, day, dayClock, ms } from '../model/time.js';
import { percent } from '../model/numbers.js';
/** @typedef {import('../model/types.js').SelfRecovery} SelfRecovery */
/** @typedef {import('../model/types.js').Assessment} Assessment */

/** The day on which the look ahead ends. @param {Assessment} a */
export const lastDay = (a) => day(ms(a.now) + a.horizonDays * DAY);

/** When it would be audible again by itself, as a sentence. @param {SelfRecovery} r @param {Assessment} a */
export function recoverySentence(r, a) {
  if (r.note.startsWith('never')) return `${r.note.charAt(0).toUpperCase()}${r.note.slice(1)}.`;
  if (r.probability <= 0) return `By itself: ${r.note || `not before ${lastDay(a)}`}.`;
  return `By itself it is audible again before ${lastDay(a)} in ${recoveryPhrase(r)}.`;
}

/** 87 % of cases, half by 13 Oct 22:11Z @param {SelfRecovery} r */
export const recoveryPhrase = (r) => `${percent(r.probability)} of cases${range(r)}`;

/** @param {SelfRecovery} r */
function range({ p10, p50, p90 }) {
  if (p10 && p90 && dayClock(p10) === dayClock(p90)) return `, most on ${dayClock(p10)}`;
  if (p10 && p90) return `, most between ${dayClock(p10)} and ${dayClock(p90)}`;
  if (p50) return `, half by ${dayClock(p50)}`;
  return p10 ? `, one in ten by ${dayClock(p10)}` : '';
}
