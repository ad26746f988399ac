// @ts-check
import { svg } from 'lit-html';
import { STATES } from '../model/energy.js';
import { ms } from '../model/time.js';
import { px } from './scale.js';
/** @typedef {import('../model/energy.js').Point} Point */

const ROOM_FOR_A_LABEL = 13;

/** Grounds told apart by pattern as well as by colour. Drawn once for each picture that uses them. */
export const patterns = svg`
  <defs aria-hidden="true">
    <pattern id="state-off" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect class="ground" width="6" height="6"></rect><line class="stroke" x1="0" x2="0" y1="0" y2="6"></line></pattern>
    <pattern id="state-boot" width="4" height="4" patternUnits="userSpaceOnUse">
      <rect class="ground" width="4" height="4"></rect><circle class="dot" cx="2" cy="2" r="1.2"></circle></pattern>
  </defs>`;

/** Shares of the bus states, one upon the other. @param {Point[]} points @param {(t: number) => number} x @param {(v: number) => number} y */
export function drawShares(points, x, y) {
  if (points.length === 0) return svg``;
  let low = points.map(() => 0);
  return svg`<g class="shares" aria-hidden="true">${STATES.map((state) => {
    const high = points.map((p, i) => low[i] + p.states[state]);
    const there = points.map((p, i) => `${px(x(ms(p.time)))} ${px(y(high[i]))}`).join('L');
    const back = points.map((p, i) => `${px(x(ms(p.time)))} ${px(y(low[i]))}`).reverse().join('L');
    low = high;
    const fill = state === 'off' || state === 'boot' ? `url(#state-${state})` : 'currentColor';
    return svg`<path class=${state} fill=${fill} d=${`M${there}L${back}Z`}></path>`;
  })}</g>`;
}

/** Names of the states that have room, inside their band at its end. @param {Point[]} points @param {number} x @param {(v: number) => number} y */
export function nameShares(points, x, y) {
  const last = points[points.length - 1];
  if (!last) return svg``;
  let sum = 0;
  return svg`<g class="names" aria-hidden="true">${STATES.map((state) => {
    const middle = sum + last.states[state] / 2;
    sum += last.states[state];
    return Math.abs(y(0) - y(last.states[state])) < ROOM_FOR_A_LABEL ? ''
      : svg`<text x=${px(x)} y=${px(y(middle) + 4)} text-anchor="end">${state}</text>`;
  })}</g>`;
}
