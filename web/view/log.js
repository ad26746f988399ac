// @ts-check
import { html } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { live } from 'lit-html/directives/live.js';
import { correction } from './correction.js';
import { FORMS, fieldOf, formOf } from '../model/entry.js';
import { stationsOf } from '../model/windows.js';
import { dayClock } from '../model/time.js';
import { degrees } from '../model/numbers.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/state.js').LogActions} Actions */
/** @typedef {import('../model/entry.js').Field} Field */
/** @typedef {import('../model/windows.js').Loggable} Loggable */

/** Another time than a known window's. */
export const OTHER = 'other';

/** The form for an outcome. @param {State} s @param {Actions} act */
export function log(s, act) {
  const form = formOf(s.draft.kind);
  return html`
    <section class="log" data-step="5" aria-labelledby="log-title">
      <h2 id="log-title">Write down what happened</h2>
      <form novalidate @submit=${(/** @type {Event} */ e) => { e.preventDefault(); act.send(); }}>
        <fieldset class="kinds"><legend class="unseen">What happened</legend>
          ${FORMS.map((f) => html`<label><input type="radio" name="kind" value=${f.kind} .checked=${live(f.kind === s.draft.kind)}
            @change=${() => act.kind(f.kind)}><span>${s.keysOn && f.letter ? html`<kbd>${f.letter}</kbd> ` : ''}${f.label}</span></label>`)}
        </fieldset>
        ${form.place === 'window' ? windowFields(s, act) : ''}
        ${form.place === 'span' ? spanFields(s, act) : ''}
        ${form.place === 'moment' ? input(s, act, { key: 'at', label: 'When, UTC', type: 'time', hint: '2026-10-17 14:03Z' }) : ''}
        ${s.draft.kind === 'correction' ? correction(s, act) : ''}
        ${form.fields.filter((f) => !f.more).map((f) => input(s, act, withStations(f, s)))}
        ${s.draft.kind === 'note' ? '' : input(s, act, { key: 'note', label: 'Remark', type: 'text' })}
        ${input(s, act, { key: 'who', label: 'Who', type: 'text' })}
        ${more(s, act)}
        ${problems(s)}
        <div class="send"><button class="act" type="submit" ?disabled=${s.sending}>${s.sending ? 'writing…' : 'write it down'}</button>
          <label class="switch"><input type="checkbox" .checked=${s.keysOn} @change=${() => act.keys(!s.keysOn)}>
            <span>keys <kbd>h</kbd> heard <kbd>n</kbd> nothing <kbd>x</kbd> could not listen</span></label></div>
      </form>
    </section>`;
}

/** @param {State} s @param {Actions} act */
const spanFields = (s, act) => html`
      ${input(s, act, { key: 'from', label: 'From, UTC', type: 'time', hint: '2026-10-17 14:03Z' })}
      ${input(s, act, { key: 'to', label: 'To, UTC', type: 'time', hint: '2026-10-17 14:12Z' })}`;

/** @param {Field} f @param {State} s @returns {Field} */
export const withStations = (f, s) => f.key.replace('new:', '') !== 'station' || f.type !== 'choice' ? f : {
  ...f, choices: stationNames(s).map((name) => /** @type {[string, string]} */ ([name, name])) };

/** @param {State} s */
const stationNames = (s) => {
  const named = s.page.assessment.stations.map((t) => t.station);
  return named.length > 0 ? named : stationsOf(s.page.assessment.windows);
};

/** @param {State} s @param {Actions} act */
function windowFields(s, act) {
  const labels = { now: 'in progress', ahead: 'to come', past: 'past' };
  return html`
    <div class="field"><label for="f-window">Window</label>
      <select id="f-window" .value=${live(s.draft.window)} @change=${(/** @type {Event} */ e) => act.window(/** @type {HTMLSelectElement} */ (e.target).value)}>
        ${s.loggable.map((w) => html`<option value=${w.id} ?selected=${w.id === s.draft.window}>${w.station} ${dayClock(w.from)}, ${degrees(w.maxElevationDeg)} (${labels[w.when]})</option>`)}
        <option value=${OTHER} ?selected=${s.draft.window === OTHER}>another time…</option>
      </select></div>
    ${s.draft.window !== OTHER ? '' : html`
      ${input(s, act, withStations({ key: 'station', label: 'Station', type: 'choice' }, s))}
      ${spanFields(s, act)}`}
    ${s.loggable.find((w) => w.id === s.draft.window)?.when === 'ahead' ? html`
      <p class="soft hint">This window is still to come; the mission’s clock then moves on past its end.</p>` : ''}`;
}

/** @param {State} s @param {Actions} act */
function more(s, act) {
  const fields = formOf(s.draft.kind).fields.filter((f) => f.more);
  return fields.length === 0 ? '' : html`
    <details class="more"><summary>more about how</summary>${fields.map((f) => input(s, act, f))}</details>`;
}

/** One field. @param {State} s @param {Actions} act @param {Field} f */
export function input(s, act, f) {
  const id = `f-${f.key.replace(':', '-')}`;
  const value = s.draft.values[f.key] ?? '';
  const set = (/** @type {Event} */ e) => act.value(f.key, /** @type {HTMLInputElement} */ (e.target).value);
  const wrong = s.problems.some((p) => fieldOf(p, [f.key.replace('new:', '')]) !== undefined);
  const invalid = wrong ? 'true' : 'false';
  const told = wrong ? 'log-problems' : '';
  if (f.type === 'choice') {
    // A list drawn anew for each field: one taken over from another field would keep that one's choice.
    return keyed(`${s.draft.kind} ${id}`, html`<div class="field"><label for=${id}>${f.label}</label>
      <select id=${id} aria-invalid=${invalid} aria-describedby=${told} .value=${live(value || (f.choices?.[0]?.[0] ?? ''))} @change=${set}>
        ${(f.choices ?? []).map(([v, label]) => html`<option value=${v} ?selected=${v === value}>${label}</option>`)}</select></div>`);
  }
  if (f.type === 'long') {
    return html`<div class="field"><label for=${id}>${f.label}</label>
      <textarea id=${id} rows="3" aria-invalid=${invalid} aria-describedby=${told} .value=${live(value)} @input=${set}></textarea></div>`;
  }
  return html`<div class="field"><label for=${id}>${f.label}</label>
    <input id=${id} type="text" inputmode=${f.type === 'number' ? 'decimal' : 'text'} autocomplete="off" spellcheck="false"
      placeholder=${f.hint ?? ''} aria-invalid=${invalid} aria-describedby=${told} .value=${live(value)} @input=${set}></div>`;
}

/** What, where, mend. @param {State} s */
const problems = (s) => html`
  <div id="log-problems" role="alert">${s.problems.length === 0 ? '' : html`
    <p><b>Nothing was written down.</b> What you typed is still here.</p>
    <ul>${s.problems.map((p) => html`<li><span class="what">${p.what}</span>
      ${p.where ? html`<span class="where">where: ${p.where}</span>` : ''}
      ${p.mend ? html`<span class="mend">mend: ${p.mend}</span>` : ''}</li>`)}</ul>`}</div>`;
