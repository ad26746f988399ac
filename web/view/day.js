// @ts-check
import { html } from 'lit-html';
import { drawDay } from '../chart/day.js';
import { DAY, dayClock, ms } from '../model/time.js';
import { pastPasses } from '../model/past.js';
import { shownWindow } from './pointing.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/state.js').NowActions} Actions */

/** The one time axis. @param {State} s @param {Actions} act */
export function dayView(s, act) {
  const a = s.page.assessment;
  const start = ms(a.now);
  const from = start + s.dayShift * DAY;
  const past = pastPasses(s.page);
  const oldest = Math.min(start, ...past.map((p) => p.from));
  const first = Math.min(0, -Math.ceil((start - oldest) / DAY));
  const last = Math.max(0, Math.ceil(a.horizonDays) - 1);
  const selected = shownWindow(s);
  return html`
    <section class="axis" data-step="3">
      <div class="heading">
        <h2>${s.dayShift === 0 ? 'The next day' : `From ${dayClock(from)}`}</h2>
        <div class="turn">
          <button type="button" ?disabled=${s.dayShift <= first} @click=${() => act.turn(-1)}>a day earlier</button>
          <button type="button" ?disabled=${s.dayShift >= last} @click=${() => act.turn(1)}>a day later</button>
        </div>
      </div>
      <div class="canvas" data-measure="day">
        ${s.widths.day ? drawDay({ a, from, to: from + DAY, now: s.now, width: s.widths.day, selected, choose: act.select, past }) : ''}
      </div>
      <p class="legend">A reed is a pass: its height is the culmination, <b>filled</b> when planned, and its figure is
        the chance to hear the beacon there. Pale bands are sunlight on board. Battery: middle half and nine in ten of what
        is still possible, the line is the median.${from < s.now ? html` Passes that are over stand open: a <b>full dot</b> was heard,
        a <b>ring</b> was silent, a <b>stroke</b> was not listened to, a bare reed has no entry.` : ''}</p>
    </section>`;
}
