// @ts-check
import { html } from 'lit-html';
import { STANDING, doneIn, standing } from '../model/plan.js';
import { degrees, hours, kept, lower, percent } from '../model/numbers.js';
import { clockSeconds, dayClock } from '../model/time.js';
import { term } from './term.js';
/** @typedef {import('../model/plan.js').Row} Row */
/** @typedef {import('../model/plan.js').Wishes} Wishes */
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('./plan.js').Actions} Actions */

/** One window: what is done there, why, at what cost, and what else could be. @param {State} s @param {Row} row @param {Wishes} wishes @param {Actions} act */
export function windowView(s, row, wishes, act) {
  const done = doneIn(row, wishes);
  const known = s.page.assessment.windows.find((w) => w.id === row.window);
  const options = known?.options.filter((o) => row.options.includes(o.procedure)) ?? [];
  const adds = row.taken === null ? 'would add' : 'adds';
  return html`
    <section class="plan-window" id="plan-window" aria-labelledby="plan-window-title">
      <div class="heading"><h2 id="plan-window-title">${row.station}, ${dayClock(row.aos)}</h2>
        <span class="soft">${STANDING[standing(row, wishes)]}</span></div>
      <p class="legend">${term('aos')} ${clockSeconds(row.aos)}, culmination ${degrees(row.maxElevationDeg)} at ${clockSeconds(row.culmination)}, ${term('los')} ${clockSeconds(row.los)}.
        ${known ? html`<a href=${`#pass/${encodeURIComponent(row.window)}`}>The pass itself</a>` : ''}</p>
      ${row.available ? '' : html`<p class="objection">Not available: ${row.whyNotAvailable}</p>`}
      <p class="why-here">${kept(row.why)}</p>
      <p class="legend">${row.best === null ? 'Nothing is possible here.' : html`${row.title}: heard with ${percent(row.heard)}; it ${adds} ${points(row.adds)} to the chance by the end of the days ahead, for ${hours(row.costHours)} of people’s time.`}</p>
      <div class="turn acts">
        ${row.taken !== null && done === row.taken ? html`<button @click=${() => act.agree(row)} aria-pressed=${wishes.agreed.has(row.window) ? 'true' : 'false'}>${wishes.agreed.has(row.window) ? 'Accepted ✓' : 'Accept'} <kbd>a</kbd></button>` : ''}
        ${done === null ? html`<button ?disabled=${row.best === null} @click=${() => act.set(row, row.taken ?? row.best)}>Take it <kbd>t</kbd></button>`
          : html`<button @click=${() => act.set(row, null)}>Skip it <kbd>s</kbd></button>`}
        ${wishes.edits.has(row.window) ? html`<button @click=${() => act.set(row, row.taken)}>As proposed <kbd>u</kbd></button>` : ''}
      </div>
      ${row.cautions.length === 0 ? '' : html`<ul class="cautions-here">${row.cautions.map((c) => html`<li>${kept(c)}</li>`)}</ul>`}
      ${options.length === 0 ? '' : html`<div class="scroll" tabindex="0" role="group" aria-label="What could be done in this window"><table class="alternatives">
        <thead><tr><th scope="col">what could be done</th><th scope="col">here</th><th scope="col">by the end</th><th scope="col">time</th><th scope="col">${term('hazard')}</th><th scope="col"><span class="unseen">choose</span></th></tr></thead>
        <tbody>${options.map((o) => html`<tr class=${o.procedure === done ? 'done' : ''}>
          <th scope="row"><a href=${`#runbook/${o.procedure}`}>${o.title}</a></th><td>${percent(o.heardThisPass)}</td><td>${percent(o.heardByHorizon)}</td><td>${hours(o.costHours)}</td>
          <td>${o.reach === null ? '' : percent(o.hazard)}</td>
          <td>${o.procedure === done ? 'done here' : html`<button @click=${() => act.set(row, o.procedure)} aria-label=${`do this: ${lower(o.title)}`}>do this</button>`}</td></tr>`)}</tbody></table></div>`}
    </section>`;
}

/** 3.1 points, under 0.1 points @param {number} share */
export function points(share) {
  const value = 100 * Math.abs(share);
  const size = value > 0 && value < 0.1 ? 'under 0.1' : value.toFixed(1);
  return `${share < 0 ? '−' : ''}${size} points`;
}
