// @ts-check
import { html, svg } from 'lit-html';
import { nearestIndex } from '../model/energy.js';
import { DAY, HOUR, clock, day, ms } from '../model/time.js';
import { balanceScale, drawBalance, nameNeeds } from './balance.js';
import { drawFan, line, within } from './fan.js';
import { linear, px } from './scale.js';
import { drawShares, nameShares, patterns } from './shares.js';
import { drawSunlight, sunlit } from './sunlight.js';
/** @typedef {import('../model/energy.js').Energy} Energy */
/**
 * @typedef {{data: Energy, shadows: {from: string, to: string}[], span: [number, number], width: number, at: number,
 *   now: number, other: import('../model/energy.js').WhatIf|undefined,
 *   trace: import('../model/energy.js').Trace|undefined}} Picture
 */

const NARROW = 620;
const TOP = 18;
const FAN = 150;
const SHARES = 64;
const BALANCE = 84;
const GAP = 20;

/** @param {number} width */
export function layout(width) {
  const narrow = width < NARROW;
  const fanBottom = TOP + FAN;
  const sharesTop = fanBottom + GAP;
  const sharesBottom = sharesTop + SHARES;
  const balanceTop = sharesBottom + GAP;
  const balanceBottom = balanceTop + BALANCE;
  return { narrow, left: narrow ? 40 : 92, right: width - (narrow ? 6 : 14), fanBottom, sharesTop, sharesBottom,
    balanceTop, balanceBottom, height: balanceBottom + 38 };
}

/** The time under a place on the picture. @param {number} place px from its left @param {number} width @param {[number, number]} span */
export function timeAt(place, width, span) {
  const l = layout(width);
  return Math.max(span[0], Math.min(span[1], linear([l.left, l.right], span)(place)));
}

/** Charge, states and energy per orbit over one time axis, with a cursor. @param {Picture} p */
export function drawEnergy(p) {
  const l = layout(p.width);
  const x = linear(p.span, [l.left, l.right]);
  const soc = linear([0, 1], [l.fanBottom, TOP]);
  const share = linear([0, 1], [l.sharesBottom, l.sharesTop]);
  const points = /** @type {import('../model/energy.js').Point[]} */ (within(p.data.energy, p.span));
  const inside = (/** @type {import('../model/energy.js').Orbit} */ o) => ms(o.orbitEnd) > p.span[0] && ms(o.orbitStart) < p.span[1];
  const wh = balanceScale([...p.data.balance, ...(p.other?.whatIfBalance ?? [])], l.balanceTop, l.balanceBottom);
  return html`
    <svg class="day energy" viewBox="0 0 ${p.width} ${l.height}" width=${p.width} height=${l.height} aria-hidden="true">
      ${patterns}
      <clipPath id="energy-room"><rect x=${l.left} y="0" width=${l.right - l.left} height=${l.height}></rect></clipPath>
      <g clip-path="url(#energy-room)">${drawSunlight(sunlit(p.shadows, p.span), x, TOP - 6, l.fanBottom)}
        ${drawShares(points, x, share)}</g>
      ${ticks(p, l, x)}
      <g clip-path="url(#energy-room)">
        ${drawFan(points, x, soc)}
        ${nights(p, x, l)}
        ${p.other ? other(p, x, soc) : ''}
        ${p.trace ? one(p, x, soc) : ''}
        ${drawBalance(p.data.balance.filter(inside), (p.other?.whatIfBalance ?? []).filter(inside), x, wh.y)}
      </g>
      ${nameShares(points, l.right - 6, share)}
      ${nameNeeds(p.data.balance.filter(inside), l.right - 6, wh.y)}
      ${scales(p, l, soc, share, wh)}
      ${mark(p.now, 'now', p, l, x, 'now')}
      ${mark(p.at, 'cursor', p, l, x, clock(p.at))}
      ${dot(p, x, soc)}
    </svg>`;
}

/** Shadow on board, laid over the fan, which would hide what lies under it. @param {Picture} p @param {(t: number) => number} x @param {ReturnType<typeof layout>} l */
const nights = (p, x, l) => svg`<g class="nights">
  ${p.shadows.filter((s) => ms(s.to) > p.span[0] && ms(s.from) < p.span[1]).map((s) => svg`
    <rect x=${px(x(ms(s.from)))} width=${px(x(ms(s.to)) - x(ms(s.from)))} y=${TOP - 6} height=${l.fanBottom - TOP + 6}></rect>`)}</g>`;

/** The other world: the line pair of its middle half, and its median. @param {Picture} p @param {(t: number) => number} x @param {(v: number) => number} y */
function other(p, x, y) {
  const points = within(p.other?.whatIf ?? [], p.span);
  return svg`<g class="other-world">
    <path class="edge" d=${line(points, x, y, 'socP25')}></path><path class="edge" d=${line(points, x, y, 'socP75')}></path>
    <path class="middle" d=${line(points, x, y, 'socP50')}></path></g>`;
}

/** One member's charge. @param {Picture} p @param {(t: number) => number} x @param {(v: number) => number} y */
function one(p, x, y) {
  const rows = (p.trace?.trace ?? []).filter((r) => r.soc !== null && ms(r.time) >= p.span[0] - HOUR && ms(r.time) <= p.span[1] + HOUR);
  const d = rows.map((r, i) => `${i ? 'L' : 'M'}${px(x(ms(r.time)))} ${px(y(r.soc ?? 0))}`).join('');
  return svg`<path class="one" d=${d}></path>`;
}

/** @param {Picture} p @param {ReturnType<typeof layout>} l @param {(t: number) => number} x */
function ticks(p, l, x) {
  const days = (p.span[1] - p.span[0]) / DAY;
  const step = (days > 4 ? 24 : days > 1.5 ? (l.narrow ? 24 : 6) : l.narrow ? 6 : 3) * HOUR;
  const all = [];
  for (let t = Math.ceil(p.span[0] / step) * step; t <= p.span[1]; t += step) all.push(t);
  return svg`
    <g class="ticks">
      ${all.map((t) => {
        const midnight = new Date(t).getUTCHours() === 0;
        return svg`
          <line class=${midnight ? 'midnight' : ''} x1=${px(x(t))} x2=${px(x(t))} y1=${TOP - 6} y2=${l.balanceBottom + 4}></line>
          ${x(t) > l.right - 18 ? '' : svg`<text x=${px(x(t))} y=${l.balanceBottom + 18} text-anchor="middle">${clock(t)}</text>
          ${midnight ? svg`<text class="date" x=${px(x(t))} y=${l.balanceBottom + 33} text-anchor="middle">${day(t)}</text>` : ''}`}`;
      })}
    </g>`;
}

/**
 * @param {Picture} p
 * @param {ReturnType<typeof layout>} l
 * @param {(v: number) => number} soc
 * @param {(v: number) => number} share
 * @param {ReturnType<typeof balanceScale>} wh
 */
function scales(p, l, soc, share, wh) {
  const name = (/** @type {string} */ text, /** @type {number} */ y) =>
    l.narrow ? '' : svg`<text class="station" x=${l.left - 10} y=${px(y)} text-anchor="end">${text}</text>`;
  const figure = (/** @type {string} */ text, /** @type {number} */ y) =>
    svg`<text class="soft" x=${l.left - 10} y=${px(y + 4)} text-anchor="end">${text}</text>`;
  const unit = l.narrow ? '' : ' Wh';
  return svg`
    <g class="scale">
      ${name('battery', soc(0.75) + 4)}${name('bus', share(0.5) + 4)}${name('per orbit', wh.y(0) + 4)}
      ${figure('0', soc(0))}${figure('50', soc(0.5))}${figure(l.narrow ? '100' : '100 %', soc(1))}
      ${figure('0', share(0))}${figure(l.narrow ? '100' : '100 %', share(1))}
      ${figure(`+${wh.up.toFixed(1)}${unit}`, wh.y(wh.up))}${figure(`−${wh.down.toFixed(1)}${unit}`, wh.y(-wh.down))}
      <line class="cutoff" x1=${l.left} x2=${l.right} y1=${px(soc(p.data.cutoffSoc))} y2=${px(soc(p.data.cutoffSoc))}></line>
      <text class="cutoff" x=${l.right - 6} y=${px(soc(p.data.cutoffSoc) - 5)} text-anchor="end">cut-off</text>
      ${[l.fanBottom, l.sharesBottom, wh.y(0)].map((y) => svg`<line class="ground" x1=${l.left} x2=${l.right} y1=${px(y)} y2=${px(y)}></line>`)}
    </g>`;
}

/** @param {number} time @param {string} kind @param {Picture} p @param {ReturnType<typeof layout>} l @param {(t: number) => number} x @param {string} text */
function mark(time, kind, p, l, x, text) {
  if (time < p.span[0] || time > p.span[1]) return svg``;
  if (kind === 'now' && Math.abs(x(time) - x(p.at)) < 1) return svg``;
  const at = px(x(time));
  const near = kind === 'now' && Math.abs(x(time) - x(p.at)) < 64;
  const end = at > l.right - 50;
  return svg`<g class=${kind}><line x1=${at} x2=${at} y1=${TOP - 6} y2=${l.balanceBottom}></line>
    ${near ? '' : svg`<text x=${end ? at - 3 : at + 3} y=${TOP - 8} text-anchor=${end ? 'end' : 'start'}>${kind === 'cursor' && Math.abs(time - p.now) < 60_000 ? `now, ${text}` : text}</text>`}</g>`;
}

/** Where the cursor meets the median. @param {Picture} p @param {(t: number) => number} x @param {(v: number) => number} y */
function dot(p, x, y) {
  if (p.at < p.span[0] || p.at > p.span[1]) return svg``;
  const point = p.data.energy[nearestIndex(p.data.energy, p.at)];
  return svg`<g class="readout"><circle cx=${px(x(p.at))} cy=${px(y(point.socP50))} r="3.6"></circle></g>`;
}

