// @ts-check
import { html } from 'lit-html';
import { drawDay } from '../chart/day.js';
import { DAY, dayClock, ms } from '../model/time.js';
import { shownWindow } from './pointing.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/state.js').Actions} Actions */

/** The one time axis. @param {State} s @param {Actions} act */
export function dayView(s, act) {
  const a = s.page.assessment;
  const start = ms(a.now);
  const from = start + s.dayShift * DAY;
  const first = a.energy.length > 0 ? Math.min(0, -Math.floor((start - ms(a.energy[0].time)) / DAY)) : 0;
  const last = Math.max(0, Math.ceil(a.horizonDays) - 1);
  const selected = shownWindow(s);
  return html`
    <section class="axis">
      <div class="heading">
        <h2>${s.dayShift === 0 ? 'The next day' : `From ${dayClock(from)}`}</h2>
        <div class="turn">
          <button type="button" ?disabled=${s.dayShift <= first} @click=${() => act.turn(-1)}>a day earlier</button>
          <button type="button" ?disabled=${s.dayShift >= last} @click=${() => act.turn(1)}>a day later</button>
        </div>
      </div>
      <div class="canvas" data-measure="day">
        ${s.widths.day ? drawDay({ a, from, to: from + DAY, now: s.now, width: s.widths.day, selected, choose: act.select }) : ''}
      </div>
      <p class="legend">A reed is a pass: its height is the culmination, <b>filled</b> when planned, and its figure is
        the chance to hear the beacon there. Pale bands are sunlight on board. Battery: middle half and nine in ten of what
        is still possible, the line is the median.</p>
    </section>`;
}
