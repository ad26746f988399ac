// @ts-check
import { html } from 'lit-html';
import { hours, lower, percent } from '../model/numbers.js';
import { rows } from '../model/fits.js';
import { recoverySentence } from './recovery.js';
/** @typedef {import('../model/state.js').State} State */

const LIKELY = 0.03;
const UNEXPLAINED = 0.05;
const RECOVERIES = 4;

/** Dates of return, the case for going on, and what the numbers leave out. @param {State} s */
export function knowing(s) {
  const a = s.page.assessment;
  const returning = rows(a)
    .flatMap((r) => r.cause ?? [])
    .filter((c) => c.posterior >= LIKELY && c.selfRecovery.probability > 0)
    .slice(0, RECOVERIES);
  return html`
    <section class="knowing">
      <h2>Worth knowing</h2>
      <ul>
        ${a.misfit < UNEXPLAINED ? html`<li class="warning"><b>No possibility explains the record well</b>: only ${percent(a.misfit)} of
          what the model expects looks this odd. Doubt the figures here.</li>` : ''}
        ${returning.map((c) => html`<li>If it is <b>${c.title}</b>: ${lower(recoverySentence(c.selfRecovery, a.horizonDays))}</li>`)}
        <li>By this plan, ${hours(a.plan.costHours)} of people’s time, it is heard within ${a.horizonDays} days with
          ${percent(a.plan.heardByHorizon)}${a.plan.upperBound >= a.plan.heardByHorizon ? `; no plan does better than ${percent(a.plan.upperBound)}` : ''}.</li>
        ${goingOn(a.goingOn)}
        <li class="soft">Left out: three or more things wrong at once, ${percent(a.remainder)}, at most ${percent(a.remainderBound)}.</li>
        ${a.warnings.map((w) => html`<li class="warning">${w}</li>`)}
      </ul>
    </section>`;
}

/** @param {{costHours: number, heard: number}[]} steps */
function goingOn(steps) {
  const far = steps.filter((g) => g.costHours > 0);
  if (far.length === 0) return '';
  const shown = far.length > 3 ? [far[0], far[Math.floor(far.length / 2)], far[far.length - 1]] : far;
  return html`<li>Going on: ${shown.map((g, i) => `${i ? ', ' : ''}${hours(g.costHours)} of station time hear it with ${percent(g.heard)}`)}.</li>`;
}
