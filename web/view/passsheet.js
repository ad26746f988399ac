// @ts-check
import { html } from 'lit-html';
import { megahertz, momentAt, receivedHz, sentHz } from '../model/pass.js';
import { clockSeconds, date, ms } from '../model/time.js';
/** @typedef {import('../model/pass.js').PassData} PassData */

const STEP_MS = 30_000;

/** What goes to the antenna on paper; on the screen it is folded away. @param {import('../model/state.js').State} s @param {import('../model/passstate.js').PassState} p @param {PassData} data @param {import('../model/pass.js').PassTrack} track @param {import('../model/types.js').Window} w */
export function passSheet(s, p, data, track, w) {
  const times = [ms(w.aos)];
  for (let t = Math.ceil((ms(w.aos) + 1) / STEP_MS) * STEP_MS; t < ms(w.los); t += STEP_MS) times.push(t);
  times.push(ms(w.los));
  const beacon = data.beacons[0];
  return html`
    <details class="pass-sheet" id="pass-sheet"><summary>the pass in steps of half a minute</summary>
      <div class="scroll" tabindex="0" role="region" aria-label="Pointing and tuning every half minute"><table>
        <caption class="on-paper">${s.page.assessment.mission}, ${w.station}, ${date(w.aos)}, object ${track.object}. Written ${date(s.now)} ${clockSeconds(s.now)}.</caption>
        <thead><tr><th scope="col">UTC</th><th scope="col">azimuth</th><th scope="col">elevation</th><th scope="col">range</th>
          ${beacon ? html`<th scope="col">receive</th>` : ''}${data.receiverHz === null ? '' : html`<th scope="col">transmit, if authorised</th>`}<th scope="col" class="on-paper">remarks</th></tr></thead>
        <tbody>${times.map((t) => row(t, data, track, beacon))}</tbody></table></div>
      <div class="on-paper lines">${['Who', 'Noise floor', 'First signal at, on, level', 'Last signal at, on, level', 'Commands sent: time, power, by whom authorised', 'Heard / nothing / could not listen', 'Deviations, weather'].map((what) => html`<p>${what}</p>`)}</div>
    </details>`;
}

/** @param {number} t @param {PassData} data @param {import('../model/pass.js').PassTrack} track @param {import('../model/pass.js').Beacon|undefined} beacon */
function row(t, data, track, beacon) {
  const m = momentAt(track, t);
  if (!m) return '';
  return html`<tr><th scope="row">${clockSeconds(t)}</th><td>${m.azimuthDeg.toFixed(1)}°</td><td>${m.elevationDeg.toFixed(1)}°</td><td>${Math.round(m.rangeKm)} km</td>
    ${beacon ? html`<td>${megahertz(receivedHz(beacon.frequencyHz, m.hzPerGhz))}</td>` : ''}
    ${data.receiverHz === null ? '' : html`<td>${megahertz(sentHz(data.receiverHz, m.hzPerGhz))}</td>`}<td class="on-paper"></td></tr>`;
}
