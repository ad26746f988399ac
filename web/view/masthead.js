// @ts-check
import { html } from 'lit-html';
import { clockSeconds, date, ms, span } from '../model/time.js';
import { count } from '../model/numbers.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/state.js').ShellActions} Actions */

const THEMES = [['light', 'light'], ['dark', 'dark'], ['night', 'red night']];

/** Who is silent and for how long; the clock; the light. @param {State} s @param {Actions} act */
export function masthead(s, act) {
  const a = s.page.assessment;
  return html`
    <header class="masthead">
      <p class="who"><strong>${a.mission}</strong> <span>${silence(s)}</span></p>
      <p class="clock"><time datetime=${new Date(s.now).toISOString()}>${date(s.now)} &ensp;${clockSeconds(s.now)}</time>
        </p>
      <fieldset class="themes">
        <legend class="unseen">Light</legend>
        ${THEMES.map(([id, label]) => html`<label><input type="radio" name="theme" value=${id}
          .checked=${s.theme === id} @change=${() => act.theme(id)}><span>${label}</span></label>`)}
      </fieldset>
    </header>
    ${notices(s)}`;
}

/** What must be known of the clock and the record before anything is believed. @param {State} s */
function notices(s) {
  const clock = s.page.clock.own ? 'The mission carries its own clock: it stands still, and moves on when an outcome is written down.' : '';
  const text = [clock, s.page.clock.notice].filter((t) => t !== '').join(' ');
  return text === '' ? '' : html`<p class="notice">${text}</p>`;
}

/** @param {State} s */
function silence(s) {
  const { lastHeard, silentPasses } = s.page.assessment.silence;
  const passes = silentPasses === 0 ? '' : ` · ${count(silentPasses, 'pass', 'passes')} without a sound`;
  if (lastHeard === null) return `never heard${passes}`;
  const since = span(s.now - ms(lastHeard));
  return silentPasses === 0 ? `last heard ${since} ago` : `silent for ${since}${passes}`;
}
