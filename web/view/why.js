// @ts-check
import { html } from 'lit-html';
import { SAID } from '../model/energy.js';
import { percent } from '../model/numbers.js';
import { dayClock, ms } from '../model/time.js';
import { problemList } from './problems.js';
/** @typedef {import('../model/energystate.js').EnergyState} EnergyState */
/** @typedef {import('../model/energystate.js').EnergyActions} EnergyActions */

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
          <ul class="reasons">${one.reasons.map((r) => html`
            <li><span class="share">${percent(r.share)}</span><span>${r.words}, <span class="soft">typically since ${dayClock(r.typicalSince)}</span>
              ${r.explanations.length === 0 ? '' : html`<span class="behind soft">${r.explanations.slice(0, 3).map((x) => `${x.title} ${percent(x.share)}`).join(' · ')}</span>`}
              <button type="button" aria-pressed=${e.trace?.member === r.member ? 'true' : 'false'} @click=${() => act.member(r.member)}>one such case, member ${r.member}</button></span></li>`)}</ul></li>`)}</ul>` : ''}
    </section>`;
}
