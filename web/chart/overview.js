// @ts-check
import { html, svg } from 'lit-html';
import { DAY, day, ms } from '../model/time.js';
import { chance } from '../model/windows.js';
import { linear, px } from './scale.js';

const HEIGHT = 46;
const FLOOR = 26;

/** Where in all the time the span shown lies. @param {{windows: import('../model/types.js').Window[], all: [number, number], span: [number, number], width: number}} o */
export function drawOverview({ windows, all, span, width }) {
  const x = linear(all, [1, width - 1]);
  const most = Math.max(0.05, ...windows.map(chance));
  const y = linear([0, most], [FLOOR, 4]);
  const days = [];
  for (let t = Math.ceil(all[0] / DAY) * DAY; t < all[1]; t += DAY) days.push(t);
  const every = Math.max(1, Math.ceil(days.length / (width / 60)));
  return html`
    <svg class="overview" viewBox="0 0 ${width} ${HEIGHT}" width=${width} height=${HEIGHT} aria-hidden="true">${svg`
      <rect class="seen" x=${px(x(span[0]))} width=${px(Math.max(3, x(span[1]) - x(span[0])))} y="1" height=${FLOOR}></rect>
      ${windows.map((w) => svg`<line class=${w.planned ? 'planned' : 'open'} x1=${px(x(ms(w.culmination)))} x2=${px(x(ms(w.culmination)))} y1=${FLOOR} y2=${px(y(chance(w)))}></line>`)}
      <line class="ground" x1="0" x2=${width} y1=${FLOOR + 1} y2=${FLOOR + 1}></line>
      ${days.filter((_, i) => i % every === 0).map((t) => svg`<text class="soft" x=${px(x(t))} y=${HEIGHT - 4} text-anchor=${x(t) < 20 ? 'start' : 'middle'}>${day(t)}</text>`)}`}
    </svg>`;
}

/** The time under a pointer. @param {number} at px from the left edge @param {number} width @param {[number, number]} all */
export const timeOf = (at, width, all) => linear([1, width - 1], all)(Math.max(1, Math.min(width - 1, at)));
