// @ts-check
import { svg } from 'lit-html';
import { ms } from '../model/time.js';
import { px } from './scale.js';

/**
 * Bands of full sunlight: the time between shadows.
 *
 * @param {{from: string, to: string}[]} shadows in order
 * @param {[number, number]} span
 * @returns {[number, number][]}
 */
export function sunlit(shadows, [from, to]) {
  /** @type {[number, number][]} */
  const bands = [];
  let start = from;
  for (const s of shadows) {
    if (ms(s.to) <= from) continue;
    if (ms(s.from) >= to) break;
    if (ms(s.from) > start) bands.push([start, ms(s.from)]);
    start = Math.max(start, ms(s.to));
  }
  if (start < to) bands.push([start, to]);
  return bands;
}

/**
 * @param {[number, number][]} bands
 * @param {(t: number) => number} x
 * @param {number} top
 * @param {number} bottom
 */
export const drawSunlight = (bands, x, top, bottom) => svg`
  <g class="sunlight" aria-hidden="true">
    ${bands.map(([a, b]) => svg`<rect x=${px(x(a))} y=${top} width=${px(Math.max(0, x(b) - x(a)))} height=${bottom - top}></rect>`)}
  </g>`;
