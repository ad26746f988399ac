// @ts-check
import { html, svg } from 'lit-html';
import { DAY, HOUR, clock, day, ms } from '../model/time.js';
import { percent } from '../model/numbers.js';
import { chance, shownOption, stationsOf } from '../model/windows.js';
import { place } from './labels.js';
import { reedPath } from './reeds.js';
import { linear, px } from './scale.js';
import { drawSunlight, sunlit } from './sunlight.js';
/** @typedef {import('../model/types.js').Window} Window */
/** @typedef {import('../model/types.js').Assessment} Assessment */

const NARROW = 620;
const TOP = 14;
const HEAD = 16;
const CHANCE = 30;
const LANE_GAP = 12;
const FOOT = 36;
const LEAST_HALF = 2;
/** Narrower than this, an orbit's sunlight would be a grey of stripes, px. */
const LEAST_ORBIT_PX = 16;
const ORBIT = 1.5 * HOUR;
const STEPS = [HOUR, 3 * HOUR, 6 * HOUR, 12 * HOUR, DAY];
const LEAST_TICK_PX = 62;

/**
 * All stations over one time axis. Reeds: height is culmination, filled is planned. Under them, from
 * the line upwards, what may be on the air and, thick, what of it we would hear.
 *
 * @param {{a: Assessment, windows: Window[], span: [number, number], width: number, now: number}} r
 */
export function drawRibbon({ a, windows, span, width, now }) {
  const narrow = width < NARROW;
  const left = narrow ? 8 : 92;
  const right = width - 10;
  const stations = stationsOf(a.windows);
  const tall = width < NARROW ? 58 : Math.round(Math.min(96, Math.max(58, width / 16)));
  const lane = HEAD + tall + CHANCE + LANE_GAP;
  const height = TOP + stations.length * lane + FOOT;
  const x = linear(span, [left, right]);
  const most = Math.max(0.1, ...a.windows.map((w) => w.beaconOn));
  return html`
    <svg class="ribbon" viewBox="0 0 ${width} ${height}" width=${width} height=${height} aria-hidden="true">
      ${svg`
      <clipPath id="ribbon-room"><rect x=${left} y="0" width=${right - left} height=${height}></rect></clipPath>
      ${x(span[0] + ORBIT) - left >= LEAST_ORBIT_PX ? svg`<g clip-path="url(#ribbon-room)">${drawSunlight(sunlit(a.shadows, span), x, TOP, height - FOOT)}</g>` : ''}
      ${ticks(span, x, height - FOOT, width)}
      ${stations.map((station, i) => laneOf(station, windows.filter((w) => w.station === station), TOP + i * lane, { x, left, right, most, narrow, tall }))}
      ${now > span[0] && now < span[1] ? svg`<g class="now"><line x1=${px(x(now))} x2=${px(x(now))} y1=${TOP} y2=${height - FOOT}></line></g>` : ''}`}
    </svg>`;
}

/** @typedef {{x: (t: number) => number, left: number, right: number, most: number, narrow: boolean, tall: number}} Room */

/** @param {string} station @param {Window[]} windows @param {number} top @param {Room} room */
function laneOf(station, windows, top, { x, left, right, most, narrow, tall }) {
  const ground = top + HEAD + tall;
  const floor = ground + CHANCE;
  const y = linear([0, 90], [ground, top + HEAD]);
  const share = linear([0, most], [floor, ground + 5]);
  const labels = place(windows.filter((w) => w.planned !== null).map((w) => ({
    x: x(ms(w.culmination)), width: percent(chance(w)).length * 7, weight: chance(w), of: w })), 6, [left, right]);
  return svg`<g class="lane">
    ${narrow ? svg`<text class="station" x=${left} y=${top + 11}>${station}</text>`
      : svg`<text class="station" x=${left - 10} y=${ground} text-anchor="end">${station}</text>
        <text class="soft" x=${left - 10} y=${top + HEAD + 4} text-anchor="end">90°</text>
        <text class="soft" x=${left - 10} y=${floor} text-anchor="end">chance</text>`}
    <line class="ground" x1=${left} x2=${right} y1=${ground} y2=${ground}></line>
    <line class="floor" x1=${left} x2=${right} y1=${floor} y2=${floor}></line>
    <g clip-path="url(#ribbon-room)">${windows.map((w) => reed(w, x, y, share, ground, floor))}</g>
    <g class="figures">${labels.map(({ x: at, of: w }) => svg`<text class="planned" x=${px(at)} y=${px(y(w.maxElevationDeg) - 5)}>${percent(chance(w))}</text>`)}</g>
  </g>`;
}

/** @param {Window} w @param {(t: number) => number} x @param {(deg: number) => number} y @param {(p: number) => number} share @param {number} ground @param {number} floor */
function reed(w, x, y, share, ground, floor) {
  const tip = x(ms(w.culmination));
  const half = Math.max(LEAST_HALF, (x(ms(w.los)) - x(ms(w.aos))) / 2);
  const heard = shownOption(w)?.heardThisPass ?? 0;
  return svg`<a class="reed ${w.planned ? 'planned' : 'open'} ${w.notAvailable ? 'away' : ''}" href=${`#pass/${encodeURIComponent(w.id)}`} tabindex="-1">
    <title>${`${w.station} ${day(w.aos)} ${clock(w.aos)}, ${Math.round(w.maxElevationDeg)}°, beacon on ${percent(w.beaconOn)}, we hear it ${percent(heard)}${w.notAvailable ? `, ${w.notAvailable}` : ''}`}</title>
    <rect class="grip" x=${px(tip - Math.max(half, 4))} y=${px(y(90))} width=${px(2 * Math.max(half, 4))} height=${px(floor - y(90))}></rect>
    <path d=${reedPath(tip, half, ground, y(w.maxElevationDeg))}></path>
    <line class="air" x1=${px(tip)} x2=${px(tip)} y1=${floor} y2=${px(share(w.beaconOn))}></line>
    <line class="ear" x1=${px(tip)} x2=${px(tip)} y1=${floor} y2=${px(share(heard))}></line>
    ${w.notAvailable ? svg`<path class="cross" d=${`M${px(tip - 3)} ${ground - 3}l6 6m0 -6l-6 6`}></path>` : ''}
  </a>`;
}

/** @param {[number, number]} span @param {(t: number) => number} x @param {number} bottom @param {number} width */
function ticks([from, to], x, bottom, width) {
  const step = STEPS.find((s) => (x(from + s) - x(from)) >= LEAST_TICK_PX) ?? 2 * DAY;
  const all = [];
  for (let t = Math.ceil(from / step) * step; t <= to; t += step) all.push(t);
  return svg`<g class="ticks">${all.map((t) => {
    const midnight = t % DAY === 0;
    const anchor = x(t) > width - 24 ? 'end' : 'middle';
    return svg`<line class=${midnight ? 'midnight' : ''} x1=${px(x(t))} x2=${px(x(t))} y1=${TOP} y2=${bottom + 4}></line>
      ${midnight ? svg`<text class="date" x=${px(x(t))} y=${bottom + 18} text-anchor=${anchor}>${day(t)}</text>`
        : svg`<text x=${px(x(t))} y=${bottom + 18} text-anchor=${anchor}>${clock(t)}</text>`}`;
  })}<text class="date" x=${px(x(from))} y=${bottom + 33}>${day(from)} ${clock(from)}</text></g>`;
}
