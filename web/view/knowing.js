// @ts-check
import { html } from 'lit-html';
import { hours, percent } from '../model/numbers.js';
import { day, ms } from '../model/time.js';
import { problemList } from './problems.js';
import { lastDay, recoveryPhrase } from './recovery.js';
/** @typedef {import('../model/state.js').State} State */

const LIKELY = 0.03;
const RECOVERIES = 4;
const FAR = 5;
const MOSTLY = 0.5;

/** @param {{title: string}[]} list */
const named = (list) => list.map((r) => r.title).join(', ');

/** Dates of return, the case for going on, and what the numbers leave out. @param {State} s @param {import('../model/state.js').NowActions} act */
export function knowing(s, act) {
  const a = s.page.assessment;
  const heavy = a.causes.filter((c) => c.posterior >= LIKELY).sort((x, y) => y.posterior - x.posterior);
  const returning = heavy.filter((c) => c.selfRecovery.probability >= LIKELY).slice(0, RECOVERIES);
  const dated = (/** @type {import('../model/types.js').Cause} */ c) => !c.selfRecovery.note.startsWith('never') && c.selfRecovery.note.includes(';');
  const rest = heavy.filter((c) => c.selfRecovery.probability < LIKELY);
  const late = rest.filter(dated).slice(0, RECOVERIES);
  const never = rest.filter((c) => !dated(c)).slice(0, RECOVERIES);
  return html`
    <section class="knowing">
      <h2>Worth knowing</h2>
      <ul>
        ${a.doubts.map((d) => html`<li class="warning">${d}</li>`)}
        ${returning.length === 0 ? '' : html`<li>By itself, before ${lastDay(a)}, it is audible again${returning.map((c, i) => html`${i ? ';' : ''}
          with <b>${c.title}</b> in ${recoveryPhrase(c.selfRecovery)}`)}.</li>`}
        ${late.map((c) => html`<li>With <b>${c.title}</b> ${c.selfRecovery.note}.</li>`)}
        ${never.length === 0 ? '' : html`<li>Hardly or never before then: ${never.map((c) => c.title).join(', ')}.</li>`}
        ${farAhead(s, act)}
        <li>The plan takes ${hours(a.plan.costHours)} of people’s time and hears it by ${lastDay(a)} with
          ${percent(a.plan.heardByHorizon)}${a.plan.upperBound >= a.plan.heardByHorizon ? `; no plan could exceed ${percent(a.plan.upperBound)}` : ''}.</li>
        ${goingOn(a.goingOn)}
        ${a.treeDisagreements.length === 0 ? '' : html`<li class="soft">The fault tree and the simulation disagree about ${a.treeDisagreements.map((d) => `${d.title} (tree: ${d.treeSilent ? 'silent' : 'audible'}; heard in ${Math.round(d.audibleShare * d.bodies)} of ${d.bodies} bodies)`).join(', ')}. The figures go by the simulation.</li>`}
        ${a.warnings.map((w) => html`<li class="warning">${w}</li>`)}
      </ul>
    </section>`;
}

/** Returns beyond the horizon, worked out when somebody asks. @param {State} s @param {import('../model/state.js').NowActions} act */
function farAhead(s, act) {
  const { look, asked, problems } = s.farAhead;
  if (look) {
    const back = look.returns.filter((r) => r.sending < MOSTLY && r.probability > 0);
    const sending = look.returns.filter((r) => r.sending >= MOSTLY);
    const none = look.returns.filter((r) => r.sending < MOSTLY && r.probability === 0);
    return html`<li class="far" role="status">Followed without any command until ${day(ms(look.until))} ${new Date(look.until).getUTCFullYear()}
      (some cases of each cause from 1 % on; a burst counts, heard or not)${back.slice(0, FAR).map((r, i) => html`${i ? ';' : ':'} with <b>${r.title}</b>, ${r.words}`)}.
      ${sending.length > 0 ? `Sends already, at least at times: ${named(sending)}.` : ''}
      ${none.length > 0 ? `Never: ${named(none)}.` : ''}</li>`;
  }
  return html`<li class="far"><button type="button" ?disabled=${asked} @click=${() => act.lookFar()}>follow them a year ahead</button>
    <span class="soft" role="status">${asked ? 'Following some cases of each cause…' : 'When do they send again by themselves? A few seconds.'}</span>${problemList(problems)}</li>`;
}

/** @param {{costHours: number, heard: number}[]} steps */
function goingOn(steps) {
  const far = steps.filter((g) => g.costHours > 0);
  if (far.length === 0) return '';
  const shown = far.length > 3 ? [far[0], far[Math.floor(far.length / 2)], far[far.length - 1]] : far;
  return html`<li>Going on: ${shown.map((g, i) => `${i ? ', ' : ''}with ${hours(g.costHours)}${i ? '' : ' of people’s time'} we hear it with ${percent(g.heard)}`)}.</li>`;
}
