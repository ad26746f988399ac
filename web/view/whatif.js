// @ts-check
import { html } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { drawMovement } from '../chart/movement.js';
import { percent } from '../model/numbers.js';
import { problemList } from './problems.js';
/** @typedef {import('../model/energystate.js').EnergyState} EnergyState */
/** @typedef {import('../model/energystate.js').EnergyActions} EnergyActions */
/** @typedef {import('../model/energy.js').Side} Side */

/** @type {[string, (s: Side) => number][]} */
const ROWS = [['off until the horizon', (s) => s.states.off], ['safe', (s) => s.states.safe], ['nominal', (s) => s.states.nominal],
  ['beacon on', (s) => s.transmitting], ['battery at the horizon, median', (s) => s.socP50AtHorizon]];

/** Another number, and what it would come to. @param {EnergyState} e @param {import('../model/energy.js').Energy} data @param {EnergyActions} act @param {number} width */
export function whatIf(e, data, act, width) {
  const figure = data.numbers.find((n) => n.key === e.key);
  const wrong = e.whatIfProblems.length > 0;
  return html`
    <section class="what-if" aria-labelledby="energy-what-if">
      <h2 id="energy-what-if">What if</h2>
      <div class="ask">
        <label for="energy-key">number</label>
        <input id="energy-key" class="entry" list="energy-keys" autocomplete="off" spellcheck="false" .value=${live(e.key)}
          @focus=${(/** @type {FocusEvent} */ ev) => /** @type {HTMLInputElement} */ (ev.target).select()}
          @input=${(/** @type {Event} */ ev) => act.figure(/** @type {HTMLInputElement} */ (ev.target).value)}>
        <datalist id="energy-keys">${data.numbers.map((n) => html`<option value=${n.key}>${n.value} ${n.unit}</option>`)}</datalist>
        ${!figure ? '' : html`
          <input id="energy-slide" type="range" aria-label="its value, by slider" min=${figure.least} max=${figure.greatest} step=${figure.whole ? 1 : 'any'}
            .value=${live(Number.isFinite(Number(e.value)) && e.value.trim() !== '' ? e.value : String(figure.mean))}
            aria-valuetext=${`${e.value} ${figure.unit}`} @input=${(/** @type {Event} */ ev) => act.slide(Number(/** @type {HTMLInputElement} */ (ev.target).value))}>
          <label for="energy-value" class="unseen">its value</label>
          <span class="value"><input id="energy-value" class="entry" inputmode="decimal" autocomplete="off" .value=${live(e.value)}
            aria-invalid=${wrong ? 'true' : 'false'} aria-describedby="energy-span" @input=${(/** @type {Event} */ ev) => act.type(/** @type {HTMLInputElement} */ (ev.target).value)}> ${figure.unit}</span>
          <span id="energy-span" class="soft">it is ${figure.value}${figure.unit ? ` ${figure.unit}` : ''}; plausible ${short(figure.least)} to ${short(figure.greatest)}</span>
          <button type="button" ?disabled=${!e.other && !wrong} @click=${() => act.asItIs()}>as it is</button>`}
      </div>
      ${figure ? '' : html`<p class="soft">${e.key === '' ? 'Choose a number from the list, or type part of its name.' : `No number is called “${e.key}”; ${matching(e, data)}`}</p>`}
      <p class="status" role="status">${e.slow.whatIf ? 'Simulating the other world…' : ''}</p>
      <div role="alert">${problemList(e.whatIfProblems)}</div>
      ${!e.other || wrong ? '' : html`
        <p class="other-said" aria-live="polite">${e.other.whatIfChange.sentence}</p>
        <details><summary>from now to the horizon, hollow as it is, filled as it would be</summary>
        <ul class="rows changes-of">${ROWS.map(([name, of]) => row(name, of(e.other.whatIfChange.before), of(e.other.whatIfChange.after), width))}</ul>
        <p class="legend">${e.other.whatIfChange.basis}</p></details>`}
    </section>`;
}

/** @param {string} name @param {number} before @param {number} after @param {number} width */
const row = (name, before, after, width) => html`<li class="row"><span class="title">${name}</span>
  <span data-measure="movement">${drawMovement({ prior: before, now: after, error: 0 }, 1, width)}</span>
  <span class="figure">${percent(before)} → ${percent(after)}</span></li>`;

/** @param {EnergyState} e @param {import('../model/energy.js').Energy} data */
function matching(e, data) {
  const some = data.numbers.filter((n) => n.key.toLowerCase().includes(e.key.toLowerCase()));
  return some.length === 0 ? 'the list shows those there are.' : `${some.length} contain that: ${some.slice(0, 4).map((n) => n.key).join(', ')}${some.length > 4 ? '…' : '.'}`;
}

/** @param {number} v */
const short = (v) => String(Number(v.toPrecision(3)));
