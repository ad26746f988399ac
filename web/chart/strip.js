// @ts-check
import { html, svg } from 'lit-html';
import { clock, ms } from '../model/time.js';
import { linear, px } from './scale.js';
/** @typedef {import('../model/types.js').Window} Window */
/** @typedef {import('../model/types.js').SkyView} SkyView */

const HEIGHT = 190;
const TOP = 16;
const GROUND = 160;
const NAMES = [['N', 0], ['NE', 45], ['E', 90], ['SE', 135], ['S', 180], ['SW', 225], ['W', 270], ['NW', 315]];

/**
 * A pass on an unrolled horizon: azimuth across, the skyline beneath, every candidate's way over
 * it; the likeliest drawn whole, the others broken.
 *
 * @param {{window: Window, sky: SkyView, width: number, weights: Map<string, number>}} strip
 */
export function drawStrip({ window: w, sky, width, weights }) {
  const tracks = [...sky.tracks].sort((a, b) => (weights.get(b.object) ?? 0) - (weights.get(a.object) ?? 0));
  const first = tracks[0];
  if (!first || first.points.length < 2) return '';
  const span = across(first.points);
  const x = linear([span.from, span.from + span.wide], [0, width]);
  const y = linear([0, 90], [GROUND, TOP]);
  return html`
    <svg class="strip" viewBox="0 0 ${width} ${HEIGHT}" width=${width} height=${HEIGHT} role="img"
      aria-label=${`Where to point from ${w.station}: ${first.points.length} directions from azimuth ${Math.round(first.points[0][0])}° to ${Math.round(first.points[first.points.length - 1][0])}°`}>
      ${svg`
      ${[30, 60].map((e) => svg`<line class="grid" x1="0" x2=${width} y1=${y(e)} y2=${y(e)}></line>
        <text class="soft" x=${width} y=${y(e) - 3} text-anchor="end">${e}°</text>`)}
      <path class="hills" d=${hills(sky.skyline, x, y, span)}></path>
      <line class="ground" x1="0" x2=${width} y1=${GROUND} y2=${GROUND}></line>
      ${names(x, span, width)}
      ${tracks.slice(1).reverse().map((t) => svg`<path class="other" d=${way(t.points, x, y, span)}></path>`)}
      <path class="first" d=${way(first.points, x, y, span)}></path>
      ${moments(first, w, x, y, span, width)}`}
    </svg>`;
}

/** @typedef {{from: number, wide: number}} Across */

/** The azimuths shown: centred on the way, wide enough for it. @param {[number, number][]} points @returns {Across} */
export function across(points) {
  const azimuths = unwrapped(points.map((p) => p[0]));
  const low = Math.min(...azimuths);
  const high = Math.max(...azimuths);
  const wide = Math.min(360, Math.max(150, (high - low) * 1.5));
  return { from: (low + high - wide) / 2, wide };
}

/** Without the jump at north. @param {number[]} azimuths */
export function unwrapped(azimuths) {
  let turn = 0;
  return azimuths.map((a, i) => {
    const step = i ? a - azimuths[i - 1] : 0;
    if (step > 180) turn -= 360;
    if (step < -180) turn += 360;
    return a + turn;
  });
}

/** An azimuth moved by whole turns to lie in what is shown. @param {number} azimuth @param {Across} span */
export const into = (azimuth, span) => span.from + ((((azimuth - span.from) % 360) + 360) % 360);

/** @param {[number, number][]} points @param {(a: number) => number} x @param {(e: number) => number} y @param {Across} span */
export function way(points, x, y, span) {
  const azimuths = unwrapped(points.map((p) => p[0]));
  const shift = into(points[Math.floor(points.length / 2)][0], span) - azimuths[Math.floor(points.length / 2)];
  return points.map((p, i) => `${i ? 'L' : 'M'}${px(x(azimuths[i] + shift))} ${px(y(Math.max(0, p[1])))}`).join('');
}

/** @param {[number, number][]} skyline @param {(a: number) => number} x @param {(e: number) => number} y @param {Across} span */
export function hills(skyline, x, y, span) {
  const turns = [-360, 0, 360, 720];
  const all = turns.flatMap((t) => skyline.map(([a, e]) => /** @type {[number, number]} */ ([a + t, e])))
    .filter(([a]) => a >= span.from - 10 && a <= span.from + span.wide + 10)
    .sort((p, q) => p[0] - q[0]);
  if (all.length === 0) return '';
  const top = all.map(([a, e]) => `L${px(x(a))} ${px(y(e))}`).join('');
  return `M${px(x(all[0][0]))} ${y(0)}${top}L${px(x(all[all.length - 1][0]))} ${y(0)}Z`;
}

/** @param {(a: number) => number} x @param {Across} span @param {number} width @param {number} [ground] */
export function names(x, span, width, ground = GROUND) {
  return NAMES.map(([name, azimuth]) => {
    const at = x(into(/** @type {number} */ (azimuth), span));
    return at < 8 || at > width - 8 ? '' : svg`
      <line class="tick" x1=${px(at)} x2=${px(at)} y1=${ground} y2=${ground + 5}></line>
      <text x=${px(at)} y=${ground + 19} text-anchor="middle">${name}</text>`;
  });
}

/** @param {import('../model/types.js').Track} track @param {Window} w @param {(a: number) => number} x @param {(e: number) => number} y @param {Across} span @param {number} width */
function moments(track, w, x, y, span, width) {
  const own = w.geometry.find((g) => g.object === track.object) ?? w;
  const culmination = 'culmination' in own ? own.culmination : w.culmination;
  return [own.aos, culmination, own.los].map((time, i) => {
    const n = Math.max(0, Math.min(track.points.length - 1,
      Math.round((ms(time) - ms(track.from)) / 1000 / track.stepSeconds)));
    const at = x(into(track.points[n][0], span));
    const high = y(Math.max(0, track.points[n][1]));
    const outward = i === 1 ? 0 : at < width / 2 ? -1 : 1;
    const room = outward < 0 ? at > 52 : at < width - 52;
    const aside = outward !== 0 && room;
    const anchor = aside ? (outward < 0 ? 'end' : 'start') : at > width - 40 ? 'end' : at < 40 ? 'start' : 'middle';
    return svg`<circle class="moment" cx=${px(at)} cy=${px(high)} r="3.2"></circle>
      <text class="time" x=${px(aside ? at + 7 * outward : at)} y=${px(aside ? high - 1 : high - 8)} text-anchor=${anchor}>${i === 1 ? `${clock(time)}, ${Math.round(w.maxElevationDeg)}°` : clock(time)}</text>`;
  });
}
