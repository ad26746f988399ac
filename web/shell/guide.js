// @ts-check
/** The first visit in five steps: which is shown, and that it was seen. What each says stands in view/guide.js. */

const PLACE = 'hark.visited';
export const STEPS = 5;

/** @param {import('../model/state.js').State} s @param {() => void} draw */
export function wireGuide(s, draw) {
  /** @param {number} step */
  function show(step) {
    s.guide = step > STEPS ? 0 : step;
    if (s.guide === 0) localStorage.setItem(PLACE, 'yes');
    document.documentElement.dataset.guide = String(s.guide);
    draw();
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    setTimeout(() => {
      document.querySelector(`[data-step~="${s.guide}"]`)?.scrollIntoView({ block: 'center', behavior: still ? 'auto' : 'smooth' });
    });
  }
  if (localStorage.getItem(PLACE) === null) {
    s.guide = 1;
    document.documentElement.dataset.guide = '1';
  }
  return {
    show,
    /** From the sheet of keys, on the first page. */
    again() {
      /** @type {HTMLDialogElement|null} */ (document.getElementById('keys'))?.close();
      location.hash = '';
      show(1);
    },
  };
}
