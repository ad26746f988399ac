// @ts-check
import { html, svg } from 'lit-html';
import { linear, px } from './scale.js';
/** @typedef {ReturnType<typeof import('../model/causes.js').ways>} Ways */

const HEIGHT = 250;
const TOP = 14;
const BOTTOM = 26;
const LEFT = 34;
const LINE = 15;
const LETTER = 6.6;
/** Every line has its own stroke, so that none is known by colour alone. */
const DASHES = ['', '7 3', '2 3', '10 3 2 3', '4 2', '1 4'];

/**
 * How the odds of each cause went, entry by entry: bits since the start, each line named at its end.
 * @param {Ways} data @param {number} width
 */
export function drawWays({ entries, ways }, width) {
  const right = Math.min(width * 0.45, 12 + LETTER * Math.max(...ways.map((w) => w.cause.title.length + 6)));
  const all = ways.flatMap((w) => w.bits);
  const low = Math.floor(Math.min(-1, ...all));
  const high = Math.ceil(Math.max(1, ...all));
  const x = linear([0, Math.max(1, entries.length)], [LEFT, width - right]);
  const y = linear([low, high], [HEIGHT - BOTTOM, TOP]);
  const ends = apart(ways.map((w) => y(w.bits[w.bits.length - 1])), [TOP, HEIGHT - BOTTOM]);
  return html`
    <svg class="ways" viewBox="0 0 ${width} ${HEIGHT}" width=${width} height=${HEIGHT} role="img"
      aria-label=${`Bits gained since the start after ${entries.length} entries: ${ways.map((w) => `${w.cause.title} ${signed(w.bits[w.bits.length - 1])}`).join(', ')}`}>
      ${svg`
      ${marks(low, high).map((b) => svg`<line class=${b === 0 ? 'zero' : 'grid'} x1=${LEFT} x2=${width - right} y1=${px(y(b))} y2=${px(y(b))}></line>
        <text class="figure" x=${LEFT - 6} y=${px(y(b) + 4)} text-anchor="end">${signed(b, 0)}</text>`)}
      ${entries.map((e, i) => svg`<line class="tick" x1=${px(x(i + 1))} x2=${px(x(i + 1))} y1=${HEIGHT - BOTTOM} y2=${HEIGHT - BOTTOM + 4}></line>
        ${shownNumber(i, entries.length, width - right - LEFT) ? svg`<text class="figure" x=${px(x(i + 1))} y=${HEIGHT - BOTTOM + 17} text-anchor="middle">${e.entry}</text>` : ''}`)}
      ${ways.map((w, i) => svg`
        <path class=${`way ${i === 0 ? 'first' : ''}`} stroke-dasharray=${DASHES[i % DASHES.length]} d=${w.bits.map((b, k) => `${k ? 'L' : 'M'}${px(x(k))} ${px(y(b))}`).join('')}></path>
        <path class="lead" d=${`M${px(x(entries.length) + 2)} ${px(y(w.bits[entries.length]))}L${px(width - right + 9)} ${px(ends[i])}`}></path>
        <text class=${i === 0 ? 'first' : ''} x=${px(width - right + 12)} y=${px(ends[i] + 4)}>${w.cause.title} <tspan class="figure">${signed(w.bits[entries.length])}</tspan></text>`)}`}
    </svg>`;
}

/** @param {number} b @param {number} [digits] */
const signed = (b, digits = 1) => `${b < 0 ? '−' : b > 0 ? '+' : ''}${Math.abs(b).toFixed(digits)}`;

/** Round values between two. @param {number} low @param {number} high */
function marks(low, high) {
  const step = [1, 2, 5, 10, 20].find((s) => (high - low) / s <= 6) ?? 50;
  const from = Math.ceil(low / step) * step;
  return Array.from({ length: Math.floor((high - from) / step) + 1 }, (_, i) => from + i * step);
}

/** Every entry's number where there is room, else every second, fifth… @param {number} i @param {number} count @param {number} room */
function shownNumber(i, count, room) {
  const step = [1, 2, 5, 10, 20, 50].find((s) => (room / Math.max(1, count)) * s >= 20) ?? 100;
  return i % step === 0;
}

/** Places moved apart so that words at them do not touch, in their order. @param {number[]} places @param {[number, number]} room */
function apart(places, [top, bottom]) {
  const order = places.map((at, i) => ({ at, i })).sort((a, b) => a.at - b.at);
  let before = top - LINE;
  for (const one of order) before = one.at = Math.max(one.at, before + LINE);
  let after = bottom + LINE;
  for (const one of [...order].reverse()) after = one.at = Math.min(one.at, after - LINE);
  const result = [...places];
  for (const one of order) result[one.i] = one.at;
  return result;
}
