// @ts-check
import { html, svg } from 'lit-html';
import { HOUR, MINUTE, clock, day, ms } from '../model/time.js';
import { stationsOf } from '../model/windows.js';
import { percent } from '../model/numbers.js';
import { drawBeacon, drawFan, nearest, within } from './fan.js';
import { drawPast } from './past.js';
import { drawReeds } from './reeds.js';
import { clamp, linear, px } from './scale.js';
import { drawSunlight, sunlit } from './sunlight.js';
/** @typedef {import('../model/types.js').Assessment} Assessment */
/** @typedef {import('../model/types.js').Window} Window */
/**
 * @typedef {{a: Assessment, from: number, to: number, now: number, width: number,
 *   selected: Window|undefined, choose: (id: string) => void, past: import('../model/past.js').PastPass[]}} Day
 */

const NARROW = 620;
const TOP = 22;
const HEAD = 18;
const FAN_HEIGHT = 126;
const BEACON_HEIGHT = 30;
const GAP = 26;
const NARROW_GAP = 42;

/** Places of everything, from the width alone. @param {Day} d */
function layout(d) {
  const narrow = d.width < NARROW;
  const stations = stationsOf([...d.a.windows, ...d.past]);
  const lane = clamp(168 / Math.max(1, stations.length), 56, 104);
  const left = narrow ? 40 : 92;
  const right = d.width - (narrow ? 8 : 16);
  const lanes = stations.map((station, i) => ({ station, ground: TOP + (i + 1) * (lane + HEAD) }));
  const fanTop = TOP + stations.length * (lane + HEAD) + (narrow ? NARROW_GAP : GAP);
  const fanBottom = fanTop + FAN_HEIGHT;
  const beaconTop = fanBottom + GAP - 4;
  const beaconBottom = beaconTop + BEACON_HEIGHT;
  return { narrow, lanes, lane, left, right, fanTop, fanBottom, beaconTop, beaconBottom, height: beaconBottom + 40 };
}

/** Sunlight, passes, battery and beacon over one time axis. @param {Day} d */
export function drawDay(d) {
  const l = layout(d);
  const x = linear([d.from, d.to], [l.left, l.right]);
  const soc = linear([0, 1], [l.fanBottom, l.fanTop]);
  const share = linear([0, 1], [l.beaconBottom, l.beaconTop]);
  const points = within(d.a.energy, [d.from, d.to]);
  const bands = sunlit(d.a.shadows, [d.from, d.to]);
  return html`
    <svg class="day" viewBox="0 0 ${d.width} ${l.height}" width=${d.width} height=${l.height}
      role="group" aria-label="Sunlight, passes, battery and beacon over one time axis">
      <clipPath id="room"><rect x=${l.left} y="0" width=${l.right - l.left} height=${l.height}></rect></clipPath>
      <g clip-path="url(#room)">${drawSunlight(bands, x, TOP - 8, l.beaconBottom)}</g>
      ${ticks(d, l, x)}
      ${l.lanes.map((lane) => stationLane(d, l, lane, x))}
      <g clip-path="url(#room)">
        ${drawFan(points, x, soc)}
        ${drawBeacon(points, x, share)}
      </g>
      ${points.length > 2 ? '' : svg`<text class="soft" x=${(l.left + l.right) / 2} y=${(l.fanTop + l.fanBottom) / 2} text-anchor="middle">battery and beacon are drawn from the day before now on</text>`}
      ${battery(d, l, soc)}
      ${selection(d, l, x)}
      ${readout(d, l, x, points)}
      ${nowLine(d, l, x)}
    </svg>`;
}

/** @param {Day} d @param {ReturnType<typeof layout>} l @param {(t: number) => number} x */
function ticks(d, l, x) {
  const step = (l.narrow ? 6 : 3) * HOUR;
  const all = [];
  for (let t = Math.ceil(d.from / step) * step; t <= d.to; t += step) all.push(t);
  return svg`
    <g class="ticks" aria-hidden="true">
      ${all.map((t) => {
        const midnight = new Date(t).getUTCHours() === 0;
        const anchor = x(t) > l.right - 18 ? 'end' : 'middle';
        return svg`
          <line class=${midnight ? 'midnight' : ''} x1=${px(x(t))} x2=${px(x(t))} y1=${TOP - 8} y2=${l.beaconBottom + 5}></line>
          <text x=${px(x(t))} y=${l.beaconBottom + 19} text-anchor=${anchor}>${clock(t)}</text>
          ${midnight ? svg`<text class="date" x=${px(x(t))} y=${l.beaconBottom + 34} text-anchor=${anchor}>${day(t)}</text>` : ''}`;
      })}
      <text class="date" x=${l.left} y=${l.beaconBottom + 34}>${day(d.from)}</text>
    </g>`;
}

/**
 * @param {Day} d
 * @param {ReturnType<typeof layout>} l
 * @param {{station: string, ground: number}} lane
 * @param {(t: number) => number} x
 */
function stationLane(d, l, lane, x) {
  const y = linear([0, 90], [lane.ground, lane.ground - l.lane]);
  const windows = d.a.windows.filter(
    (w) => w.station === lane.station && ms(w.los) > d.from && ms(w.aos) < d.to);
  const name = l.narrow
    ? svg`<text class="station narrow" x=${l.left} y=${lane.ground + 13}>${lane.station}</text>`
    : svg`<text class="station" x=${l.left - 10} y=${lane.ground} text-anchor="end">${lane.station}</text>`;
  return svg`
    <g class="lane">
      <g aria-hidden="true">
        ${name}
        <text class="soft" x=${l.left - 10} y=${px(y(90) + 4)} text-anchor="end">90°</text>
        <line class="ground" x1=${l.left} x2=${l.right} y1=${lane.ground} y2=${lane.ground}></line>
      </g>
      <g clip-path="url(#room)">${drawPast(d.past.filter((p) => p.station === lane.station && p.to > d.from && p.from < d.to), x, y)}</g>
      ${drawReeds({ windows, x, y, room: [l.left, l.right], selected: d.selected?.id, choose: d.choose })}
    </g>`;
}

/** @param {Day} d @param {ReturnType<typeof layout>} l @param {(v: number) => number} soc */
function battery(d, l, soc) {
  return svg`
    <g class="scale" aria-hidden="true">
      ${l.narrow ? '' : svg`<text class="station" x=${l.left - 10} y=${px((l.fanTop + l.fanBottom) / 2 - 14)} text-anchor="end">battery</text>`}
      ${[0, 0.5, 1].map((v) => svg`<text class="soft" x=${l.left - 10} y=${px(soc(v) + 4)} text-anchor="end">${100 * v}${v === 1 && !l.narrow ? ' %' : ''}</text>`)}
      <line class="cutoff" x1=${l.left} x2=${l.right} y1=${px(soc(d.a.cutoffSoc))} y2=${px(soc(d.a.cutoffSoc))}></line>
      <text class="cutoff" x=${l.right - 6} y=${px(soc(d.a.cutoffSoc) - 5)} text-anchor="end">cut-off</text>
      <line class="ground" x1=${l.left} x2=${l.right} y1=${l.fanBottom} y2=${l.fanBottom}></line>
      <text class=${l.narrow ? 'soft' : 'station'} x=${l.left - 10} y=${l.beaconBottom} text-anchor="end">${l.narrow ? 'on' : 'beacon on'}</text>
      <line class="ground" x1=${l.left} x2=${l.right} y1=${l.beaconBottom} y2=${l.beaconBottom}></line>
    </g>`;
}

/** A hair through everything at the chosen pass. @param {Day} d @param {ReturnType<typeof layout>} l @param {(t: number) => number} x */
function selection(d, l, x) {
  const w = d.selected;
  if (!w || ms(w.los) < d.from || ms(w.aos) > d.to) return svg``;
  const lane = l.lanes.find((one) => one.station === w.station);
  const at = px(x(ms(w.culmination)));
  return svg`<line class="hair" aria-hidden="true" x1=${at} x2=${at} y1=${lane ? lane.ground : TOP} y2=${l.beaconBottom}></line>`;
}

/** What the hair meets. @param {Day} d @param {ReturnType<typeof layout>} l @param {(t: number) => number} x @param {import('../model/types.js').EnergyPoint[]} points */
function readout(d, l, x, points) {
  const w = d.selected;
  if (!w || points.length === 0 || ms(w.los) < d.from || ms(w.aos) > d.to) return svg``;
  const at = x(ms(w.culmination));
  const left = at > (l.left + l.right) / 2;
  const place = px(at + (left ? -7 : 7));
  const anchor = left ? 'end' : 'start';
  const p = nearest(points, ms(w.culmination));
  return svg`
    <g class="readout" aria-hidden="true">
      <circle cx=${px(at)} cy=${px(linear([0, 1], [l.fanBottom, l.fanTop])(p.socP50))} r="3.2"></circle>
      <text x=${place} y=${l.fanTop - 7} text-anchor=${anchor}>${clock(w.culmination)} · battery ${percent(w.socP50)}, beacon on ${percent(w.beaconOn)}</text>
    </g>`;
}

/** @param {Day} d @param {ReturnType<typeof layout>} l @param {(t: number) => number} x */
function nowLine(d, l, x) {
  if (d.now < d.from - MINUTE || d.now > d.to) return svg``;
  const at = px(x(Math.max(d.from, d.now)));
  return svg`
    <g class="now" aria-hidden="true">
      <line x1=${at} x2=${at} y1=${TOP - 8} y2=${l.beaconBottom}></line>
      <text x=${at > l.right - 30 ? at : at + 4} y=${TOP - 10} text-anchor=${at > l.right - 30 ? 'end' : 'start'}>now</text>
    </g>`;
}
