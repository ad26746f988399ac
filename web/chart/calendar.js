// @ts-check
/** A week as a calendar of reeds: a line for each station and day, height is culmination, filled is done. */
import { svg } from 'lit-html';
import { STANDING, days, doneIn, standing } from '../model/plan.js';
import { degrees, percent } from '../model/numbers.js';
import { DAY, HOUR, clock, day, ms } from '../model/time.js';
import { stationsOf } from '../model/windows.js';
import { linear, px } from './scale.js';
import { reedPath } from './reeds.js';
/** @typedef {import('../model/plan.js').Plan} Plan */
/** @typedef {import('../model/plan.js').Row} Row */
/** @typedef {import('../model/plan.js').Wishes} Wishes */
/** @typedef {import('../model/types.js').Assessment} Assessment */

/** Below this width stations are named by their first letter, px. */
export const NARROW = 560;
const LANE = 34;
const DAY_GAP = 10;
const HEAD = 20;
const LEAST_HALF = 5;
const GRIP_HALF = 9;
const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];

/**
 * @typedef {{choose: (id: string) => void, press: (ev: PointerEvent, row: Row) => void, key: (ev: KeyboardEvent, row: Row) => void}} Hands
 * @param {Plan} plan @param {Wishes} wishes
 * @param {{width: number, chosen: string|undefined, pulled: {id: string, by: number}|undefined, now: number, shadows: {from: string, to: string}[]}} look
 * @param {Hands} hands
 */
export function drawCalendar(plan, wishes, look, hands) {
  const stations = stationsOf(plan.windows);
  const left = look.width < NARROW ? 58 : 118;
  const all = days(plan);
  const tall = stations.length * LANE + DAY_GAP;
  const x = linear([0, DAY], [left, look.width - 8]);
  const height = HEAD + all.length * tall;
  return svg`
    <svg class="calendar" width=${look.width} height=${height} viewBox="0 0 ${look.width} ${height}" role="group" aria-label="Passes of the days ahead, by day and station">
      ${hoursOf(x, height, look.width)}
      ${all.map((d, i) => dayOf(d, HEAD + i * tall, x, { stations, left, ...look }, { plan, wishes }, hands))}
    </svg>`;
}

/** @param {(t: number) => number} x @param {number} height @param {number} width */
const hoursOf = (x, height, width) => svg`<g class="ticks" aria-hidden="true">
  ${[0, 3, 6, 9, 12, 15, 18, 21, 24].map((h) => svg`<line x1=${px(x(h * HOUR))} x2=${px(x(h * HOUR))} y1=${HEAD - 4} y2=${height - DAY_GAP}></line>
    ${width < NARROW && h % 6 ? '' : svg`<text x=${px(x(h * HOUR))} y="11" text-anchor=${h === 24 ? 'end' : 'middle'}>${String(h % 24).padStart(2, '0')}:00${h === 0 ? 'Z' : ''}</text>`}`)}</g>`;

/**
 * @param {{start: number, rows: Row[]}} d @param {number} top @param {(t: number) => number} x
 * @param {{stations: string[], left: number, width: number, chosen: string|undefined, pulled: {id: string, by: number}|undefined, now: number, shadows: {from: string, to: string}[]}} look
 * @param {{plan: Plan, wishes: Wishes}} of @param {Hands} hands
 */
function dayOf(d, top, x, look, of, hands) {
  const name = `${WEEKDAYS[new Date(d.start).getUTCDay()]} ${day(d.start)}`;
  const narrow = look.width < NARROW;
  const nowHere = look.now >= d.start && look.now < d.start + DAY;
  return svg`<g>
    <text class="date" x="0" y=${top + 13}>${narrow ? name.slice(4) : name}</text>
    ${look.stations.map((station, k) => {
      const ground = top + (k + 1) * LANE - 2;
      return svg`<line class="ground" x1=${look.left} x2=${look.width - 8} y1=${ground} y2=${ground}></line>
        <text class="station soft" x=${look.left - 8} y=${ground - 3} text-anchor="end">${narrow ? station.charAt(0) : station}</text>
        ${d.rows.filter((row) => row.station === station).map((row) => reed(row, d.start, ground, x, look, of.wishes, hands))}`;
    })}
    ${nowHere ? svg`<line class="present-time" x1=${px(x(look.now - d.start))} x2=${px(x(look.now - d.start))} y1=${top} y2=${top + look.stations.length * LANE}></line>` : ''}
  </g>`;
}

/** @param {Row} row @param {number} start @param {number} ground @param {(t: number) => number} x @param {{chosen: string|undefined, pulled: {id: string, by: number}|undefined}} look @param {Wishes} wishes @param {Hands} hands */
function reed(row, start, ground, x, look, wishes, hands) {
  const tip = x(ms(row.culmination) - start);
  const half = Math.max(LEAST_HALF, (x(ms(row.los)) - x(ms(row.aos))) / 2);
  const stands = standing(row, wishes);
  const done = doneIn(row, wishes) !== null;
  const by = look.pulled?.id === row.window ? look.pulled.by : 0;
  const top = ground - 4 - (row.maxElevationDeg / 90) * (LANE - 8);
  const mine = stands === 'added' || stands === 'skipped' || stands === 'changed';
  return svg`
    <g class="reed slot ${done ? 'planned' : 'open'} ${mine ? 'mine' : ''} ${row.available ? '' : 'closed'} ${look.chosen === row.window ? 'selected' : ''}"
      role="button" tabindex="0" data-window=${row.window} aria-pressed=${done ? 'true' : 'false'} aria-label=${spoken(row, wishes)}
      transform=${`translate(0 ${px(by)})`}
      @click=${() => hands.choose(row.window)} @pointerdown=${(/** @type {PointerEvent} */ ev) => hands.press(ev, row)}
      @keydown=${(/** @type {KeyboardEvent} */ ev) => hands.key(ev, row)}>
      <title>${spoken(row, wishes)}</title>
      <rect class="grip" x=${px(tip - Math.max(half, GRIP_HALF))} y=${ground - LANE + 2} width=${px(2 * Math.max(half, GRIP_HALF))} height=${LANE}></rect>
      <path d=${reedPath(tip, half, ground, top)}></path>
      ${stands === 'accepted' ? svg`<path class="agreed" d=${`M${px(tip - 4)} ${ground + 4}l3 3l6 -6`}></path>` : ''}
      ${mine ? svg`<line class="by-you" x1=${px(tip - half - 1)} x2=${px(tip + half + 1)} y1=${ground + 4} y2=${ground + 4}></line>` : ''}
    </g>`;
}

/** @param {Row} row @param {Wishes} wishes */
const spoken = (row, wishes) =>
  `${row.station} ${day(row.aos)} ${clock(row.aos)}, ${degrees(row.maxElevationDeg)}, chance to hear ${percent(row.heard)}, ${STANDING[standing(row, wishes)]}${row.available ? '' : `, not available: ${row.whyNotAvailable}`}`;
