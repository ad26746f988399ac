// @ts-check
import { html } from 'lit-html';
import { hours, percent } from '../model/numbers.js';
import { lastDay, recoveryPhrase } from './recovery.js';
/** @typedef {import('../model/state.js').State} State */

const LIKELY = 0.03;
const UNEXPLAINED = 0.05;
const RECOVERIES = 4;

/** Dates of return, the case for going on, and what the numbers leave out. @param {State} s */
export function knowing(s) {
  const a = s.page.assessment;
  const heavy = a.causes.filter((c) => c.posterior >= LIKELY).sort((x, y) => y.posterior - x.posterior);
  const returning = heavy.filter((c) => c.selfRecovery.probability >= LIKELY).slice(0, RECOVERIES);
  const never = heavy.filter((c) => c.selfRecovery.probability < LIKELY).slice(0, RECOVERIES);
  return html`
    <section class="knowing">
      <h2>Worth knowing</h2>
      <ul>
        ${a.misfit < UNEXPLAINED ? html`<li class="warning"><b>No possibility explains the record well</b>: only ${percent(a.misfit)} of
          what the model expects looks this odd. Doubt the figures here.</li>` : ''}
        ${returning.length === 0 ? '' : html`<li>By itself, before ${lastDay(a)}, it is audible again${returning.map((c, i) => html`${i ? ';' : ''}
          with <b>${c.title}</b> in ${recoveryPhrase(c.selfRecovery)}`)}.</li>`}
        ${never.length === 0 ? '' : html`<li>Hardly or never before then: ${never.map((c) => c.title).join(', ')}.</li>`}
        <li>The plan takes ${hours(a.plan.costHours)} of people’s time and hears it by ${lastDay(a)} with
          ${percent(a.plan.heardByHorizon)}${a.plan.upperBound >= a.plan.heardByHorizon ? `; no plan could exceed ${percent(a.plan.upperBound)}` : ''}.</li>
        ${goingOn(a.goingOn)}
        <li class="soft">Not worked out: three or more things wrong at once, probably ${percent(a.remainder)}, at most ${percent(a.remainderBound)}.</li>
        ${a.warnings.map((w) => html`<li class="warning">${w}</li>`)}
      </ul>
    </section>`;
}

/** @param {{costHours: number, heard: number}[]} steps */
function goingOn(steps) {
  const far = steps.filter((g) => g.costHours > 0);
  if (far.length === 0) return '';
  const shown = far.length > 3 ? [far[0], far[Math.floor(far.length / 2)], far[far.length - 1]] : far;
  return html`<li>Going on: ${shown.map((g, i) => `${i ? ', ' : ''}with ${hours(g.costHours)}${i ? '' : ' of people’s time'} we hear it with ${percent(g.heard)}`)}.</li>`;
}
