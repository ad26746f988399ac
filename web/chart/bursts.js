// @ts-check
import { html, svg } from 'lit-html';
import { dueTimes, momentAt } from '../model/pass.js';
import { clock, ms } from '../model/time.js';
import { linear, px } from './scale.js';
/** @typedef {import('../model/pass.js').PassData} PassData */
/** @typedef {import('../model/types.js').Window} Window */

const HEIGHT = 84;
const GROUND = 58;
const MOST_TICKS = 400;

/**
 * The pass along time: how high it stands, when bursts are due, what was noticed.
 *
 * @param {{window: Window, track: import('../model/pass.js').PassTrack, intervalSeconds: number, width: number,
 *   now: number, burst: number, heardAt: number[]}} b
 */
export function drawBursts({ window: w, track, intervalSeconds, width, now, burst, heardAt }) {
  const from = ms(w.aos);
  const to = ms(w.los);
  const x = linear([from, to], [1, width - 1]);
  const y = linear([0, Math.max(30, w.maxElevationDeg)], [GROUND, 8]);
  const due = intervalSeconds > 0 ? dueTimes(from, to, intervalSeconds * 1000, burst || from).slice(0, MOST_TICKS) : [];
  const step = (to - from) / 60;
  const high = Array.from({ length: 61 }, (_, i) => from + i * step)
    .map((t) => `${px(x(t))} ${px(y(Math.max(0, momentAt(track, t)?.elevationDeg ?? 0)))}`).join('L');
  const inside = now >= from && now <= to;
  return html`
    <svg class="bursts" viewBox="0 0 ${width} ${HEIGHT}" width=${width} height=${HEIGHT} aria-hidden="true">
      ${svg`
      <path class="height" d=${`M${px(x(from))} ${GROUND}L${high}L${px(x(to))} ${GROUND}Z`}></path>
      ${inside ? svg`<rect class="gone" x="1" y="8" width=${px(x(now) - 1)} height=${GROUND - 8}></rect>` : ''}
      <line class="ground" x1="1" x2=${width - 1} y1=${GROUND} y2=${GROUND}></line>
      ${due.map((t) => svg`<line class=${burst ? 'due' : 'due pace'} x1=${px(x(t))} x2=${px(x(t))} y1=${GROUND - 9} y2=${GROUND + 4}></line>`)}
      ${heardAt.filter((t) => t >= from && t <= to).map((t) => svg`<circle class="noticed" cx=${px(x(t))} cy=${GROUND - 16} r="4"></circle>`)}
      ${inside ? svg`<line class="at" x1=${px(x(now))} x2=${px(x(now))} y1="4" y2=${GROUND + 6}></line>` : ''}
      <text x="1" y=${HEIGHT - 6}>${clock(from)}</text>
      <text x=${px(x(ms(w.culmination)))} y=${HEIGHT - 6} text-anchor="middle" class="soft">highest ${clock(w.culmination)}</text>
      <text x=${width - 1} y=${HEIGHT - 6} text-anchor="end">${clock(to)}</text>`}
    </svg>`;
}
