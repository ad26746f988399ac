// @ts-check
import { html, svg } from 'lit-html';
import { DAY, day, ms } from '../model/time.js';
import { linear, px } from './scale.js';
/** @typedef {import('../model/energy.js').Month} Month */
/** @typedef {import('../model/energy.js').FullSun} FullSun */

const TOP = 20;
const BETA = 70;
const GAP = 28;
const SHADE = 46;

/**
 * A year of sunlight: the angle between Sun and orbit as it ranges in each month, under it the share
 * of light lost to shadow, and seasons without any as pale bands whose edges fade over their spread.
 *
 * @param {Month[]} year @param {FullSun[]} seasons @param {number} width
 */
export function drawYear(year, seasons, width) {
  const narrow = width < 620;
  const left = narrow ? 40 : 92;
  const right = width - (narrow ? 6 : 14);
  const first = ms(year[0].from);
  const last = Math.max(ms(year[year.length - 1].from) + 15 * DAY, first + 365 * DAY);
  const x = linear([first, last], [left, right]);
  const most = Math.min(90, Math.max(30, 30 * Math.ceil(Math.max(...year.flatMap((m) => [Math.abs(m.betaLeastDeg), Math.abs(m.betaMostDeg)])) / 30)));
  const beta = linear([-most, most], [TOP + BETA, TOP]);
  const floor = TOP + BETA + GAP + SHADE;
  const shade = linear([0, 0.5], [floor, floor - SHADE]);
  const end = (/** @type {number} */ i) => (i + 1 < year.length ? ms(year[i + 1].from) : last);
  return html`
    <svg class="year" viewBox="0 0 ${width} ${floor + 22}" width=${width} height=${floor + 22} aria-hidden="true">
      ${svg`${seasons.map((s) => season(s, x, floor, narrow, right))}
      <line class="zero" x1=${left} x2=${right} y1=${beta(0)} y2=${beta(0)}></line>
      <line class="zero" x1=${left} x2=${right} y1=${floor} y2=${floor}></line>
      ${year.map((m, i) => svg`
        <rect class="beta" x=${px(x(ms(m.from)) + 1)} width=${px(Math.max(1, x(end(i)) - x(ms(m.from)) - 2))}
          y=${px(beta(m.betaMostDeg) - 1)} height=${px(Math.max(2, beta(m.betaLeastDeg) - beta(m.betaMostDeg) + 2))}></rect>
        <rect class="eclipse" x=${px(x(ms(m.from)) + 1)} width=${px(Math.max(1, x(end(i)) - x(ms(m.from)) - 2))}
          y=${px(shade(m.eclipseFraction))} height=${px(floor - shade(m.eclipseFraction))}></rect>
        ${narrow && i % 3 > 0 ? '' : svg`<text class="soft" x=${px(x(ms(m.from)) + 2)} y=${floor + 15}>${month(m.from, i)}</text>`}`)}
      <text class="soft" x=${left - 10} y=${TOP + 4} text-anchor="end">+${most}°</text>
      <text class=${narrow ? 'soft' : 'station'} x=${left - 10} y=${px(beta(0) + 4)} text-anchor="end">${narrow ? '0°' : 'beta 0°'}</text>
      <text class="soft" x=${left - 10} y=${TOP + BETA + 4} text-anchor="end">−${most}°</text>
      <text class="soft" x=${left - 10} y=${px(shade(0.5) + 4)} text-anchor="end">${narrow ? '50' : '50 %'}</text>
      <text class=${narrow ? 'soft' : 'station'} x=${left - 10} y=${floor} text-anchor="end">${narrow ? '0' : 'in shadow'}</text>`}
    </svg>`;
}

/** @param {string} from @param {number} i */
const month = (from, i) => {
  const [, name] = day(from).split(' ');
  const date = new Date(ms(from));
  return i > 0 && date.getUTCMonth() === 0 ? `${name} ${date.getUTCFullYear()}` : name;
};

/** @param {FullSun} s @param {(t: number) => number} x @param {number} floor @param {boolean} narrow @param {number} right */
function season(s, x, floor, narrow, right) {
  const from = x(ms(s.from));
  const late = from > right - 100;
  const to = x(ms(s.to));
  const spread = (/** @type {number} */ days) => (x(ms(s.from) + days * DAY) - from);
  const band = (/** @type {number} */ a, /** @type {number} */ b, /** @type {string} */ kind) =>
    svg`<rect class=${kind} x=${px(a)} width=${px(Math.max(0, b - a))} y=${TOP - 4} height=${floor - TOP + 4}></rect>`;
  return svg`<g class="season">
    ${band(from - spread(s.fromSpreadDays), to + spread(s.toSpreadDays), 'perhaps')}
    ${band(from + spread(s.fromSpreadDays), to - spread(s.toSpreadDays), 'full')}
    <text x=${px(late ? Math.min(right, to) : from)} y=${TOP - 8} text-anchor=${late ? 'end' : 'start'}>${narrow ? day(s.from) : `${day(s.from)} – ${day(s.to)}${s.sure ? '' : '?'}`}</text></g>`;
}
