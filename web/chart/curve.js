// @ts-check
/** Weight found against hours, with the plan's place on it and where ten hours more buy little. */
import { svg } from 'lit-html';
import { foundAt } from '../model/case.js';
import { hours, percent } from '../model/numbers.js';
import { linear, px } from './scale.js';
/** @typedef {import('../model/case.js').Case} Case */

const TOP = 26;
const BOTTOM = 26;
const LEFT = 42;
const RIGHT = 16;

/** @param {Case} c @param {number} width */
export function drawCurve(c, width) {
  const height = width < 480 ? 210 : 250;
  const last = Math.max(c.hours, c.curve[c.curve.length - 1]?.costHours ?? 0, 1);
  const most = Math.min(1, Math.ceil(10 * Math.max(c.found, ...c.curve.map((p) => p.heard), 0.05)) / 10 + 0.05);
  const x = linear([0, last], [LEFT, width - RIGHT]);
  const y = linear([0, most], [height - BOTTOM, TOP]);
  const line = c.curve.map((p, i) => `${i ? 'L' : 'M'}${px(x(p.costHours))} ${px(y(p.heard))}`).join('');
  return svg`
    <svg class="curve" width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="img" aria-label=${spoken(c)}>
      ${ticks(most).map((v) => svg`<line class="grid" x1=${LEFT} x2=${width - RIGHT} y1=${px(y(v))} y2=${px(y(v))}></line>
        <text class="figure" x=${LEFT - 6} y=${px(y(v) + 4)} text-anchor="end">${percent(v)}</text>`)}
      ${hourTicks(last).map((h) => svg`<text class="figure" x=${px(x(h))} y=${height - 8} text-anchor="middle">${h} h</text>`)}
      ${c.steps.map((step) => svg`<rect class="step" x=${px(x(step.fromHours))} y=${TOP} width=${px(x(step.toHours) - x(step.fromHours) - 1)} height=${height - TOP - BOTTOM}></rect>
        <text class="step-words" x=${px((x(step.fromHours) + x(step.toHours)) / 2)} y="16" text-anchor="middle">${step.fromHours > 0 ? '+' : ''}${percent(step.adds)}</text>`)}
      <path class="found" d=${line}></path>
      ${c.effort.fromHours === null ? '' : mark(x(c.effort.fromHours), y(foundAt(c.curve, c.effort.fromHours)), 'little')}
      ${mark(x(Math.min(c.hours, last)), y(c.found), 'planned')}
    </svg>`;
}

/** @param {number} x @param {number} y @param {string} kind */
const mark = (x, y, kind) => svg`<circle class=${kind} cx=${px(x)} cy=${px(y)} r="5"></circle>`;

/** @param {number} most */
const ticks = (most) => [0, 0.2, 0.4, 0.6, 0.8, 1].filter((v) => v <= most);

/** @param {number} last */
function hourTicks(last) {
  const step = [1, 2, 5, 10, 20, 50].find((s) => last / s <= 7) ?? 100;
  return Array.from({ length: Math.floor(last / step) + 1 }, (_, i) => i * step);
}

/** @param {Case} c */
const spoken = (c) => `Weight found against people’s hours: ${c.steps.map((s) => `from ${hours(s.fromHours)} to ${hours(s.toHours)} ${percent(s.adds)}`).join(', ')}. The plan takes ${hours(c.hours)} and finds ${percent(c.found)}.`;
