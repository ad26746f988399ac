// @ts-check
import { svg } from 'lit-html';
import { clock } from '../model/time.js';
import { reedPath } from './reeds.js';
import { px } from './scale.js';
/** @typedef {import('../model/past.js').PastPass} PastPass */

const LEAST_HALF_WIDTH = 5;
const MARK_ABOVE = 8;

/**
 * Passes that are over: open reeds, each with a mark for what became of it.
 *
 * @param {PastPass[]} passes of one station
 * @param {(t: number) => number} x
 * @param {(deg: number) => number} y
 */
export const drawPast = (passes, x, y) => svg`
  <g class="past">${passes.map((p) => {
    const at = x((p.from + p.to) / 2);
    const half = Math.max(LEAST_HALF_WIDTH, (x(p.to) - x(p.from)) / 2);
    return svg`<g role="img" aria-label=${`${p.station} ${clock(p.from)}: ${p.title}`}>
      <title>${clock(p.from)} ${p.title}</title>
      ${p.maxElevationDeg > 0 ? svg`<path d=${reedPath(at, half, y(0), y(p.maxElevationDeg))}></path>` : ''}
      ${mark(p.outcome, at, y(p.maxElevationDeg) - MARK_ABOVE)}
    </g>`;
  })}</g>`;

/** Filled: heard; hollow: nothing heard; a stroke: nobody listened. @param {string} outcome @param {number} x @param {number} y */
function mark(outcome, x, y) {
  if (outcome === 'heard') return svg`<circle class="heard" cx=${px(x)} cy=${px(y)} r="4"></circle>`;
  if (outcome === 'nothing-heard') return svg`<circle class="nothing" cx=${px(x)} cy=${px(y)} r="3.6"></circle>`;
  return outcome === 'not-listened' ? svg`<line class="absent" x1=${px(x - 5)} x2=${px(x + 5)} y1=${px(y)} y2=${px(y)}></line>` : '';
}
