// @ts-check
import { html } from 'lit-html';
import { formOf } from '../model/entry.js';
import { standings } from '../model/record.js';
import { dayClock } from '../model/time.js';
import { input, withStations } from './log.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/state.js').LogActions} Actions */
/** @typedef {import('../model/entry.js').Field} Field */

/** Fields that say where and when; the form itself asks for them in other ways. @type {Field[]} */
const PLACES = [
  { key: 'station', label: 'Station', type: 'choice' },
  { key: 'from', label: 'From, UTC', type: 'time' }, { key: 'to', label: 'To, UTC', type: 'time' }, { key: 'at', label: 'When, UTC', type: 'time' }];

/** Which entry is corrected, and every key of it as it stands now. @param {State} s @param {Actions} act */
export function correction(s, act) {
  const all = standings(s.page.journal);
  const entries = [...all.values()].reverse();
  const of = all.get(Number(s.draft.values.of));
  const withdrawn = s.draft.values.withdrawn ?? '';
  return html`
    ${input(s, act, { key: 'of', label: 'Entry', type: 'choice', choices: [['', 'choose one'],
      ...entries.map(({ entry: e }) => /** @type {[string, string]} */ ([String(e.number), `${e.number}: ${formOf(e.kind).label}, ${dayClock(e.at)}`]))] })}
    ${!of ? '' : html`
      <div class="field"><span></span><label class="own"><input type="checkbox" id="f-withdrawn" .checked=${withdrawn !== ''}
        @change=${(/** @type {Event} */ e) => act.value('withdrawn', /** @type {HTMLInputElement} */ (e.target).checked ? (of.withdrawn ? 'no' : 'yes') : '')}>
        ${of.withdrawn ? 'take it back in; it is withdrawn' : 'withdraw it altogether'}</label></div>
      ${withdrawn === 'yes' ? '' : html`<p class="soft hint">As it stands now. Change what was wrong; empty a field to take it away. The rest is left as it is.</p>
        ${fieldsOf(of.entry.kind, of.keys).map((f) => input(s, act, withStations(f, s)))}`}`}`;
}

/** The form's own fields for a kind, and what else the entry has. @param {string} kind @param {Record<string, string>} keys @returns {Field[]} */
function fieldsOf(kind, keys) {
  const form = formOf(kind);
  const places = PLACES.filter((f) => f.key in keys && !form.fields.some((own) => own.key === f.key));
  const known = [...places, ...form.fields.filter((f) => !f.more || f.key in keys)];
  const others = Object.keys(keys).filter((key) => !known.some((f) => f.key === key));
  return [...known, ...others.map((key) => /** @type {Field} */ ({ key, label: key, type: 'text' }))]
    .map((f) => ({ ...f, key: `new:${f.key}`, more: false }));
}
