// @ts-check
/** Widths of what is drawn to measure, known only after a drawing. */

/** @param {HTMLElement} root @param {Record<string, number>} widths @returns {boolean} whether one has changed */
export function measure(root, widths) {
  let changed = false;
  for (const el of root.querySelectorAll('[data-measure]')) {
    const name = /** @type {HTMLElement} */ (el).dataset.measure ?? '';
    const width = Math.floor(el.clientWidth);
    if (width > 0 && widths[name] !== width) {
      widths[name] = width;
      changed = true;
    }
  }
  return changed;
}
