// @ts-check
import { html } from 'lit-html';
import { answer } from './answer.js';
import { dayView } from './day.js';
import { facts } from './facts.js';
import { fits } from './fits.js';
import { knowing } from './knowing.js';
import { leading } from './leading.js';
import { log } from './log.js';
import { movedTable } from './moved.js';
import { pointing } from './pointing.js';
import { record } from './record.js';
import { since } from './since.js';
import { next } from '../model/windows.js';
import { windowsView } from './windows.js';
import { worth } from './worth.js';
/** @typedef {import('../model/state.js').State} State */

/** What to do next and why. @param {State} s @param {import('../model/state.js').NowActions} act @param {import('../model/state.js').LogActions} logging */
export const nowMain = (s, act, logging) => html`
  <main>
    <div class="top"><div>${answer(s)}${facts(s)}${worth(s)}${leading(s)}</div>${pointing(s)}</div>
    <div class="below"><p class="status" role="status">${s.written} ${s.status}</p>
      <p class="ways">${sit(s)}<a href="#log-title">write down what happened</a></p></div>
    ${dayView(s, act)}
    <div class="columns">
      ${fits(s)}
      <div>${since(s)}${knowing(s, act)}</div>
    </div>
    ${movedTable(s.page.assessment)}
    <div class="columns even">
      ${windowsView(s, act)}
      <div>${log(s, logging)}${record(s)}</div>
    </div>
  </main>`;

/** The way to the pass that is next. @param {State} s */
function sit(s) {
  const w = next(s.page.assessment.windows, s.now);
  return w ? html`<a href=${`#pass/${encodeURIComponent(w.id)}`}>sit through the pass over ${w.station}</a> ` : '';
}
