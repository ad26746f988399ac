// @ts-check
import { dayClock } from '../model/time.js';
import { percent } from '../model/numbers.js';
/** @typedef {import('../model/types.js').SelfRecovery} SelfRecovery */

/** When it would come back by itself, as a sentence. @param {SelfRecovery} r @param {number} horizonDays */
export function recoverySentence(r, horizonDays) {
  const note = r.note ? ` (${r.note})` : '';
  if (r.probability <= 0) return `It does not come back by itself within ${horizonDays} days${note}.`;
  return `It comes back by itself within ${horizonDays} days in ${percent(r.probability)} of cases${range(r)}${note}.`;
}

/** @param {SelfRecovery} r */
function range({ p10, p50, p90 }) {
  if (p10 && p90 && dayClock(p10) === dayClock(p90)) return `, nearly always at ${dayClock(p10)}`;
  if (p10 && p90) return `, mostly between ${dayClock(p10)} and ${dayClock(p90)}`;
  if (p50) return `, half of them by ${dayClock(p50)}`;
  return p10 ? `, hardly before ${dayClock(p10)}` : '';
}
