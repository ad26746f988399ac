// @ts-check
import { svg } from 'lit-html';
import { clock, ms } from '../model/time.js';
import { degrees, percent } from '../model/numbers.js';
import { chance } from '../model/windows.js';
import { place } from './labels.js';
import { px } from './scale.js';
/** @typedef {import('../model/types.js').Window} Window */

const LEAST_HALF_WIDTH = 5;
const LABEL_GAP = 6;

/**
 * One station's passes as reeds on their own ground line: height is culmination, filled is planned.
 *
 * @param {{windows: Window[], x: (t: number) => number, y: (deg: number) => number,
 *   room: [number, number], selected: string|undefined, choose: (id: string) => void}} lane
 */
export function drawReeds({ windows, x, y, room, selected, choose }) {
  const labels = place(
    windows.map((w) => ({
      x: x(ms(w.culmination)),
      width: percent(chance(w)).length * 7,
      weight: (w.id === selected ? 4 : 0) + (w.planned ? 2 : 0) + chance(w),
      of: w,
    })),
    LABEL_GAP, room);
  return svg`
    ${windows.map((w) => reed(w, x, y, w.id === selected, choose))}
    <g class="figures" aria-hidden="true">
      ${labels.map(({ x: at, of: w }) => svg`<text x=${px(at)} y=${px(y(w.maxElevationDeg) - 7)}
        class=${w.planned ? 'planned' : 'open'}>${percent(chance(w))}</text>`)}
    </g>`;
}

/**
 * @param {Window} w
 * @param {(t: number) => number} x
 * @param {(deg: number) => number} y
 * @param {boolean} selected
 * @param {(id: string) => void} choose
 */
function reed(w, x, y, selected, choose) {
  const tip = x(ms(w.culmination));
  const half = Math.max(LEAST_HALF_WIDTH, (x(ms(w.los)) - x(ms(w.aos))) / 2);
  const ground = y(0);
  const top = y(w.maxElevationDeg);
  const d = reedPath(tip, half, ground, top);
  const onKey = (/** @type {KeyboardEvent} */ e) => {
    if (e.key !== 'Enter' && e.key !== ' ') return;
    e.preventDefault();
    choose(w.id);
  };
  return svg`
    <g class="reed ${w.planned ? 'planned' : 'open'} ${selected ? 'selected' : ''}" role="button"
      tabindex="0" aria-pressed=${selected ? 'true' : 'false'} aria-label=${spoken(w)}
      @click=${() => choose(w.id)} @keydown=${onKey}>
      <title>${spoken(w)}</title>
      <rect class="grip" x=${px(tip - Math.max(half, 12))} y=${px(y(90))} width=${px(2 * Math.max(half, 12))} height=${px(ground - y(90))}></rect>
      <path d=${d}></path>
    </g>`;
}

/** @param {Window} w */
function spoken(w) {
  const plan = w.planned ? `planned: ${w.options.find((o) => o.procedure === w.planned)?.title ?? w.planned}` : 'nothing planned';
  return `${w.station} ${clock(w.aos)}, ${degrees(w.maxElevationDeg)}, chance to hear ${percent(chance(w))}, ${plan}`;
}

/** A reed's outline from its middle, half width, foot and tip. @param {number} tip @param {number} half @param {number} ground @param {number} top */
export const reedPath = (tip, half, ground, top) =>
  `M${px(tip - half)} ${ground}C${px(tip - half * 0.75)} ${px(top + (ground - top) * 0.45)} ${px(tip - half * 0.18)} ${px(top + 2)} ${px(tip)} ${px(top)}C${px(tip + half * 0.18)} ${px(top + 2)} ${px(tip + half * 0.75)} ${px(top + (ground - top) * 0.45)} ${px(tip + half)} ${ground}Z`;
