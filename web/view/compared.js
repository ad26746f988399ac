// @ts-check
import { html } from 'lit-html';
import { drawMarks, drawMovement } from '../chart/movement.js';
import { causesCompared, planCompared } from '../model/setup.js';
import { count, hours, kept, percent, percentError } from '../model/numbers.js';
import { dayClock } from '../model/time.js';
import { lastDay } from './recovery.js';
import { isStale } from './setup.js';
import { term } from './term.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/types.js').Assessment} Assessment */
/** @typedef {import('./setup.js').Mine} Mine */

const NAMED = 4;

/** As it is beside as it would be. @param {State} s @param {Mine} mine */
export function compared(s, mine) {
  const { result } = mine;
  if (!result) return '';
  const before = s.page.assessment;
  const { after } = result;
  const stale = isStale(mine) ? 'These figures are for numbers tried before; work it out again.'
    : result.revision !== s.page.revision ? 'The record has grown since; work it out again.' : '';
  return html`
    <section id="setup-compared" class="compared" aria-labelledby="setup-compared-title" aria-live="polite">
      <h2 id="setup-compared-title">What would follow</h2>
      ${stale ? html`<p class="stale"><b>${stale}</b></p>` : ''}
      <div class="two">${said('As it is', before)}${said('As it would be', after)}</div>
      ${causes(s, before, after)}
      ${plan(before, after)}
      <p class="soft">Same record, time, seed and number of bodies; worked out in ${Math.round(result.seconds)} s. Differences below the ${term('error', 'standard errors')} say nothing.</p>
    </section>`;
}

/** @param {string} name @param {Assessment} a */
const said = (name, a) => html`<div class="said"><h3>${name}</h3>
  <p class="headline">${kept(a.headline.action)}${a.headline.caution ? html` <em>${a.headline.caution}</em>` : ''}</p></div>`;

/** @param {State} s @param {Assessment} before @param {Assessment} after */
function causes(s, before, after) {
  const rows = causesCompared(before, after);
  const max = [0.1, 0.25, 0.5, 1].find((m) => m >= Math.max(...rows.flatMap((r) => [r.was.posterior, r.is.posterior + r.is.error]), 0.1)) ?? 1;
  const width = s.widths['setup-row'] || 300;
  return html`<h3>Causes</h3><p class="legend">Hollow: as it is. Filled: as it would be.</p>
    <div class="row head" aria-hidden="true"><span></span><span data-measure="setup-row">${drawMarks(max, width)}</span><span class="figure">as it is</span><span class="figure">would be</span></div>
    <ul class="rows">${rows.map((r) => html`<li class="row"><span class="title"><a href=${`#cause/${r.is.id}`}>${r.is.title}</a>${r.changed ? html` <span class="soft">prior ${percent(r.was.prior)} → ${percent(r.is.prior)}</span>` : ''}</span>
      ${drawMovement({ prior: r.was.posterior, now: r.is.posterior, error: r.is.error, band: null }, max, width)}
      <span class="figure soft"><span class="unseen">as it is </span>${percentError(r.was.posterior, r.was.error)}</span>
      <span class="figure"><span class="unseen">as it would be </span>${percentError(r.is.posterior, r.is.error)}</span></li>`)}</ul>`;
}

/** @param {Assessment} before @param {Assessment} after */
function plan(before, after) {
  const { kept: same, added, dropped } = planCompared(before, after);
  /** @type {[string, (a: Assessment) => string][]} */
  const lines = [
    [`heard by ${lastDay(before)}`, (a) => percent(a.plan.heardByHorizon)],
    ['people’s time', (a) => hours(a.plan.costHours)],
    ['windows planned', (a) => String(a.plan.choices.length)],
    ['battery now, median', (a) => percent(nowOf(a)?.socP50 ?? NaN)],
    ['nothing wrong, missed', (a) => percent(a.explanations.find((e) => e.events.length === 0)?.posterior ?? 0)],
    ['chance of a record as odd', (a) => percent(a.misfit)],
  ];
  return html`<h3>The plan and the rest</h3>
    <table><thead><tr><th scope="col"></th><th scope="col">as it is</th><th scope="col">would be</th></tr></thead>
      <tbody>${lines.map(([name, of]) => html`<tr><th scope="row">${name}</th><td>${of(before)}</td><td>${of(after)}</td></tr>`)}</tbody></table>
    <p>${count(same, 'choice of the plan stays', 'choices of the plan stay')}${added.length > 0 ? html`; new: ${choices(added, after)}` : ''}${dropped.length > 0 ? html`; gone: ${choices(dropped, before)}` : ''}.</p>`;
}

/** @param {Assessment} a */
const nowOf = (a) => a.energy.find((p) => Date.parse(p.time) >= Date.parse(a.now));

/** @param {{window: string, procedure: string}[]} list @param {Assessment} a */
function choices(list, a) {
  const words = list.slice(0, NAMED).map((c) => {
    const w = a.windows.find((one) => one.id === c.window);
    const title = w?.options.find((o) => o.procedure === c.procedure)?.title ?? c.procedure;
    return w ? `${title}, ${w.station} ${dayClock(w.aos)}` : title;
  });
  return `${words.join('; ')}${list.length > NAMED ? ` and ${list.length - NAMED} more` : ''}`;
}
