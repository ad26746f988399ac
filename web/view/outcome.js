// @ts-check
import { html } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { OUTCOMES, spanOf } from '../model/outcome.js';
import { clockSeconds, ms } from '../model/time.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/passstate.js').PassState} PassState */
/** @typedef {import('../model/passstate.js').PassActions} PassActions */

/** Large buttons for what happened, and the few words that go with it. @param {State} s @param {PassState} p @param {import('../model/types.js').Window} w @param {PassActions} act */
export function outcome(s, p, w, act) {
  return html`
    <section class="outcome" id="pass-outcome" aria-labelledby="pass-happened">
      <h2 id="pass-happened">What happened</h2>
      <div class="outcomes">${OUTCOMES.map((o) => html`<button type="button" aria-pressed=${p.said.outcome === o.outcome ? 'true' : 'false'}
        @click=${() => act.say(o.outcome)}>${o.label}${s.keysOn ? html` <kbd>${o.letter}</kbd>` : ''}</button>`)}</div>
      ${p.said.outcome === '' ? html`<p class="soft">${s.keysOn ? html`<kbd>b</kbd> marks a burst, ` : ''}<button type="button" @click=${act.burst}>a burst now</button></p>` : form(s, p, w, act)}
      <p class="status" role="status">${s.written}</p>
    </section>`;
}

/** @param {State} s @param {PassState} p @param {import('../model/types.js').Window} w @param {PassActions} act */
function form(s, p, w, act) {
  const span = spanOf(w, s.now, s.page.clock.own);
  const said = p.said.outcome;
  return html`
    <form id="pass-write" novalidate @submit=${(/** @type {Event} */ e) => { e.preventDefault(); act.write(); }}>
      ${said === 'heard' ? html`${field(p, act, 'level', 'Level over noise, dB', 'decimal')}${field(p, act, 'frequency', 'Frequency, MHz', 'decimal')}` : ''}
      ${said === 'not-listened' ? field(p, act, 'why', 'Why', 'text') : ''}
      ${field(p, act, 'note', 'Remark', 'text')}
      ${field(p, act, 'who', 'Who', 'text')}
      ${span.early ? html`<p class="soft">It has not risen yet; this can be written down from ${clockSeconds(w.aos)} on.</p>`
        : html`<p class="soft">For ${clockSeconds(span.from)} to ${clockSeconds(span.to)}${span.to < ms(w.los) ? ', as the pass is not over' : ''}.</p>`}
      <div class="send"><button class="act" type="submit" ?disabled=${span.early}>write it down</button>
        <button type="button" @click=${act.cancel}>not this</button></div>
    </form>`;
}

/** @param {PassState} p @param {PassActions} act @param {'level'|'frequency'|'why'|'note'|'who'} key @param {string} label @param {string} mode */
const field = (p, act, key, label, mode) => html`
  <div class="field"><label for=${`pass-${key}`}>${label}</label>
    <input id=${`pass-${key}`} type="text" inputmode=${mode} autocomplete="off" spellcheck="false" .value=${live(p.said[key])}
      @input=${(/** @type {Event} */ e) => act.value(key, /** @type {HTMLInputElement} */ (e.target).value)}></div>`;
