// @ts-check
import { html } from 'lit-html';
import { HOUR, clockSeconds, countdown, ms, span } from '../model/time.js';
import { degrees, hours, percentError, percentRange } from '../model/numbers.js';
import { next, shownOption } from '../model/windows.js';
import { term } from './term.js';
/** @typedef {import('../model/state.js').State} State */

/** The numbers under the sentence. @param {State} s */
export function facts(s) {
  const a = s.page.assessment;
  const w = next(a.windows, s.now);
  if (!w) return html`<p class="facts none">No station sees it within ${a.horizonDays} days.</p>`;
  const option = shownOption(w);
  const rising = w.geometry[0] ? `, rising ${degrees(w.geometry[0].aosAzimuthDeg)}` : '';
  const wait = ms(w.aos) - s.now;
  return html`
    <dl class="facts" data-step="2">
      ${fact(`${clockSeconds(w.aos)}, ${degrees(w.maxElevationDeg)}`, `${w.station}${rising}, ${wait > HOUR ? `in ${span(wait)}` : wait > 0 ? `in ${countdown(wait)}` : `now, ${countdown(ms(w.los) - s.now)} left`}`, s, 'window')}
      ${fact(percentError(w.beaconOn, w.beaconOnError), term('beacon-on'), s, 'beacon')}
      ${option ? fact(percentError(option.heardThisPass, option.heardThisPassError), term('heard'), s, 'heard') : ''}
      ${fact(percentRange(w.socP25, w.socP75), html`battery, ${term('band', 'middle half')}`, s, 'battery')}
      ${option ? fact(hours(option.costHours), `of ${hours(a.crewHoursPerWeek)} people have a week`, s, 'cost') : ''}
    </dl>`;
}

/** @param {string} value @param {unknown} name @param {State} s @param {string} id */
function fact(value, name, s, id) {
  const changed = s.before[id] !== undefined && s.before[id] !== value;
  s.shown[id] = value;
  return html`<div><dt>${name}</dt><dd data-fact=${id} class=${changed ? 'changed' : ''}>${value}</dd></div>`;
}
