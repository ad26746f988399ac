// @ts-check
import { html, svg } from 'lit-html';
import { DAY, day, dayClock, ms } from '../model/time.js';
import { linear, px } from './scale.js';
/** @typedef {import('../model/types.js').SelfRecovery} SelfRecovery */

const HEIGHT = 62;
const LINE = 30;
const SIDE = 8;

/**
 * When it would be audible again by itself, on the days ahead: a thick stroke from one in ten to nine
 * in ten of all cases that have the cause, a dot at the half; what lies beyond the horizon is open.
 * @param {SelfRecovery} r @param {number} now @param {number} days @param {number} width
 */
export function drawReturn(r, now, days, width) {
  const end = now + days * DAY;
  const x = linear([now, end], [SIDE, width - SIDE]);
  const [p10, p50, p90] = [r.p10, r.p50, r.p90].map((t) => (t === null ? null : ms(t)));
  const step = [1, 2, 5, 10].find((d) => (width / days) * d >= 64) ?? 20;
  const marks = Array.from({ length: Math.floor(days / step) + 1 }, (_, i) => now + i * step * DAY);
  const spoken = [['one in ten', p10], ['half', p50], ['nine in ten', p90]].filter(([, t]) => t !== null)
    .map(([name, t]) => `${name} by ${dayClock(/** @type {number} */ (t))}`);
  return html`
    <svg class="return" viewBox="0 0 ${width} ${HEIGHT}" width=${width} height=${HEIGHT} role="img"
      aria-label=${`Audible again by itself, of the cases with this cause: ${spoken.join(', ')}`}>
      ${svg`<line class="rail" x1=${SIDE} x2=${width - SIDE} y1=${LINE} y2=${LINE}></line>
      ${marks.map((t) => svg`<line class="mark" x1=${px(x(t))} x2=${px(x(t))} y1=${LINE - 4} y2=${LINE + 4}></line>
        <text class="figure" x=${px(x(t))} y=${LINE + 20} text-anchor=${t === now ? 'start' : x(t) > width - 24 ? 'end' : 'middle'}>${t === now ? 'now' : day(t)}</text>`)}
      ${p10 === null ? '' : svg`<line class=${p90 === null ? 'span open' : 'span'} x1=${px(x(p10))} x2=${px(x(p90 ?? end))} y1=${LINE} y2=${LINE}></line>
        <text x=${px(x(p10))} y=${LINE - 11} text-anchor=${x(p10) > width - 70 ? 'end' : 'start'}>1 in 10</text>`}
      ${p90 === null || p10 === null || x(p90) - x(p10) < 110 ? '' : svg`<text x=${px(x(p90))} y=${LINE - 11} text-anchor="end">9 in 10</text>`}
      ${p50 === null ? '' : svg`<circle class="half" cx=${px(x(p50))} cy=${LINE} r="5"></circle>`}`}
    </svg>`;
}
