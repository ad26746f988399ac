// @ts-check
import { html } from 'lit-html';
import { groupName, groupsOf, spoken, within } from '../model/setup.js';
/** @typedef {import('./setup.js').Mine} Mine */
/** @typedef {import('./setup.js').Actions} Actions */
/** @typedef {import('../api/setup.js').SetUp} SetUp */
/** @typedef {import('../api/setup.js').Key} Key */

/** Everything the mission file says, and what is taken where it says nothing. @param {Mine} mine @param {SetUp} now @param {Actions} act */
export function keysView(mine, now, act) {
  const groups = groupsOf(now.keys, mine.words);
  const on = mine.words.trim() !== '';
  return html`
    <section id="setup-keys-list" class="keys-of" aria-labelledby="setup-keys-title">
      <div class="heading"><h2 id="setup-keys-title">What the mission file says</h2>
        <label class="soft">look for <input class="entry" id="setup-words" type="search" autocomplete="off" .value=${mine.words}
          @input=${(/** @type {Event} */ e) => act.words(/** @type {HTMLInputElement} */ (e.target).value)}></label></div>
      <p class="legend">A value in brackets is a default: the file does not say it. ± is a standard deviation; “times or over” a factor either way. A name puts the key into the form above.</p>
      ${groups.size === 0 ? html`<p class="soft">No key is like that.</p>` : ''}
      <div class="groups">${[...groups].map(([group, keys]) => html`
        <details class="group-of" ?open=${on}><summary><b>${groupName(group)}</b> <span class="soft">${keys.length}${defaults(keys)}</span></summary>
          <dl>${keys.map((k) => key(k, group, now, act))}</dl></details>`)}</div>
    </section>`;
}

/** @param {Key[]} keys */
function defaults(keys) {
  const n = keys.filter((k) => k.line === 0).length;
  return n > 0 ? `, ${n} by default` : '';
}

/** @param {Key} k @param {string} group @param {SetUp} now @param {Actions} act */
const key = (k, group, now, act) => html`<div><dt><button type="button" @click=${() => { act.pick(k.key, k.value); document.getElementById('setup-value')?.focus(); }}>${within(k.key, group).replaceAll('_', ' ').replaceAll('.', ' · ')}</button></dt>
  <dd>${k.line ? spoken(k.value) : html`(${spoken(k.value)})<span class="unseen"> by default</span>`}${k.unit ? html` <span class="soft">${k.unit}</span>` : ''}${now.notComputed.includes(k.key) ? html` <span class="soft">nothing is computed from it yet</span>` : ''}</dd></div>`;
