// @ts-check
import { html } from 'lit-html';
import { CASE_FILE } from '../api/plan.js';
import { drawCurve } from '../chart/curve.js';
import { drawDates } from '../chart/dates.js';
import { groups } from '../model/case.js';
import { capital, hours, kept, percent } from '../model/numbers.js';
import { date, day, month } from '../model/time.js';
import { problemList } from './problems.js';
/** @typedef {import('../model/case.js').Case} Case */
/** @typedef {import('../model/state.js').State} State */

/** The case for going on. @param {State} s @param {import('./plan.js').Mine} mine @param {import('./plan.js').Actions} act */
export function caseView(s, mine, act) {
  const c = mine.made;
  return html`
    <section id="plan-case" class="case" aria-labelledby="plan-case-title">
      <div class="heading"><h2 id="plan-case-title">The case for going on</h2>
        ${c ? html`<a href=${CASE_FILE} download>keep it as a page for the board</a>` : ''}</div>
      <p class="status" role="status">${mine.slow.made ? html`Following every cause over a year; a few seconds. <button @click=${act.dropCase}>stop</button>` : ''}</p>
      <div role="alert">${problemList(mine.caseProblems)}</div>
      ${c ? made(s, c) : mine.dropped ? html`<p><button @click=${act.askCase}>work it out</button></p>` : ''}
    </section>`;
}

/** @param {State} s @param {Case} c */
const made = (s, c) => html`
  <p class="why case-says">${kept(c.defensible)}</p>
  <div class="columns">
    <div>
      <h3>What effort finds</h3>
      <p class="legend">Weight found by ${day(c.until)} against people’s hours. Filled: the plan, ${hours(c.hours)}. ${c.effort.fromHours === null ? '' : html`Hollow: from there on ${hours(c.effort.perHours)} more add less than ${percent(c.effort.gain)}.`}
        Shaded: the next ten hours and the ten after them.</p>
      <div data-measure="curve">${drawCurve(c, s.widths.curve || 320)}</div>
      <p class="legend">A month after that at the same pace, ${hours(c.effort.monthHours)}, could add at most ${percent(c.effort.monthAtMost)}.</p>
      ${c.watch ? html`<h3>The cheapest watch to keep</h3><p>${c.watch.unattended ? html`${c.watch.station} records by itself in ${c.watch.windows} windows` : html`The best pass of each day at ${c.watch.station}, ${c.watch.windows} in all`}: ${hours(c.watch.hoursPerWeek)} of people’s time a week, and it hears it with ${percent(c.watch.found)}${c.watch.catches.length ? html`: ${c.watch.catches.map((p, i) => html`${i ? ', ' : ''}${p.title} ${percent(p.weight)}`)}` : ''}.</p>` : ''}
    </div>
    <div>
      <h3>What would have to be true</h3>
      <ul class="plain truths">${groups(c).map((g) => html`<li><b>${percent(g.weight)}</b><span>${g.sentence}.${g.parts.length ? html` <span class="soft">${g.parts.map((p, i) => html`${i ? ', ' : ''}${p.title} ${percent(p.weight)}`)}</span>` : ''}</span></li>`)}
        ${c.notWorkedOut > 0 ? html`<li><b>${percent(c.notWorkedOut)}</b><span>Three or more things are wrong at once. <span class="soft">That is not worked out.</span></span></li>` : ''}</ul>
    </div>
  </div>
  <h3>What time brings</h3>
  <div data-measure="dates">${drawDates(c, s.widths.dates || 320)}</div>
  <ul class="plain dated-list">${c.dates.map((d) => html`<li><b>${date(d.from)}${d.spreadDays >= 1 ? html` ± ${Math.round(d.spreadDays)} d` : ''}</b><span>${capital(d.what)}${d.weight ? html`: ${percent(d.weight)} more within reach` : ''}. <span class="soft">${capital(d.basis)}.${d.procedure ? html` <a href=${`#runbook/${d.procedure}`}>What to do meanwhile</a>` : ''}</span></span></li>`)}
    ${c.orbit ? html`<li><b>the last</b><span>From ${Math.round(c.orbit.heightKm)} km the orbit ends between ${month(c.orbit.early)} under an active Sun and ${c.orbit.late ? month(c.orbit.late) : 'more than a century from now'} under a quiet one${c.orbit.middle ? html`, in the mean ${month(c.orbit.middle)}` : ''}. <span class="soft">A simple estimate.</span></span></li>` : ''}</ul>
  <div class="columns even">
    <div><h3>What speaks for going on</h3>${list(c.goingOn)}</div>
    <div><h3>What speaks for stopping</h3>${list(c.stopping)}</div>
  </div>
  <h3>How far it hangs on what was assumed</h3>
  <div class="scroll" tabindex="0" role="group" aria-label="The chance found under other assumptions"><table>
    <thead><tr><th scope="col">assumption</th><th scope="col">one way</th><th scope="col">the other way</th></tr></thead>
    <tbody>${c.shifts.map((x) => html`<tr><th scope="row">${capital(x.assumption)}</th><td>${x.lowWords}: ${percent(x.low)}</td><td>${x.highWords}: ${percent(x.high)}</td></tr>`)}</tbody></table></div>
  <details><summary>What this rests on</summary><ul class="rests">${c.assumptions.map((a) => html`<li>${kept(a)}</li>`)}</ul></details>
  <p class="legend">This states a case; people decide.</p>`;

/** @param {string[]} sentences */
const list = (sentences) => sentences.length === 0 ? html`<p class="soft">Nothing in these numbers.</p>` : html`<ul class="rests">${sentences.map((t) => html`<li>${kept(t)}</li>`)}</ul>`;
