// @ts-check
import { svg } from 'lit-html';
import { ms } from '../model/time.js';
import { px } from './scale.js';
/** @typedef {import('../model/types.js').EnergyPoint} EnergyPoint */
/** @typedef {'socP05'|'socP25'|'socP50'|'socP75'|'socP95'|'transmitting'} Quantity */

/** @param {EnergyPoint[]} points @param {[number, number]} span */
export function within(points, [from, to]) {
  const first = points.findIndex((p) => ms(p.time) >= from);
  const start = Math.max(0, first < 0 ? points.length : first - 1);
  const after = points.findIndex((p) => ms(p.time) > to);
  return points.slice(start, after < 0 ? points.length : after + 1);
}

/** @param {EnergyPoint[]} points @param {(t: number) => number} x @param {(v: number) => number} y @param {Quantity} q */
export const line = (points, x, y, q) =>
  points.map((p, i) => `${i ? 'L' : 'M'}${px(x(ms(p.time)))} ${px(y(p[q]))}`).join('');

/** @param {EnergyPoint[]} points @param {(t: number) => number} x @param {(v: number) => number} y @param {Quantity} low @param {Quantity} high */
function area(points, x, y, low, high) {
  const back = [...points].reverse();
  return `${line(points, x, y, high)}${line(back, x, y, low).replace('M', 'L')}Z`;
}

/**
 * State of charge: nine in ten, half, and the middle.
 *
 * @param {EnergyPoint[]} points
 * @param {(t: number) => number} x
 * @param {(v: number) => number} y
 */
export const drawFan = (points, x, y) => points.length === 0 ? svg`` : svg`
  <g class="fan" aria-hidden="true">
    <path class="most" d=${area(points, x, y, 'socP05', 'socP95')}></path>
    <path class="half" d=${area(points, x, y, 'socP25', 'socP75')}></path>
    <path class="median" d=${line(points, x, y, 'socP50')}></path>
  </g>`;

/**
 * Share of possibilities whose beacon is on, as a filled line over its own floor.
 *
 * @param {EnergyPoint[]} points
 * @param {(t: number) => number} x
 * @param {(v: number) => number} y
 */
export function drawBeacon(points, x, y) {
  if (points.length === 0) return svg``;
  const ends = [points[points.length - 1], points[0]].map((p) => px(x(ms(p.time))));
  const top = line(points, x, y, 'transmitting');
  return svg`
    <g class="beacon" aria-hidden="true">
      <path class="share" d=${`${top}L${ends[0]} ${px(y(0))}L${ends[1]} ${px(y(0))}Z`}></path>
      <path class="edge" d=${top}></path>
    </g>`;
}

/** The point nearest a time. @param {EnergyPoint[]} points @param {number} time */
export function nearest(points, time) {
  let best = points[0];
  for (const p of points) {
    if (Math.abs(ms(p.time) - time) < Math.abs(ms(best.time) - time)) best = p;
  }
  return best;
}
