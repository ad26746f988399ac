// @ts-check
import { html, svg } from 'lit-html';
/** @typedef {import('../model/causes.js').Line} Line */

/** Of one level, px. */
export const STEP = 18;

/** Where a line's own branch arrives, px from its top: the middle of its first row of words. */
const ARRIVES = 15;
const THIN = 0.9;
const THICK = 9;

/** A branch as thick as it is likely now. @param {number} weight 0…1 */
export const thickness = (weight) => THIN + (THICK - THIN) * weight;

/**
 * What stands before the words of one line of the tree: branches that lead to it and past it.
 * Heights are shares of the line's own, so that lines may be of any height.
 * @param {Line} line
 */
export function drawLimbs({ limbs, node }) {
  const last = limbs.length - 1;
  if (last < 0) return '';
  const x = (/** @type {number} */ level) => level * STEP + STEP / 2;
  const own = node.join === 'elsewhere' || node.now === null ? 'elsewhere' : '';
  return html`
    <svg class="limbs" width=${limbs.length * STEP} height="100%" aria-hidden="true">
      ${limbs.slice(0, last).map((l, i) => (l.through > 0 ? svg`<line x1=${x(i)} x2=${x(i)} y1="0" y2="100%" stroke-width=${thickness(l.through)}></line>` : ''))}
      ${svg`<line x1=${x(last)} x2=${x(last)} y1="0" y2=${ARRIVES} stroke-width=${thickness(limbs[last].weight)}></line>
        ${limbs[last].through > 0 ? svg`<line x1=${x(last)} x2=${x(last)} y1=${ARRIVES} y2="100%" stroke-width=${thickness(limbs[last].through)}></line>` : ''}
        <line class=${own} x1=${x(last)} x2=${limbs.length * STEP} y1=${ARRIVES} y2=${ARRIVES} stroke-width=${thickness(node.now ?? 0)}></line>`}
    </svg>`;
}
