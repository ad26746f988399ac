// @ts-check
import { html } from 'lit-html';
import { drawBit } from '../chart/bit.js';
import { drawMarks, drawMovement } from '../chart/movement.js';
import { drawReturn } from '../chart/return.js';
import { causeOf, gatesOver, inOrder, movesOf, offered } from '../model/causes.js';
import { LEAST_BITS, single } from '../model/fits.js';
import { capital, count, hours, lower, percent, percentError, signedBits } from '../model/numbers.js';
import { dayClock, ms } from '../model/time.js';
import { fact } from './causes.js';
import { problemList } from './problems.js';
import { recoverySentence } from './recovery.js';
import { term } from './term.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/types.js').Cause} Cause */
/** @typedef {{lookFar: () => void}} Actions */

/** A cause, one step away from every figure that names it. @param {State} s @param {Actions} act */
export function causeMain(s, act) {
  const a = s.page.assessment;
  const c = causeOf(a, s.rest);
  if (!c) {
    return html`<main class="cause"><section class="answer"><h1>No cause is called “${s.rest}”.</h1>
      <p class="why"><a href="#causes">All causes</a> stand in a list; this spacecraft may lack what it would take.</p></section></main>`;
  }
  return html`
    <main class="cause">
      ${way(s, c)}
      <section class="answer"><h1>${headline(c)}</h1><p class="why">${c.mechanism}</p></section>
      ${figures(c)}
      ${movement(s, c)}
      <div class="columns even">
        <div>${settle(s, c)}${procedures(s, c)}${anchor(c)}</div>
        <div>${returns(s, c, act)}${moved(s, c)}</div>
      </div>
    </main>`;
}

/** @param {State} s @param {Cause} c */
function way(s, c) {
  const all = inOrder(s.page.assessment);
  const at = all.findIndex((one) => one.id === c.id);
  const [before, after] = [all[at - 1], all[at + 1]];
  return html`<nav class="way-through" aria-label="Causes by weight">
    <a href="#causes">all causes</a> <span class="soft">${at + 1} of ${all.length} by weight</span>
    ${before ? html`<a href=${`#cause/${before.id}`}>before: ${before.title}</a>` : ''}
    ${after ? html`<a href=${`#cause/${after.id}`}>after: ${after.title}</a>` : ''}</nav>`;
}

/** @param {Cause} c */
function headline(c) {
  const ratio = c.posterior / Math.max(c.prior, 1e-9);
  const how = ratio > 1.25 ? `up from ${percent(c.prior)}` : ratio < 0.8 ? `down from ${percent(c.prior)}` : `as at the start, ${percent(c.prior)}`;
  return `${capital(c.title)}: ${percentError(c.posterior, c.error)}, ${how}.`;
}

/** @param {Cause} c */
const figures = (c) => html`<dl class="facts">
    ${fact(percent(c.prior), html`at the start, ${term('prior', 'prior')}`)}
    ${fact(percentError(c.posterior, c.error), html`begun by now, ${term('error', 'standard error')}`)}
    ${fact(`${percent(c.ifPriorHalved)} – ${percent(c.ifPriorDoubled)}`, 'had the prior been half, or double')}
    ${c.later >= 0.0005 ? fact(percent(c.later), 'still to come in its 30 days') : ''}
  </dl>`;

/** @param {State} s @param {Cause} c */
function movement(s, c) {
  const max = [0.1, 0.25, 0.5, 1].find((m) => m >= Math.max(c.prior, c.posterior + c.error, c.ifPriorDoubled)) ?? 1;
  const width = s.widths['cause-row'] || 300;
  return html`<section class="one-movement"><div data-measure="cause-row">${drawMarks(max, width)}${drawMovement(single(c), max, width)}</div></section>`;
}

/** @param {State} s @param {Cause} c */
function settle(s, c) {
  const a = s.page.assessment;
  const group = a.groups.find((g) => g.id === c.inseparableGroup);
  const others = (group?.causes ?? []).filter((id) => id !== c.id).flatMap((id) => causeOf(a, id) ?? []);
  const gates = gatesOver(a.tree, c.id);
  return html`
    <section id="causes-settle"><h2>What would settle it</h2>
      <dl class="settle">
        ${item('Would speak for it', c.detail.confirms || c.signature)}
        ${item('Would speak against it', c.detail.refutes)}
        ${item('Begins', c.detail.begins)}
        ${item('Ended by', c.detail.endedBy.length > 0 ? c.detail.endedBy.join('; or ') : 'nothing that is known')}
        ${group ? item('Not told apart from', html`${others.map((o, i) => html`${i ? ', ' : ''}<a href=${`#cause/${o.id}`}>${o.title}</a>`)}.
          ${group.separators.map((x) => html`<span class="separator"><b>${capital(x.means)}:</b> ${x.shows}${x.doesNot ? `; ${x.doesNot}` : ''}.</span>`)}`) : ''}
        ${gates.map((path) => item('In the tree', html`${path.map((g, i) => html`${i ? ' › ' : ''}${g.title}`)}`))}
      </dl></section>`;
}

/** @param {string} name @param {unknown} words */
const item = (name, words) => (words ? html`<div><dt>${name}</dt><dd>${words}</dd></div>` : '');

/** @param {State} s @param {Cause} c */
function procedures(s, c) {
  const a = s.page.assessment;
  return html`<section><h2>Procedures that address it</h2>
    ${c.detail.procedures.length === 0 ? html`<p>None of the mission’s procedures does. What is sent or listened to does not touch it.</p>` : html`
    <ul class="addressing">${c.detail.procedures.map((title) => {
      const there = offered(a, title);
      return html`<li><b>${there ? html`<a href=${`#runbook/${there.id}`}>${title}</a>` : title}</b>
        ${there ? html`<span>${there.option.reach === null && there.option.heardThisPass <= 0 ? 'nothing is sent or heard' : there.option.reach === null ? html`heard with ${percentError(there.option.heardThisPass, there.option.heardThisPassError)} at best` : html`${term('reach')} it with ${percent(there.option.reach)} at best, all causes counted`}
          (${there.window.station} ${dayClock(there.window.aos)}); ${term('hazard')} ${percent(there.hazards[0])}${there.hazards[1] > there.hazards[0] ? ` to ${percent(there.hazards[1])}` : ''};
          ${hours(there.option.costHours)} of people’s time; ${there.planned > 0 ? `planned ${count(there.planned, 'time', 'times').replace('one time', 'once')}` : 'not in the plan'}.</span>`
          : html`<span class="soft">at no window ahead.</span>`}</li>`;
    })}</ul>`}</section>`;
}

/** @param {Cause} c */
const anchor = (c) => html`<section><h2>Where its prior comes from</h2>
    <ul class="sources">${c.detail.sources.length === 0 ? html`<li>The mission’s file names no source.</li>` : c.detail.sources.map((one) => html`<li>${one}</li>`)}</ul>
    <p><a href=${`#setup/${c.id}`}>Try another prior</a> <span class="soft">on a copy, and see everything follow.</span></p></section>`;

/** @param {State} s @param {Cause} c @param {Actions} act */
function returns(s, c, act) {
  const a = s.page.assessment;
  const far = s.farAhead;
  const found = far.look?.returns.find((r) => r.cause === c.id);
  const width = s.widths['cause-return'] || 300;
  return html`<section><h2>By itself</h2>
    <p>${recoverySentence(c.selfRecovery, a)}</p>
    <div data-measure="cause-return">${c.selfRecovery.p10 ? drawReturn(c.selfRecovery, ms(a.now), a.horizonDays, width) : ''}</div>
    ${far.look ? html`<p role="status">${found ? `Far ahead: ${found.words}.` : 'Far ahead it was not followed: below 1 %.'}</p>` : html`
      <p><button type="button" ?disabled=${far.asked} @click=${() => act.lookFar()}>follow it a year ahead</button>
        <span class="soft" role="status">${far.asked ? 'Following some cases of each cause…' : 'without any command; a few seconds.'}</span></p>`}
    ${problemList(far.problems)}</section>`;
}

/** @param {State} s @param {Cause} c */
function moved(s, c) {
  const list = movesOf(s.page.assessment, c.id);
  const shown = list.filter((m) => Math.abs(m.bits) >= LEAST_BITS);
  return html`<section><h2>What moved it</h2>
    ${shown.length === 0 ? html`<p>No entry moved it by as much as ${LEAST_BITS} bit.</p>` : html`
    <p class="legend">${term('bit', 'Bits')} of odds by each entry, and the sum so far.</p>
    <div class="scroll" tabindex="0" role="region" aria-label="What moved ${lower(c.title)}"><table class="moves narrow"><thead><tr><th scope="col">entry</th><th scope="col">moved</th><th scope="col">so far</th></tr></thead>
      <tbody>${shown.map((m) => html`<tr><th scope="row"><a href=${`#record/${m.e.entry}`}>${m.e.entry}</a> ${m.e.title} <span class="soft">${dayClock(m.e.at)}</span></th>
        <td>${drawBit(m.bits)} <span>${signedBits(m.bits)}</span></td><td>${signedBits(m.sum)}</td></tr>`)}</tbody></table></div>
    ${list.length > shown.length ? html`<p class="soft">${count(list.length - shown.length, 'other entry', 'other entries')} hardly moved it.</p>` : ''}`}</section>`;
}
