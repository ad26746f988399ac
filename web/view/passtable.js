// @ts-check
import { html } from 'lit-html';
import { degrees, hours, percent, percentError, percentRange } from '../model/numbers.js';
import { sorted } from '../model/passes.js';
import { clockSeconds, day, ms } from '../model/time.js';
import { shownOption } from '../model/windows.js';
/** @typedef {import('../model/types.js').Window} Window */
/** @typedef {import('../model/passesstate.js').PassesState} PassesState */

/** Rows drawn at once; the rest is one press away. */
const ROWS = 400;

/** @param {Window[]} windows @param {PassesState} p @param {import('../model/passesstate.js').PassesActions} act @param {number} now */
export function passTable(windows, p, act, now) {
  const rows = sorted(windows, p.order);
  return html`
    <div class="scroll" tabindex="0" role="region" aria-label="Passes as a table"><table class="pass-table">
      <thead><tr>${COLUMNS.map(([column, label]) => html`<th scope="col" aria-sort=${p.order.column !== column ? 'none' : p.order.down ? 'descending' : 'ascending'}>
        <button type="button" @click=${() => act.sort(column)}>${label()}<span aria-hidden="true">${p.order.column !== column ? '' : p.order.down ? ' ↓' : ' ↑'}</span></button></th>`)}</tr></thead>
      <tbody>${rows.slice(0, ROWS).map((w) => row(w, now))}</tbody></table></div>
    ${rows.length > ROWS ? html`<p class="soft">${rows.length - ROWS} more; come closer in time to see them, or take the CSV.</p>` : ''}
    ${rows.length === 0 ? html`<p class="soft">No pass in this stretch of time${p.filter.plannedOnly ? ' is planned' : ''}. Go earlier or later, or show all stations.</p>` : ''}`;
}

const COLUMNS = /** @type {[import('../model/passes.js').Column, () => unknown][]} */ ([
  ['aos', () => 'AOS, UTC'], ['station', () => 'station'], ['highest', () => 'highest'], ['beacon', () => 'beacon on'], ['heard', () => 'we hear it'],
  ['battery', () => 'battery'], ['sun', () => 'sun on board'], ['hours', () => 'hours'], ['planned', () => 'what to do']]);

/** @param {Window} w @param {number} now */
function row(w, now) {
  const o = shownOption(w);
  const sun = Math.round(w.minutesSinceSunrise);
  return html`<tr class="${w.planned ? 'planned' : 'open'} ${ms(w.los) < now ? 'over' : ''}">
    <th scope="row"><a href=${`#pass/${encodeURIComponent(w.id)}`}>${day(w.aos)} ${clockSeconds(w.aos)}</a></th>
    <td>${w.station}${w.unattended ? ' · unattended' : ''}</td><td>${degrees(w.maxElevationDeg)}</td><td>${percentError(w.beaconOn, w.beaconOnError)}</td>
    <td>${o ? percentError(o.heardThisPass, o.heardThisPassError) : percent(0)}</td><td>${percentRange(w.socP25, w.socP75)}</td>
    <td>${sun < 0 ? 'shadow' : `${sun} min`}</td><td>${o ? hours(o.costHours) : ''}</td>
    <td class="pass-do">${w.planned ? html`<b>${o?.title}</b>` : html`<span class="soft">${w.notAvailable ? w.notAvailable : `not planned; best: ${o?.title ?? '–'}`}</span>`}</td></tr>`;
}
