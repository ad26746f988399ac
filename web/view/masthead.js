// @ts-check
import { html } from 'lit-html';
import { MINUTE, clock, clockSeconds, date, iso, ms, span } from '../model/time.js';
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
    ${rehearsal(s, act)}
    ${notices(s)}`;
}

/** What must be known of the clock and the record before anything is believed. @param {State} s */
function notices(s) {
  const stands = s.page.clock.own ? 'The mission carries its own clock: it stands still, and moves on when an outcome is written down.' : '';
  const text = [stands, s.page.clock.notice].filter((t) => t !== '').join(' ');
  return text === '' ? '' : html`<p class="notice">${text}</p>`;
}

const SPEEDS = [1, 10, 60, 300, 1800];

/** The clock of a rehearsal says so on every page, and can be held. @param {State} s @param {Actions} act */
function rehearsal(s, act) {
  const c = s.page.clock;
  if (!c.rehearsal) return '';
  return html`<p class="rehearsal"><b>Rehearsal clock ${c.held ? 'held' : `×${c.speed}`}</b>
    <button type="button" @click=${() => act.clock({ held: !c.held })}>${c.held ? 'let it run' : 'hold it'}</button>
    <label>seconds a second <select @change=${(/** @type {Event} */ e) => act.clock({ speed: Number(/** @type {HTMLSelectElement} */ (e.target).value) })}>
      ${[...new Set([...SPEEDS, c.speed])].sort((a, b) => a - b).map((x) => html`<option value=${x} ?selected=${x === c.speed}>${x}</option>`)}</select></label>
    ${nextRise(s, act)}</p>`;
}

const BEFORE_RISE = 3 * MINUTE;

/** @param {State} s @param {Actions} act */
function nextRise(s, act) {
  const w = s.page.assessment.windows.find((one) => one.planned !== null && ms(one.aos) - BEFORE_RISE > s.now);
  return w ? html`<button type="button" @click=${() => act.clock({ to: iso(ms(w.aos) - BEFORE_RISE) })}>on to 3 min before ${w.station} ${clock(w.aos)}</button>` : '';
}

/** @param {State} s */
function silence(s) {
  const { lastHeard, silentPasses } = s.page.assessment.silence;
  const passes = silentPasses === 0 ? '' : ` · ${count(silentPasses, 'pass', 'passes')} without a sound`;
  if (lastHeard === null) return `never heard${passes}`;
  const since = span(s.now - ms(lastHeard));
  return silentPasses === 0 ? `last heard ${since} ago` : `silent for ${since}${passes}`;
}
