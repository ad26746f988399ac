// @ts-check
/** Scales: plain functions from a value to a place. */

/** @param {[number, number]} from @param {[number, number]} to @returns {(v: number) => number} */
export function linear([a, b], [x, y]) {
  return (v) => x + ((v - a) / (b - a)) * (y - x);
}

/** Opens up the small end; zero stays zero. @param {number} max @param {[number, number]} to */
export function rooted(max, [x, y]) {
  return (/** @type {number} */ v) => x + Math.sqrt(Math.max(0, v) / max) * (y - x);
}

/** @param {number} v @param {number} low @param {number} high */
export const clamp = (v, low, high) => Math.max(low, Math.min(high, v));

/** One decimal is a tenth of a pixel. @param {number} v */
export const px = (v) => Math.round(v * 10) / 10;
