// @ts-check
import { html, svg } from 'lit-html';
import { percent } from '../model/numbers.js';
import { px, rooted } from './scale.js';

const WIDTH = 1000;
const MIDDLE = 11;
const MARKS = [0.01, 0.05, 0.1, 0.25, 0.5, 1];

/** @param {number} max */
const across = (max) => rooted(max, [8, WIDTH - 8]);

/**
 * One row of movement: hollow where we began, filled where we are, a thick stroke for the error, a
 * bracket beneath for half and double the prior.
 * Drawn in thousandths of the row's width, so that it stretches with the page and dots stay round.
 *
 * @param {{prior: number, now: number, error: number, band: [number, number]|null}} row
 * @param {number} max
 * @param {number} width of the row on the page, px
 */
export function drawMovement(row, max, width) {
  const scale = across(max);
  const x = (/** @type {number} */ p) => px((scale(p) * width) / WIDTH);
  const from = x(row.prior);
  const to = x(row.now);
  const inner = from < to ? from + 4.5 : from - 4.5;
  return html`
    <svg class="movement" viewBox="0 0 ${width} 22" width=${width} height="22" aria-hidden="true">
      ${svg`<line class="rail" x1="0" x2=${width} y1=${MIDDLE} y2=${MIDDLE}></line>
      ${MARKS.filter((m) => m <= max).map((m) => svg`<line class="mark" x1=${x(m)} x2=${x(m)} y1="7" y2="15"></line>`)}
      ${Math.abs(to - from) > 9 ? svg`<line class="path" x1=${inner} x2=${to} y1=${MIDDLE} y2=${MIDDLE}></line>` : ''}
      <line class="error" x1=${x(row.now - row.error)} x2=${x(row.now + row.error)} y1=${MIDDLE} y2=${MIDDLE}></line>
      ${row.band ? svg`<path class="band" d=${bracket(x(row.band[0]), x(row.band[1]))}></path>` : ''}
      <circle class="start" cx=${from} cy=${MIDDLE} r="4.5"></circle>
      <circle class="present" cx=${to} cy=${MIDDLE} r="5"></circle>`}
    </svg>`;
}

/** A bracket under the row, open upwards. @param {number} from @param {number} to */
const bracket = (from, to) => `M${from} ${MIDDLE + 5}V${MIDDLE + 9}H${to}V${MIDDLE + 5}`;

/** The figures over the rows. @param {number} max @param {number} width */
export function drawMarks(max, width) {
  const scale = across(max);
  const shown = MARKS.filter((m) => m <= max);
  return html`
    <svg class="marks" viewBox="0 0 ${width} 16" width=${width} height="16" aria-hidden="true">
      ${svg`${shown.map((m) => svg`<text x=${px((scale(m) * width) / WIDTH)} y="12">${percent(m)}</text>`)}`}
    </svg>`;
}
