// @ts-check
import { html, svg } from 'lit-html';
import { percent } from '../model/numbers.js';
import { clockSeconds, ms } from '../model/time.js';
import { linear, px } from './scale.js';
/** @typedef {import('../model/orbit.js').Pass} Pass */
/** @typedef {import('../model/orbit.js').Suspect} Suspect */

const TOP = 18;
const CURVE = 210;
const GAP = 34;
const MISS = 92;
const LEFT = 62;
const HEIGHT = TOP + CURVE + GAP + MISS + 24;
/** Every candidate has its own stroke, so that none is known by colour alone. */
const DASHES = ['', '7 3', '2 3', '10 3 2 3'];

/**
 * Measured points, what each candidate would have given on time, and beneath how far it would miss
 * the points so.
 *
 * @param {Pass} pass @param {Suspect[]} suspects heaviest first @param {number} width
 */
export function drawDoppler(pass, suspects, width) {
  const names = suspects.map((c) => `${c.object}, ${percent(c.posterior)}`);
  const right = width - 14;
  const last = pass.points[pass.points.length - 1].seconds;
  const x = linear([0, Math.max(1, last)], [LEFT, right]);
  const lines = suspects.map((c) => /** @type {import('../model/orbit.js').Line} */ (pass.lines.find((l) => l.object === c.object)));
  const all = [...pass.points.map((p) => p.hz), ...lines.flatMap((l) => l.hz)];
  const low = Math.min(...all);
  const high = Math.max(...all);
  const y = linear([low, high], [TOP + CURVE, TOP]);
  const most = Math.max(1, ...lines.flatMap((l) => l.missesHz.map((m) => Math.abs(m))));
  const zero = TOP + CURVE + GAP + MISS / 2;
  const miss = linear([-most, most], [zero + MISS / 2, zero - MISS / 2]);
  const floor = TOP + CURVE + GAP + MISS;
  // the curve falls: the lower left stays empty
  const key = LEFT + 8;
  const row = (/** @type {number} */ i) => TOP + CURVE - 8 - 17 * (names.length - 1 - i);
  return html`
    <svg class="curves" viewBox="0 0 ${width} ${HEIGHT}" width=${width} height=${HEIGHT} role="img"
      aria-label=${`Frequencies measured at ${pass.station} and what each candidate would have given: ${names.join(', ')}`}>
      ${svg`
      <text class="soft" x=${LEFT + 12} y=${TOP - 6}>${pass.station}, kHz over nominal${width < 620 ? '' : '; points measured, lines as the elements have each'}</text>
      ${[low, high].map((v) => svg`<text class="soft" x=${LEFT - 8} y=${px(y(v) + 4)} text-anchor="end">${kilo(v)}</text>`)}
      ${low < 0 && high > 0 ? svg`<line class="zero" x1=${LEFT} x2=${right} y1=${px(y(0))} y2=${px(y(0))}></line>` : ''}
      <line class="zero" x1=${LEFT} x2=${right} y1=${zero} y2=${zero}></line>
      <text class="soft" x=${LEFT} y=${TOP + CURVE + GAP - 8}>misses by, on time, Hz</text>
      ${[-most, most].map((v) => svg`<text class="soft" x=${LEFT - 8} y=${px(miss(v) + 4)} text-anchor="end">${v < 0 ? '−' : '+'}${Math.round(Math.abs(v))}</text>`)}
      ${lines.map((line, i) => svg`
        <path class=${`candidate ${i === 0 ? 'first' : ''}`} stroke-dasharray=${DASHES[i]} d=${path(line.seconds.map((t, k) => [x(t), y(line.hz[k])]))}></path>
        <path class=${`candidate ${i === 0 ? 'first' : ''}`} stroke-dasharray=${DASHES[i]} d=${path(pass.points.map((p, k) => [x(p.seconds), miss(line.missesHz[k])]))}></path>
        <line class=${`candidate ${i === 0 ? 'first' : ''}`} stroke-dasharray=${DASHES[i]} x1=${px(key)} x2=${px(key + 26)} y1=${row(i) - 4} y2=${row(i) - 4}></line>
        <text class=${i === 0 ? 'first' : ''} x=${px(key + 33)} y=${row(i)}>${names[i]}</text>`)}
      ${pass.points.map((p) => svg`<circle class="point" cx=${px(x(p.seconds))} cy=${px(y(p.hz))} r="3.4"></circle>`)}
      <text class="soft" x=${LEFT} y=${floor + 18}>${clockSeconds(pass.from)}</text>
      <text class="soft" x=${right} y=${floor + 18} text-anchor="end">${clockSeconds(new Date(ms(pass.from) + 1000 * last).toISOString())}</text>`}
    </svg>`;
}

/** @param {number} hz */
const kilo = (hz) => `${hz < 0 ? '−' : '+'}${Math.abs(hz / 1000).toFixed(1)}`;

/** @param {number[][]} places */
const path = (places) => places.map(([a, b], i) => `${i ? 'L' : 'M'}${px(a)} ${px(b)}`).join('');
