// @ts-check
/** Dates of the year ahead on one line: a dot where more becomes reachable, a bar for a stretch. */
import { svg } from 'lit-html';
import { DAY, day, ms } from '../model/time.js';
import { clamp, linear, px } from './scale.js';
/** @typedef {import('../model/case.js').Case} Case */

const HEIGHT = 46;
const LINE = 20;
const YEAR = 366 * DAY;
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** @param {Case} c @param {number} width */
export function drawDates(c, width) {
  const from = ms(c.now);
  const to = from + YEAR;
  const x = linear([from, to], [8, width - 8]);
  const within = c.dates.filter((d) => ms(d.from) <= to);
  return svg`
    <svg class="dates" width=${width} height=${HEIGHT} viewBox="0 0 ${width} ${HEIGHT}" role="img" aria-label=${`The year ahead: ${within.map((d) => `${day(d.from)} ${d.what}`).join('; ') || 'no date'}`}>
      <line class="rail" x1="8" x2=${width - 8} y1=${LINE} y2=${LINE}></line>
      ${months(from, to).map(({ at, name }) => svg`<line class="tick" x1=${px(x(at))} x2=${px(x(at))} y1=${LINE - 4} y2=${LINE + 4}></line>
        ${width < 480 && MONTHS.indexOf(name) % 3 ? '' : svg`<text class="figure" x=${px(x(at))} y=${HEIGHT - 6} text-anchor="middle">${name}</text>`}`)}
      ${within.map((d) => svg`${d.until ? svg`<line class="stretch" x1=${px(x(ms(d.from)))} x2=${px(x(clamp(ms(d.until), from, to)))} y1=${LINE} y2=${LINE}></line>` : ''}
        <circle class=${d.weight ? 'dated' : 'dated open'} cx=${px(x(ms(d.from)))} cy=${LINE} r=${px(4 + 14 * Math.sqrt(d.weight ?? 0))}></circle>`)}
    </svg>`;
}

/** @param {number} from @param {number} to */
function months(from, to) {
  const list = [];
  for (let i = 1; i <= 13; i++) {
    const first = new Date(from);
    const at = Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + i, 1);
    if (at < to) list.push({ at, name: MONTHS[new Date(at).getUTCMonth()] });
  }
  return list;
}
