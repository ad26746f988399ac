// @ts-check
import { html } from 'lit-html';
import { drawDoppler } from '../chart/doppler.js';
import { age, candidates, end, leading, others, ruledOut } from '../model/orbit.js';
import { percent } from '../model/numbers.js';
import { dayClock } from '../model/time.js';
import { problemList } from './problems.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/orbit.js').Orbit} Orbit */
/** @typedef {import('../model/orbit.js').Curve} Curve */
/** @typedef {{data: Orbit|undefined, problems: import('../model/types.js').Problem[], slow: Record<string, boolean>}} Mine */

/** The page of orbits. @param {State} s @param {Mine} mine */
export function orbitMain(s, mine) {
  const { data } = mine;
  if (!data) {
    return html`<main class="orbit"><section class="answer"><h1>Orbits</h1>
      ${mine.problems.length > 0 ? problemList(mine.problems) : html`<p class="why">${mine.slow.orbit ? 'Holding curves against the candidates…' : ''}</p>`}</section></main>`;
  }
  if (data.objects.length === 0) {
    return html`<main class="orbit"><section class="answer" id="orbit-objects" tabindex="-1"><h1>Nothing is known of the orbits here.</h1></section></main>`;
  }
  return html`
    <main class="orbit">
      ${answer(s, data)}
      ${data.problems.length > 0 ? problemList(data.problems) : ''}
      ${data.curves.map((curve) => curveSection(s, curve))}
      ${objects(s, data)}
      ${inWords(data)}
    </main>`;
}

/** Does an entry of the record say so already? @param {State} s @param {string} object */
const logged = (s, object) => s.page.journal.some((e) => (e.kind === 'doppler' || e.kind === 'object') && e.keys?.object === object);

/** @param {State} s @param {Orbit} data */
function answer(s, data) {
  const found = data.curves.find((c) => c.verdict === 'found' && c.likeliest !== 'none');
  const own = candidates(data);
  if (!found) {
    const spreads = own.map((o) => o.alongTrackSdS);
    return html`<section class="answer"><h1>${own.length} candidates, known along the track to ${Math.min(...spreads).toFixed(1)} to ${Math.max(...spreads).toFixed(1)} s.</h1>
      <p class="why">${data.curves.length > 0 ? 'No Doppler curve tells which one it is yet.' : 'No Doppler curve lies in recordings/ that could tell which one it is.'}</p></section>`;
  }
  const top = leading(found, 1)[0];
  const out = ruledOut(found);
  return html`<section class="answer"><h1>The curve of ${dayClock(found.passes[0].from)} is object ${top.object}’s: ${percent(top.posterior)}.</h1>
    <p class="why">${out ? html`Object ${out.object}, which had ${percent(out.prior)}, is ruled out by it. ` : ''}${logged(s, top.object)
    ? 'The record says so, and every number counts it.'
    : html`It does not count yet: <code>hark whose MISSION recordings/${found.file} --log</code> writes it into the record.`}</p></section>`;
}

/** @param {State} s @param {Curve} curve */
function curveSection(s, curve) {
  const shown = leading(curve, curve.candidates.length).filter((c) => c.object !== 'none').slice(0, 4);
  return html`<section class="one-curve">
    <h2>recordings/${curve.file}</h2>
    <p class="soft">${curve.words}</p>
    ${curve.passes.map((pass) => html`<div class="curve-canvas" data-measure="curve">
      ${drawDoppler(pass, shown, s.widths.curve || 700)}</div>`)}
    <div class="scrolls" tabindex="0" role="region" aria-label="What the curve leaves of each candidate"><table class="suspects"><caption class="unseen">What the curve leaves of each candidate</caption>
      <thead><tr><th scope="col">object</th><th scope="col">before</th><th scope="col">with the curve</th><th scope="col">fits when it runs late by</th><th scope="col">believed</th><th scope="col">and misses by</th></tr></thead>
      <tbody>${leading(curve, curve.candidates.length).map((c) => html`<tr><th scope="row">${c.object}</th><td>${percent(c.prior)}</td><td>${percent(c.posterior)}</td>
        <td>${signed(c.lateS)} ± ${c.lateSdS.toFixed(1)} s</td><td>± ${c.believedSdS.toFixed(1)} s</td><td>${Math.round(c.missesHz)} Hz</td></tr>`)}</tbody></table></div>
  </section>`;
}

/** @param {number} v */
const signed = (v) => `${v < 0 ? '−' : '+'}${Math.abs(v).toFixed(1)}`;

/** @param {State} s @param {Orbit} data */
function objects(s, data) {
  const now = new Map(s.page.assessment.objects.map((o) => [o.object, o.posterior]));
  return html`<section id="orbit-objects" tabindex="-1"><h2>The candidates’ element sets</h2>
    <div class="scrolls" tabindex="0" role="region" aria-label="Element sets of the candidates"><table class="objects">
      <thead><tr><th scope="col">object</th><th scope="col">before</th><th scope="col">now</th><th scope="col">sets</th><th scope="col">newest</th>
        <th scope="col">along the track</th><th scope="col">sets disagree a day</th><th scope="col">sinks a day</th><th scope="col">comes down</th></tr></thead>
      <tbody>${candidates(data).map((o) => html`<tr><th scope="row">${o.object}</th><td>${percent(o.weight ?? 0)}</td><td>${percent(now.get(o.object) ?? 0)}</td>
        <td>${o.sets}${o.jumps > 0 ? html`, <b>${o.jumps} jump${o.jumps > 1 ? 's' : ''}</b>` : ''}</td><td>${age(o.ageHours)} old</td><td>± ${o.alongTrackSdS.toFixed(1)} s</td>
        <td>${o.measuredPerDayS === undefined ? '–' : `${o.measuredPerDayS.toFixed(1)} s`} <span class="soft">of ${o.believedPerDayS.toFixed(1)} s believed</span></td>
        <td>${o.sinksMPerDay > 0 ? `${Math.round(o.sinksMPerDay)} m from ${Math.round(o.heightKm)} km` : `not, at ${Math.round(o.heightKm)} km`}</td><td>${end(o)}</td></tr>`)}</tbody>
    </table></div>
    ${others(data).length > 0 ? html`<p class="soft">In the files, no candidates: ${others(data).map((o) => o.object).join(', ')}.</p>` : ''}
  </section>`;
}

/** @param {Orbit} data */
function inWords(data) {
  return html`<section><details><summary>The same in words</summary>
    <dl class="orbit-words">${candidates(data).map((o) => html`<div><dt>${o.object}</dt><dd>${o.words}</dd></div>`)}</dl></details></section>`;
}
