// @ts-check
import { html } from 'lit-html';
import { storyUntil } from '../model/energy.js';
import { percent } from '../model/numbers.js';
import { dayClock, ms } from '../model/time.js';
import { problemList } from './problems.js';
/** @typedef {import('../model/energystate.js').EnergyState} EnergyState */
/** @typedef {import('../model/energystate.js').EnergyActions} EnergyActions */

const SHOWN = 8;
const MOST = 60;

/** One member up to the cursor. @param {EnergyState} e @param {EnergyActions} act */
export function story(e, act) {
  const t = e.trace;
  if (!t) {
    return html`<section class="story" aria-labelledby="energy-story"><h2 id="energy-story">One case, step by step</h2>
      <p class="soft" role="status">${e.slow.member ? 'Following it from separation…' : 'Choose a case beside; its charge is then drawn over the others.'}</p>
      <div role="alert">${problemList(e.memberProblems)}</div></section>`;
  }
  const changes = storyUntil(t, e.at);
  return html`
    <section class="story" aria-labelledby="energy-story">
      <div class="heading"><h2 id="energy-story">Member ${t.member} up to ${dayClock(e.at)}</h2>
        <button type="button" @click=${() => act.member(0)}>put it away</button></div>
      <p class="soft">One of ${t.members.toLocaleString('en')}, ${percent(t.weight)} of all weight. Latest first.</p>
      ${t.events.length === 0 ? html`<p>Nothing is broken in it.</p>` : html`<ul class="events">${t.events.map((x) => html`
        <li><b>${x.title}</b> ${ms(x.onset) <= e.at ? `since ${dayClock(x.onset)}` : `from ${dayClock(x.onset)}, still to come`}${x.does ? `: ${x.does}` : ''}</li>`)}</ul>`}
      ${changes.length === 0 ? html`<p>It has not changed its state by then.</p>` : list(changes.slice(0, SHOWN))}
      ${changes.length > SHOWN ? html`<details class="rest"><summary>${changes.length - SHOWN} changes before these${changes.length > MOST ? `; the last ${MOST} are listed` : ''}</summary>
        ${list(changes.slice(SHOWN, MOST))}</details>` : ''}
    </section>`;
}

/** @param {import('../model/energy.js').Row[]} rows */
const list = (rows) => html`<ol class="plain changes">${rows.map((r) => html`
  <li><time datetime=${r.time}>${dayClock(r.time)}</time> <b>${r.state}</b>
    <span>${r.change}${r.soc === null ? '' : html` <span class="soft">at ${percent(r.soc)}</span>`}</span></li>`)}</ol>`;
