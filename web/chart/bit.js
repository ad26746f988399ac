// @ts-check
import { html, svg } from 'lit-html';
import { clamp, px } from './scale.js';

const HALF = 26;
const HEIGHT = 12;
const MOST = 4;

/** A change of odds as a bar: to the right up, to the left down; an open end when it goes on. @param {number} bits */
export function drawBit(bits) {
  const to = px((clamp(bits, -MOST, MOST) / MOST) * HALF);
  const open = Math.abs(bits) > MOST;
  return html`<svg class="bit ${bits < 0 ? 'down' : 'up'}" width=${2 * HALF + 2} height=${HEIGHT} viewBox="${-HALF - 1} 0 ${2 * HALF + 2} ${HEIGHT}" aria-hidden="true">
    ${svg`<line class="middle" x1="0" x2="0" y1="0" y2=${HEIGHT}></line>
    <rect x=${Math.min(0, to)} y="3" width=${Math.abs(to)} height=${HEIGHT - 6}></rect>
    ${open ? svg`<line class="on" x1=${to - Math.sign(to) * 4} x2=${to - Math.sign(to) * 4} y1="2" y2=${HEIGHT - 2}></line>` : ''}`}</svg>`;
}
