// @ts-check
/**
 * Keeps labels on one line from covering each other: the weightier keep their place, the others
 * step aside by at most half their width, or are left out (they stay in the list and in the
 * accessible name of what they label).
 *
 * @template T
 * @param {{x: number, width: number, weight: number, of: T}[]} wanted
 * @param {number} gap
 * @param {[number, number]} room
 * @returns {{x: number, of: T}[]}
 */
export function place(wanted, gap, [left, right]) {
  /** @type {{x: number, width: number, of: T}[]} */
  const set = [];
  const clear = (/** @type {number} */ x, /** @type {number} */ width) =>
    set.every((o) => Math.abs(o.x - x) >= (o.width + width) / 2 + gap);
  for (const w of [...wanted].sort((a, b) => b.weight - a.weight)) {
    const inside = Math.max(left + w.width / 2, Math.min(right - w.width / 2, w.x));
    const step = w.width / 4;
    const x = [0, 1, -1, 2, -2].map((k) => inside + k * step).find((at) => clear(at, w.width));
    if (x !== undefined) set.push({ x, width: w.width, of: w.of });
  }
  return set.map(({ x, of }) => ({ x, of }));
}
