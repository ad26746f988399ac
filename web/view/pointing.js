// @ts-check
import { html } from 'lit-html';
import { drawStrip } from '../chart/strip.js';
import { dayClock } from '../model/time.js';
import { next } from '../model/windows.js';
/** @typedef {import('../model/state.js').State} State */

/** The window whose sky is shown: the chosen one, else the one the answer speaks of. @param {State} s */
export function shownWindow(s) {
  const a = s.page.assessment;
  return a.windows.find((w) => w.id === s.selected)
    ?? a.windows.find((w) => w.id === a.headline.window) ?? next(a.windows, s.now);
}

/** Where to point. @param {State} s */
export function pointing(s) {
  const w = shownWindow(s);
  if (!w) return '';
  const sky = s.skies.get(w.id);
  const weights = new Map(s.page.assessment.objects.map((o) => [o.object, o.posterior]));
  return html`
    <figure class="pointing">
      <figcaption>${w.station} from ${dayClock(w.aos)}, over the skyline</figcaption>
      <div class="sky" data-measure="sky">${sky && s.widths.sky ? drawStrip({ window: w, sky, width: s.widths.sky, weights }) : ''}</div>
      ${sky && sky.tracks.length > 1 ? html`<p class="soft">Whole: the likeliest object. Broken: the other ${sky.tracks.length - 1 === 1 ? 'one' : `${sky.tracks.length - 1}`}.</p>` : ''}
    </figure>`;
}
