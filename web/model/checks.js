// @ts-check
/** Which steps of a procedure are ticked off, window by window; kept in this browser. */

const PLACE = 'hark.checks.';
/** Windows whose ticks are kept; the oldest go first. */
const KEPT = 60;

/** @param {string} windowId @returns {Set<string>} */
export function checksOf(windowId) {
  return new Set(JSON.parse(localStorage.getItem(PLACE + windowId) ?? '[]'));
}

/** @param {string} windowId @param {Set<string>} checks */
export function keepChecks(windowId, checks) {
  if (checks.size === 0) localStorage.removeItem(PLACE + windowId);
  else localStorage.setItem(PLACE + windowId, JSON.stringify([...checks]));
  const risen = (/** @type {string} */ key) => key.slice(key.lastIndexOf(' ') + 1);
  const all = Object.keys(localStorage).filter((k) => k.startsWith(PLACE)).sort((a, b) => (risen(a) < risen(b) ? -1 : 1));
  for (const old of all.slice(0, Math.max(0, all.length - KEPT))) localStorage.removeItem(old);
}
