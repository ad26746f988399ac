// @ts-check
import { html } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { CAUSES, perCent, priorKey } from '../model/setup.js';
import { count, percent, percentError } from '../model/numbers.js';
import { isChanged } from './setup.js';
import { problemList } from './problems.js';
import { term } from './term.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('./setup.js').Mine} Mine */
/** @typedef {import('./setup.js').Actions} Actions */
/** @typedef {import('../api/setup.js').Prior} Prior */
/** @typedef {import('../api/setup.js').Edit} Edit */

/** Causes below this weight stand folded. */
const SMALL = 0.01;

/** Other priors and numbers, and the button that works them out. @param {State} s @param {Mine} mine @param {Actions} act */
export function tryView(s, mine, act) {
  const priors = [...(mine.asIs?.mission?.causes ?? [])];
  const weight = new Map(s.page.assessment.causes.map((c) => [c.id, c]));
  priors.sort((x, y) => (weight.get(y.id)?.posterior ?? 0) - (weight.get(x.id)?.posterior ?? 0));
  const heavy = (/** @type {Prior} */ p) => (weight.get(p.id)?.posterior ?? 0) >= SMALL;
  const opened = priors.some((p) => !heavy(p) && p.id === s.rest);
  return html`
    <section id="setup-try" class="try" aria-labelledby="setup-try-title">
      <h2 id="setup-try-title">Try other numbers</h2>
      <div class="try-columns">
        <div><h3>${term('prior', 'Priors')} of the causes</h3>
          <p class="legend">Belief at separation that it happens within 30 days, in per cent; heaviest now first.</p>
          <ul class="priors">${priors.filter(heavy).map((p) => prior(p, weight.get(p.id), mine, act))}</ul>
          <details class="rest" ?open=${opened}><summary>${priors.length - priors.filter(heavy).length} more, each below 1 % now</summary>
            <ul class="priors">${priors.filter((p) => !heavy(p)).map((p) => prior(p, weight.get(p.id), mine, act))}</ul></details></div>
        <div>${anyKey(mine, act)}${changes(mine, act)}${run(mine, act)}</div>
      </div>
    </section>`;
}

/** @param {Prior} p @param {import('../model/types.js').Cause|undefined} c @param {Mine} mine @param {Actions} act */
function prior(p, c, mine, act) {
  const edit = mine.edits.find((e) => e.file === CAUSES && e.key === priorKey(p.id));
  const shown = edit ? shownShare(edit.value) : perCent(p.prior);
  return html`<li class=${edit ? 'edited' : ''}><label for=${`prior-${p.id}`}>${p.title}</label>
    <span class="value"><input id=${`prior-${p.id}`} class="entry" inputmode="decimal" autocomplete="off" .value=${live(shown)}
      @input=${(/** @type {Event} */ e) => act.prior(p.id, /** @type {HTMLInputElement} */ (e.target).value)}> %</span>
    <span class="soft">${edit ? html`was ${percent(p.prior)}` : c ? html`now ${percentError(c.posterior, c.error)}` : ''}</span></li>`;
}

/** What is no number stays as it was typed. @param {string} value */
const shownShare = (value) => (value !== '' && Number.isFinite(Number(value)) ? perCent(Number(value)) : value);

/** @param {Mine} mine @param {Actions} act */
function anyKey(mine, act) {
  const known = mine.now?.keys.find((k) => k.key === mine.key);
  return html`<h3>Any other key</h3>
    <form class="any-key" @submit=${(/** @type {Event} */ e) => { e.preventDefault(); act.setKey(); }}>
      <label for="setup-key">key</label>
      <input id="setup-key" class="entry" list="setup-keys" autocomplete="off" spellcheck="false" placeholder="spacecraft.battery.cell.capacity_Ah" .value=${live(mine.key)}
        @input=${(/** @type {Event} */ e) => act.pick(/** @type {HTMLInputElement} */ (e.target).value)}>
      <datalist id="setup-keys">${(mine.now?.keys ?? []).map((k) => html`<option value=${k.key}>${k.value} ${k.unit}</option>`)}</datalist>
      <label for="setup-value">value</label>
      <span class="value"><input id="setup-value" class="entry" autocomplete="off" spellcheck="false" .value=${live(mine.value)}
        @input=${(/** @type {Event} */ e) => act.value(/** @type {HTMLInputElement} */ (e.target).value)}> ${known?.unit ?? ''}</span>
      <button type="submit" ?disabled=${mine.key.trim() === '' || mine.value.trim() === ''}>set it</button>
      <p class="soft">${known ? html`It is ${known.value}${known.unit ? ` ${known.unit}` : ''}${known.line ? '' : ', by default'}${known.least === undefined ? '' : `; plausible ${short(known.least)} to ${short(known.greatest ?? NaN)}`}.`
        : 'As the file writes it: a number, a word, { mean: 0.8, sd: 0.06 }, [a, b]; null takes a key away.'}</p>
    </form>`;
}

/** @param {number} v */
const short = (v) => String(Number(v.toPrecision(3)));

/** @param {Mine} mine @param {Actions} act */
const changes = (mine, act) => html`
  <h3>Changed here</h3>
  ${mine.edits.length === 0 ? html`<p class="soft">${isChanged(mine) ? 'The text, by hand.' : 'Nothing yet.'}</p>` : html`
    <ul class="edits">${mine.edits.map((e) => html`<li><code>${e.key}</code> ${e.value} <button type="button" @click=${() => act.takeBack(e)}>take back<span class="unseen"> ${e.key}</span></button></li>`)}</ul>`}
  <div role="alert">${problemList(mine.editProblems)}</div>
  <p class="status" role="status">${mine.slow.check ? 'Reading the changed files…' : ''}</p>`;

/** @param {Mine} mine @param {Actions} act */
function run(mine, act) {
  const { job } = mine;
  const running = job !== undefined && job.problems.length === 0;
  const may = isChanged(mine) && mine.now?.problems.length === 0 && mine.editProblems.length === 0 && !running;
  return html`
    <div class="send"><button class="act" type="button" ?disabled=${!may} @click=${() => act.workOut()}>work it out</button>
      ${running ? html`<button type="button" @click=${() => act.stop()}>stop</button>` : ''}
      <button type="button" ?disabled=${!isChanged(mine) && mine.edits.length === 0} @click=${() => act.asItIs()}>all as it is</button></div>
    ${running ? html`<p class="progress" role="status"><progress aria-label="Working it out" max="1" value=${job.usual > 0 ? Math.min(0.98, job.seconds / job.usual) : 0}></progress>
      ${Math.round(job.seconds)} s${job.usual > 0 ? ` of about ${Math.max(1, Math.round(job.usual))} s, as the last one took` : ''}</p>` : ''}
    ${isChanged(mine) && (mine.now?.problems.length ?? 0) > 0 ? html`<p class="soft">Mend ${count(mine.now?.problems.length ?? 0, 'problem', 'problems')} below first.</p>` : ''}
    <div role="alert">${problemList(job?.problems ?? [])}</div>`;
}
