// @ts-check
import { html } from 'lit-html';
import { answer } from './answer.js';
import { dayView } from './day.js';
import { energyMain } from './energy.js';
import { facts } from './facts.js';
import { fits } from './fits.js';
import { knowing } from './knowing.js';
import { log } from './log.js';
import { masthead } from './masthead.js';
import { movedTable } from './moved.js';
import { pointing } from './pointing.js';
import { record } from './record.js';
import { since } from './since.js';
import { windowsView } from './windows.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/state.js').Actions} Actions */

/** @typedef {import('../model/energystate.js').EnergyActions} EnergyActions */

/** The page looked at. @param {State} s @param {Actions} act @param {EnergyActions} energyAct */
export const page = (s, act, energyAct) => html`
  <a class="skip" href=${s.view === 'energy' ? '#energy-axis' : '#log-title'}>${s.view === 'energy' ? 'to the battery' : 'to the form'}</a>
  ${masthead(s, act)}
  ${s.view === 'energy' ? energyMain(s, energyAct) : nowMain(s, act)}
  ${footer(s)}`;

/** What to do next and why. @param {State} s @param {Actions} act */
const nowMain = (s, act) => html`
  <main>
    <div class="top"><div>${answer(s)}${facts(s)}</div>${pointing(s)}</div>
    <div class="below"><p class="status" role="status">${s.written} ${s.status}</p>
      <a href="#log-title">write down what happened</a></div>
    ${dayView(s, act)}
    <div class="columns">
      ${fits(s)}
      <div>${since(s)}${knowing(s, act)}</div>
    </div>
    ${movedTable(s.page.assessment)}
    <div class="columns even">
      ${windowsView(s, act)}
      <div>${log(s, act)}${record(s)}</div>
    </div>
  </main>`;

/** @param {State} s */
const footer = (s) => html`
  <footer>
    <p>${s.page.assessment.members.toLocaleString('en')} simulated bodies, seed ${s.page.assessment.seed}, revision ${s.page.revision}.
      Hark never transmits and drives no hardware by itself. Whether to send is for the licence holder to decide, under the
      rules of the place.</p>
  </footer>`;
