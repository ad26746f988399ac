// @ts-check
import { html } from 'lit-html';
import { drawMarks, drawMovement } from '../chart/movement.js';
import { answerOf } from '../model/causes.js';
import { named, rows, single, split } from '../model/fits.js';
import { capital, count, lower, percent, percentError } from '../model/numbers.js';
import { nuisances } from './fits.js';
import { moves } from './moves.js';
import { storiesView } from './stories.js';
import { term } from './term.js';
import { treeView } from './tree.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/fits.js').Row} Row */
/** @typedef {import('../model/types.js').Assessment} Assessment */
/** @typedef {{folded: Map<string, boolean>, entry: number}} Mine */
/** @typedef {{fold: (path: string, folded: boolean) => void, foldAll: (folded: boolean) => void, entry: (n: number) => void}} Actions */

/** The page of causes. @param {State} s @param {Mine} mine @param {Actions} act */
export function causesMain(s, mine, act) {
  const a = s.page.assessment;
  return html`
    <main class="causes">
      ${sentence(a)}
      ${figures(a)}
      ${list(s)}
      ${moves(s, mine, act)}
      ${treeView(s, mine, act)}
      <section class="besides">${nuisances(s, s.widths['causes-row'] || 300)}</section>
    </main>`;
}

/** @param {Assessment} a */
function sentence(a) {
  const { first, next, together } = answerOf(a);
  if (!first) return html`<section class="answer"><h1>Nothing is believed yet.</h1></section>`;
  const many = first.members.length > 1;
  return html`
    <section class="answer" aria-live="polite" aria-atomic="true">
      <h1>${many ? html`One of ${first.members.length} causes that listening cannot tell apart fits best: ${percentError(first.now, first.error)}.`
        : html`${capital(first.title)} fits best: ${percentError(first.now, first.error)}.`}</h1>
      <p class="why">${next.length === 0 ? 'Nothing else reaches 5 %.' : html`Then ${next.map((r, i) => html`${i ? ', ' : ''}${r.members.length > 1 ? `one of ${r.members.length} that look alike` : lower(r.title)} ${percent(r.now)}`)}.`}
        ${together.map((g) => html` Listening cannot separate ${named(g.members.map((c) => lower(c.title)))}, together ${percent(g.now)}${g.separators[0] ? `; ${g.separators[0].means} would` : ''}.`)}
        ${first.tell ? html` What would tell of the first: ${first.tell}.` : ''}</p>
    </section>`;
}

/** @param {Assessment} a */
function figures(a) {
  const alive = rows(a).filter((r) => r.now >= 0.01).length;
  const nothing = a.explanations.find((e) => e.events.length === 0);
  return html`<dl class="facts">
    ${fact(String(alive), 'still reach 1 %')}
    ${nothing ? fact(percentError(nothing.posterior, nothing.error), 'nothing wrong, missed') : ''}
    ${fact(percent(a.misfit), html`chance of a record as odd as this, ${term('misfit')}`)}
    ${fact(percent(a.remainder), html`three things or more at once, ${term('remainder')}`)}
  </dl>`;
}

/** @param {string} value @param {unknown} name */
export const fact = (value, name) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`;

/** From the start to now. @param {State} s */
function list(s) {
  const { large, small } = split(rows(s.page.assessment));
  const max = [0.1, 0.25, 0.5, 1].find((m) => m >= Math.max(...large.flatMap((r) => [r.prior, r.now + r.error]), 0.1)) ?? 1;
  const width = s.widths['causes-row'] || 300;
  return html`
    <section id="causes-list" class="from-to" aria-labelledby="causes-list-title">
      <h2 id="causes-list-title">From the start to now</h2>
      <p class="legend">Hollow: ${term('prior', 'where we began')}. Filled: ${term('posterior', 'where we are')}. Thick stroke: ${term('error', 'standard error')}.
        Bracket: had the prior been half or double. The small end is stretched. A name opens the cause’s own page.</p>
      <div class="row head" aria-hidden="true"><span></span><span data-measure="causes-row">${drawMarks(max, width)}</span><span class="figure">start</span><span class="figure">now</span><span class="figure band">half to double</span></div>
      <ul class="rows">${large.map((r) => rowView(r, max, width))}</ul>
      ${small.length === 0 ? '' : html`<details class="rest"><summary>${small.length} more, each below 1 % now</summary>
        <ul class="rows">${small.map((r) => rowView(r, max, width))}</ul></details>`}
      ${storiesView(s.page.assessment)}
    </section>`;
}

/** @param {Row} r @param {number} max @param {number} width */
const rowView = (r, max, width) => html`
  <li>${line(r, max, width)}
    ${r.members.length === 0 ? '' : html`<div class="group"><details><summary>Each entry is as likely under one as under the other; what would separate them</summary>
        <ul class="separators">${r.separators.map((x) => html`<li><b>${capital(x.means)}:</b> ${x.shows}${x.doesNot ? `; ${x.doesNot}` : ''}.</li>`)}</ul></details>
      <ul class="rows">${r.members.map((c) => html`<li>${line(single(c), max, width)}</li>`)}</ul></div>`}</li>`;

/** @param {Row} r @param {number} max @param {number} width */
const line = (r, max, width) => html`
  <div class="row"><span class="title">${r.cause ? html`<a href=${`#cause/${r.id}`}>${r.title}</a>` : r.members.length > 0 ? `${count(r.members.length, 'cause', 'causes')} that cannot be told apart` : r.title}</span>
    ${drawMovement(r, max, width)}
    <span class="figure start"><span class="unseen">at the start </span>${percent(r.prior)}</span>
    <span class="figure"><span class="unseen">now </span>${percentError(r.now, r.error)}</span>
    <span class="figure band">${r.band ? html`<span class="unseen">with half or double the prior </span>${percent(r.band[0])} – ${percent(r.band[1])}` : ''}</span></div>`;
