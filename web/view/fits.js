// @ts-check
import { html } from 'lit-html';
import { drawMarks, drawMovement } from '../chart/movement.js';
import { percent, percentError } from '../model/numbers.js';
import { named, rows, single, split } from '../model/fits.js';
import { particulars } from './cause.js';
import { storiesView } from './stories.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/fits.js').Row} Row */

/** What still fits, as movement from the start to now. @param {State} s */
export function fits(s) {
  const a = s.page.assessment;
  const { large, small } = split(rows(a));
  const max = scaleEnd(Math.max(...large.flatMap((r) => [r.prior, r.now + r.error]), 0.1));
  const width = s.widths.movement || 300;
  return html`
    <section class="fits" data-step="4">
      <h2>What still fits</h2>
      <p class="legend">Hollow: where we began. Filled: where we are. Thick stroke: standard error of the sampling; its figure stands behind ± from
        half a point on. Bracket: with half and with double the prior. The small end is stretched.</p>
      <div class="row head" aria-hidden="true"><span></span><span data-measure="movement">${drawMarks(max, width)}</span><span></span></div>
      <ul class="rows">${large.map((r) => rowView(r, max, width, s))}</ul>
      ${small.length > 0 ? html`
        <details class="rest"><summary>${small.length} more, each below 1 % now</summary>
          <ul class="rows">${small.map((r) => rowView(r, max, width, s))}</ul></details>` : ''}
      ${storiesView(a)}
      ${nuisances(s, width)}
    </section>`;
}

/** The next round end of the scale. @param {number} most */
const scaleEnd = (most) => [0.1, 0.25, 0.5, 1].find((m) => m >= most) ?? 1;

/** @param {Row} r @param {number} max @param {number} width @param {State} s */
function rowView(r, max, width, s) {
  const group = r.members.length > 0;
  return html`
    <li><details>
      <summary class="row">
        <span class="title">${r.title}${group ? html` <span class="together">${named(r.members.map((c) => c.title))}</span>` : ''}</span>
        ${drawMovement(r, max, width)}
        ${figure(r, s)}
      </summary>
      <div class="inside">
        ${r.tell ? html`<p><b>What would tell:</b> ${r.tell}.</p>` : ''}
        ${r.cause ? particulars(r.cause, s) : ''}
        ${group ? html`
          <p>Silence looks the same under each of them, so their odds stay as they were at separation. What would separate them:</p>
          <ul class="separators">${r.separators.map((one) => html`<li><b>${one.means}:</b>
            ${one.shows}${one.doesNot ? `; ${one.doesNot}` : ''}.</li>`)}</ul>
          <ul class="rows">${r.members.map((c) => memberRow(single(c), max, width, s))}</ul>` : ''}
      </div>
    </details></li>`;
}

/** @param {Row} r @param {number} max @param {number} width @param {State} s */
const memberView = (r, max, width, s) => html`
  <li class="member"><div class="row"><span class="title">${r.title}</span>${drawMovement(r, max, width)}${figure(r, s)}</div></li>`;

/** A cause of a group, with its own particulars. @param {Row} r @param {number} max @param {number} width @param {State} s */
const memberRow = (r, max, width, s) => html`
  <li class="member"><details>
    <summary class="row"><span class="title">${r.title}</span>${drawMovement(r, max, width)}${figure(r, s)}</summary>
    <div class="inside"><p><b>What would tell:</b> ${r.tell}.</p>${r.cause ? particulars(r.cause, s) : ''}</div>
  </details></li>`;

/** @param {Row} r @param {State} s */
function figure(r, s) {
  const value = percentError(r.now, r.error);
  const id = `row-${r.id}`;
  const changed = s.before[id] !== undefined && s.before[id] !== value;
  s.shown[id] = value;
  return html`<span class="figure"><span class="unseen">at the start ${percent(r.prior)}, now</span>
    <span data-fact=${id} class=${changed ? 'changed' : ''}>${value}</span></span>`;
}

/** Whose signal, and whether the stations work. @param {State} s @param {number} width */
export function nuisances(s, width) {
  const a = s.page.assessment;
  const objects = a.objects.map((o) => bare(`object-${o.object}`,
    o.object === 'none' ? o.name : `it is ${o.name || o.object}`, o.prior, o.posterior));
  const stations = a.stations.map((t) => bare(`station-${t.station}`,
    `${t.station} works${t.faults.length > 0 ? `; if not, most likely: ${t.faults[0].title}` : ''}`, t.prior, t.works));
  if (objects.length + stations.length === 0) return '';
  return html`
    <h3>Which object, and whether we can hear</h3>
    <div class="row head" aria-hidden="true"><span></span>${drawMarks(1, width)}<span></span></div>
    <ul class="rows">${[...objects, ...stations].map((r) => memberView(r, 1, width, s))}</ul>`;
}

/** @param {string} id @param {string} title @param {number} prior @param {number} now @returns {Row} */
const bare = (id, title, prior, now) =>
  ({ id, title, prior, now, error: 0, tell: '', members: [], cause: null, separators: [], band: null });
