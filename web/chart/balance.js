// @ts-check
import { svg } from 'lit-html';
import { ms } from '../model/time.js';
import { linear, px } from './scale.js';
/** @typedef {import('../model/energy.js').Orbit} Orbit */

/** The scale for both directions: gains up, what takes them down. @param {Orbit[]} orbits @param {number} top @param {number} bottom */
export function balanceScale(orbits, top, bottom) {
  const up = Math.max(0.1, ...orbits.map((o) => Math.max(o.offeredWh, o.storedWh, o.nominalWh)));
  const down = Math.max(0.1, ...orbits.map((o) => Math.max(o.loadsWh + o.lossesWh, -o.storedWh)));
  return { up, down, y: linear([-down, up], [bottom, top]) };
}

/**
 * One bar an orbit: from the arrays upwards, what nobody took in outline; loads and, hatched, losses
 * downwards; a thick tick for what the battery gained; broken lines for what two modes would take.
 *
 * @param {Orbit[]} orbits
 * @param {Orbit[]} others of the other world; may be empty
 * @param {(t: number) => number} x
 * @param {(wh: number) => number} y
 */
export const drawBalance = (orbits, others, x, y) => svg`
  <g class="balance" aria-hidden="true">
    ${orbits.map((o) => bars(o, x, y))}
    ${others.map((o) => tick(o, x, y, 'other'))}
    ${needs(orbits, x, y, 'safeWh')}${needs(orbits, x, y, 'nominalWh')}
  </g>`;

/** @param {Orbit} o @param {(t: number) => number} x @param {(wh: number) => number} y */
function bars(o, x, y) {
  const [left, width] = place(o, x);
  const loads = y(-o.loadsWh);
  return svg`
    <rect class="offered" x=${left} width=${width} y=${px(y(o.offeredWh))} height=${px(Math.max(0, y(o.arrayWh) - y(o.offeredWh)))}></rect>
    <rect class="array" x=${left} width=${width} y=${px(y(o.arrayWh))} height=${px(y(0) - y(o.arrayWh))}></rect>
    <rect class="loads" x=${left} width=${width} y=${px(y(0))} height=${px(loads - y(0))}></rect>
    <rect class="losses" fill="url(#state-off)" x=${left} width=${width} y=${px(loads)} height=${px(y(-o.loadsWh - o.lossesWh) - loads)}></rect>
    ${tick(o, x, y, 'stored')}`;
}

/** @param {Orbit[]} orbits @param {(t: number) => number} x @param {(wh: number) => number} y @param {'safeWh'|'nominalWh'} which */
function needs(orbits, x, y, which) {
  const way = orbits.map((o) => `${px(x(ms(o.orbitStart)))} ${px(y(o[which]))}L${px(x(ms(o.orbitEnd)))} ${px(y(o[which]))}`).join('L');
  return way === '' ? svg`` : svg`<path class="need" d=${`M${way}`}></path>`;
}

/** @param {Orbit} o @param {(t: number) => number} x @param {(wh: number) => number} y @param {string} kind */
function tick(o, x, y, kind) {
  const [left, width] = place(o, x);
  return svg`<line class=${kind} x1=${px(left - 1)} x2=${px(left + width + 1)} y1=${px(y(o.storedWh))} y2=${px(y(o.storedWh))}></line>`;
}

/** @param {Orbit} o @param {(t: number) => number} x @returns {[number, number]} */
function place(o, x) {
  const whole = x(ms(o.orbitEnd)) - x(ms(o.orbitStart));
  const width = Math.min(28, Math.max(2, whole * 0.62));
  return [px(x(ms(o.orbitStart)) + (whole - width) / 2), px(width)];
}

const LABEL_ROOM = 11;

/** Names of the broken lines at their end; one for both where they lie close. @param {Orbit[]} orbits @param {number} x @param {(wh: number) => number} y */
export function nameNeeds(orbits, x, y) {
  const last = orbits[orbits.length - 1];
  if (!last) return svg``;
  const [nominal, safe] = [y(last.nominalWh), y(last.safeWh)];
  const name = (/** @type {string} */ text, /** @type {number} */ at) => svg`<text x=${x} y=${px(at)} text-anchor="end">${text}</text>`;
  return svg`<g class="names" aria-hidden="true">${Math.abs(safe - nominal) < LABEL_ROOM
    ? name('safe, nominal', Math.min(safe, nominal) - 3)
    : svg`${name('nominal', nominal - 3)}${name('safe', safe - 3)}`}</g>`;
}
