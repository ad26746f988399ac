// @ts-check
import { html } from 'lit-html';
import { SAID } from '../model/energy.js';
import { count, percent } from '../model/numbers.js';
import { dayClock, ms } from '../model/time.js';
import { problemList } from './problems.js';
/** @typedef {import('../model/energystate.js').EnergyState} EnergyState */
/** @typedef {import('../model/energystate.js').EnergyActions} EnergyActions */
/** @typedef {import('../model/energy.js').Reason} Reason */

const NOTABLE = 0.005;
const LEAST = 0.001;

/** A state's first reason is always told. @param {Reason} r @param {number} i */
const notable = (r, i) => i === 0 || r.share >= NOTABLE;

/** What is wrong in those cases. @param {Reason} r */
const behind = (r) => r.explanations.filter((x, i) => i === 0 || x.share >= LEAST).slice(0, 3);

/** Why the bus is as it is at the cursor. @param {EnergyState} e @param {EnergyActions} act */
export function why(e, act) {
  const there = e.why;
  const stale = there && Math.abs(ms(there.time) - e.at) >= 1000;
  const most = there?.states[0]?.state;
  return html`
    <section class="why-there" aria-labelledby="energy-why" aria-busy=${stale || !there ? 'true' : 'false'}>
      <h2 id="energy-why">${most ? `Why is it ${most === 'off' ? 'off' : SAID[most]} here?` : 'Why?'} <span class="soft">${dayClock(e.at)}</span></h2>
      <p class="status" role="status">${e.slow.why ? 'Asking every case…' : ''}</p>
      <div role="alert">${problemList(e.whyProblems)}</div>
      ${there && e.whyProblems.length === 0 ? html`<ul class="rows states ${stale ? 'stale' : ''}" data-at=${there.time}>${there.states.map((one) => html`
        <li><p class="state"><b>${one.state}</b> <span>${percent(one.share)}</span></p>
          ${reasons(one.reasons.filter(notable), e, act)}
          ${one.reasons.every(notable) ? '' : html`<details class="rest"><summary>${count(one.reasons.filter((r, i) => !notable(r, i)).length, 'way', 'ways')} below 0.5 %</summary>
            ${reasons(one.reasons.filter((r, i) => !notable(r, i)), e, act)}</details>`}</li>`)}</ul>` : ''}
    </section>`;
}

/** @param {Reason[]} list @param {EnergyState} e @param {EnergyActions} act */
const reasons = (list, e, act) => html`<ul class="reasons">${list.map((r) => html`
            <li><span class="share">${percent(r.share)}</span><span>${r.words}, <span class="soft">typically since ${dayClock(r.typicalSince)}</span>
              ${behind(r).length === 0 ? '' : html`<span class="behind soft">${behind(r).map((x) => `${x.title} ${percent(x.share)}`).join(' · ')}</span>`}
              <button type="button" aria-pressed=${e.trace?.member === r.member ? 'true' : 'false'} @click=${() => act.member(r.member)}>one such case, member ${r.member}</button></span></li>`)}</ul>`;
