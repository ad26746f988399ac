// @ts-check
import { html, svg } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { heaviest, momentAt } from '../model/pass.js';
import { clock, ms } from '../model/time.js';
import { linear, px } from './scale.js';
import { across, hills, into, names, way } from './strip.js';
/** @typedef {import('../model/pass.js').PassData} PassData */
/** @typedef {import('../model/types.js').Window} Window */

const GROUND_MARGIN = 30;
const TOP = 18;
const COLUMNS = 120;
/** Places looked at on each way for the band. */
const LOOKS = 800;
const NARROW = 620;

/**
 * The horizon unrolled: skyline beneath, where the candidates may pass as a band, the way of the
 * likeliest in it, and a dot where it stands.
 *
 * @param {{window: Window, data: PassData, width: number, weights: Map<string, number>, now: number}} h
 */
export function drawHorizon({ window: w, data, width, weights, now }) {
  const first = heaviest(data, weights);
  if (!first || first.rows.length < 2) return '';
  const height = width < NARROW ? 200 : 270;
  const ground = height - GROUND_MARGIN;
  const points = first.rows.filter((r) => r[1] >= 0).map((r) => /** @type {[number, number]} */ ([r[0], r[1]]));
  const span = across(points);
  const x = linear([span.from, span.from + span.wide], [0, width]);
  const highest = Math.max(...data.tracks.flatMap((t) => t.rows.map((r) => r[1])));
  const y = linear([0, highest > 55 ? 90 : 60], [ground, TOP]);
  return html`
    <svg class="strip horizon" viewBox="0 0 ${width} ${height}" width=${width} height=${height} role="img"
      aria-label=${`Horizon at ${w.station}: from azimuth ${Math.round(points[0][0])}° to ${Math.round(points[points.length - 1][0])}°, highest ${Math.round(w.maxElevationDeg)}°`}>
      ${svg`
      ${[30, 60].filter((e) => y(e) > TOP - 4).map((e) => svg`<line class="grid" x1="0" x2=${width} y1=${px(y(e))} y2=${px(y(e))}></line>
        <text class="soft" x=${width} y=${px(y(e) - 4)} text-anchor="end">${e}°</text>`)}
      ${guard([data, width], () => svg`<path class="band" d=${band(data, x, y, span)}></path>`)}
      <path class="first" d=${way(points, x, y, span)}></path>
      <path class="hills" d=${hills(data.skyline, x, y, span)}></path>
      <line class="ground" x1="0" x2=${width} y1=${ground} y2=${ground}></line>
      ${names(x, span, width, ground)}
      ${moments(w, first, x, y, span, width)}
      ${data.tracks.filter((t) => t !== first).map((t) => dot(t, now, x, y, span, 'other-dot', 4))}
      ${dot(first, now, x, y, span, 'dot', 7)}`}
    </svg>`;
}

/** @typedef {import('./strip.js').Across} Across */

/** Lowest and highest elevation of all candidates over each azimuth. @param {PassData} data @param {(a: number) => number} x @param {(e: number) => number} y @param {Across} span */
function band(data, x, y, span) {
  const low = new Array(COLUMNS + 1).fill(Infinity);
  const high = new Array(COLUMNS + 1).fill(-Infinity);
  for (const track of data.tracks) {
    const from = ms(track.from);
    const step = (track.stepSeconds * 1000 * (track.rows.length - 1)) / LOOKS;
    for (let i = 0; i <= LOOKS; i++) {
      const m = momentAt(track, from + i * step);
      if (!m || m.elevationDeg < 0) continue;
      const at = Math.round(((into(m.azimuthDeg, span) - span.from) / span.wide) * COLUMNS);
      if (at < 0 || at > COLUMNS) continue;
      low[at] = Math.min(low[at], m.elevationDeg);
      high[at] = Math.max(high[at], m.elevationDeg);
    }
  }
  const columns = [...low.keys()].filter((i) => high[i] >= 0);
  if (columns.length === 0) return '';
  const place = (/** @type {number} */ i, /** @type {number[]} */ of, /** @type {number} */ more) => `${px(x(span.from + (i / COLUMNS) * span.wide))} ${px(y(Math.max(0, of[i])) + more)}`;
  return `M${columns.map((i) => place(i, high, -2)).join('L')}L${columns.reverse().map((i) => place(i, low, 2)).join('L')}Z`;
}

/** @param {Window} w @param {import('../model/pass.js').PassTrack} track @param {(a: number) => number} x @param {(e: number) => number} y @param {Across} span @param {number} width */
function moments(w, track, x, y, span, width) {
  const own = w.geometry.find((g) => g.object === track.object) ?? w;
  return [own.aos, own.culmination, own.los].map((time, i) => {
    const m = momentAt(track, ms(time));
    if (!m) return '';
    const at = x(into(m.azimuthDeg, span));
    const anchor = at > width - 60 ? 'end' : at < 60 ? 'start' : 'middle';
    const word = ['AOS ', '', 'LOS '][i];
    return svg`<circle class="moment" cx=${px(at)} cy=${px(y(m.elevationDeg))} r="3"></circle>
      <text class="time" x=${px(at)} y=${px(y(m.elevationDeg) - 11)} text-anchor=${anchor}>${word}${clock(time)}${i === 1 ? `, ${Math.round(m.elevationDeg)}°` : ''}</text>`;
  });
}

/** @param {import('../model/pass.js').PassTrack} track @param {number} now @param {(a: number) => number} x @param {(e: number) => number} y @param {Across} span @param {string} kind @param {number} size */
function dot(track, now, x, y, span, kind, size) {
  const m = momentAt(track, now);
  if (!m || m.elevationDeg < -1) return '';
  return svg`<circle class=${kind} cx=${px(x(into(m.azimuthDeg, span)))} cy=${px(y(Math.max(0, m.elevationDeg)))} r=${size}></circle>`;
}
