// @ts-check
import { html } from 'lit-html';
import { megahertz, momentAt, receivedHz, sentHz, shiftWords } from '../model/pass.js';
import { ms } from '../model/time.js';
import { term } from './term.js';

const EARLY = 60_000;

/**
 * The one line that ticks: where to point, how far it is, where to tune.
 *
 * @param {import('../model/pass.js').PassData} data @param {import('../model/pass.js').PassTrack} track
 * @param {import('../model/types.js').Window} w @param {number} now @param {number|null} reach of the chosen procedure; null sends nothing
 */
export function live(data, track, w, now, reach) {
  // Before it rises the line shows where to wait for it, and after, where it went.
  const time = Math.max(ms(w.aos), Math.min(ms(w.los), now));
  const m = momentAt(track, time);
  if (!m) return '';
  const words = now < ms(w.aos) - EARLY ? 'at AOS' : now > ms(w.los) ? 'at LOS' : 'now';
  const beacon = data.beacons[0];
  return html`
    <dl class="facts live" aria-label=${`Pointing and tuning, ${words}`}>
      ${item(`${m.azimuthDeg.toFixed(1)}°`, term('azimuth', `azimuth ${words}`), 'azimuth')}
      ${item(`${m.elevationDeg.toFixed(1)}°`, term('elevation'), 'elevation')}
      ${item(`${Math.round(m.rangeKm)}\u00a0km`, 'range', 'range')}
      ${beacon ? item(megahertz(receivedHz(beacon.frequencyHz, m.hzPerGhz)), html`receive, ${term('doppler')} ${shiftWords(beacon.frequencyHz * m.hzPerGhz / 1e9)}`, 'receive') : ''}
      ${data.receiverHz === null ? item('listens only', 'this station has no transmitter', 'transmit')
        : reach === null ? item('do not transmit', html`this procedure sends nothing; it would be ${megahertz(sentHz(data.receiverHz, m.hzPerGhz))}`, 'transmit')
          : item(megahertz(sentHz(data.receiverHz, m.hzPerGhz)), 'transmit, once authorised', 'transmit')}
    </dl>`;
}

/** @param {string} value @param {unknown} label @param {string} id */
const item = (value, label, id) => html`<div><dt>${label}</dt><dd data-live=${id}>${value}</dd></div>`;
