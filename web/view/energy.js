// @ts-check
import { html } from 'lit-html';
import { drawEnergy } from '../chart/energy.js';
import { drawYear } from '../chart/year.js';
import { SAID, nearestIndex, orbitAt, shownSpan } from '../model/energy.js';
import { degrees, percent, percentRange } from '../model/numbers.js';
import { dayClock, ms } from '../model/time.js';
import { problemList } from './problems.js';
import { story } from './story.js';
import { whatIf } from './whatif.js';
import { why } from './why.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/energystate.js').EnergyState} EnergyState */
/** @typedef {import('../model/energystate.js').EnergyActions} EnergyActions */
/** @typedef {import('../model/energy.js').Energy} Energy */
const SPANS = /** @type {[number, string][]} */ ([[1, 'one day'], [3, 'three days'], [0, 'all']]);

/** The electrical system. @param {State} s @param {EnergyActions} act */
export function energyMain(s, act) {
  const e = s.energy;
  const data = e.data;
  if (!data) {
    return html`<main id="energy-main"><h1>The electrical system</h1>
      <p class="why" role="status">${e.slow.report ? 'Working out charge, states and balance…' : ''}</p>${problemList(e.problems)}</main>`;
  }
  return html`
    <main id="energy-main">
      ${sentence(e, data)}
      ${figures(data)}
      ${whatIf(e, data, act, s.widths.movement ?? 260)}
      ${axis(s, data, act)}
      <div class="columns even">${why(e, act)}${story(e, act)}</div>
      ${year(data, s.widths.year)}
    </main>`;
}

/** @param {EnergyState} e @param {Energy} data */
function sentence(e, data) {
  const there = data.energy[nearestIndex(data.energy, ms(data.now))].states;
  const [state, share] = /** @type {[import('../model/energy.js').BusState, number][]} */ (Object.entries(there))
    .reduce((a, b) => (b[1] > a[1] ? b : a));
  const first = e.whyNow?.states.find((one) => one.state === state)?.reasons[0];
  return html`<section class="answer energy-answer">
    <h1>The bus is most likely ${SAID[state]} now: ${percent(share)} of what still fits.</h1>
    ${first ? html`<p class="why">Mostly because ${first.words}, typically on ${dayClock(first.typicalSince)}.
      ${first.explanations.length > 0 ? html`Behind it: ${first.explanations.slice(0, 2).map((x) => `${x.title} (${percent(x.share)})`).join(', ')}.` : ''}</p>` : ''}
  </section>`;
}

/** @param {Energy} data */
function figures(data) {
  const point = data.energy[nearestIndex(data.energy, ms(data.now))];
  const orbit = orbitAt(data.balance, ms(data.now));
  const sun = data.year[0];
  return html`<dl class="facts">
    ${fact(percent(point.socP50), `battery, half of the cases ${percentRange(point.socP25, point.socP75)}`)}
    ${orbit ? fact(signedWh(orbit.marginWh), `margin of this orbit: the arrays could give ${orbit.offeredWh.toFixed(2)}, used ${orbit.neededWh.toFixed(2)}`) : ''}
    ${orbit ? fact(carries(orbit), `safe all the time takes ${orbit.safeWh.toFixed(2)}\u00a0Wh an orbit, nominal ${orbit.nominalWh.toFixed(2)}`) : ''}
    ${sun ? fact(percent(sun.eclipseFraction), `in shadow${sun.longestShadowMinutes > 0 ? `, at most ${Math.round(sun.longestShadowMinutes)} min` : ''}; beta ${degreesRange(sun.betaLeastDeg, sun.betaMostDeg)}`) : ''}
  </dl>`;
}

/** What the arrays could carry all the time, on the mean. @param {import('../model/energy.js').Orbit} o */
const carries = (o) => (o.offeredWh >= o.nominalWh ? 'sun for nominal' : o.offeredWh >= o.safeWh ? 'sun for safe only' : 'too little sun for safe');

/** @param {string} value @param {string} name */
const fact = (value, name) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`;

/** @param {number} wh */
export const signedWh = (wh) => `${sign(Math.abs(wh) < 0.005 ? 0 : wh)}${Math.abs(wh).toFixed(2)}\u00a0Wh`;
/** @param {number} v */
const sign = (v) => (v < 0 ? '−' : v > 0 ? '+' : '');
/** @param {number} d */
const signedDegrees = (d) => `${d < 0 ? '−' : ''}${degrees(Math.abs(d))}`;
/** −12° to −10°, or 72° alone @param {number} a @param {number} b */
const degreesRange = (a, b) => (signedDegrees(a) === signedDegrees(b) ? signedDegrees(a) : `${signedDegrees(a)} to ${signedDegrees(b)}`);

/** @param {State} s @param {Energy} data @param {EnergyActions} act */
function axis(s, data, act) {
  const e = s.energy;
  const span = shownSpan(data, e.days, e.from);
  const whole = shownSpan(data, 0, 0);
  return html`
    <section class="axis" aria-labelledby="energy-axis">
      <div class="heading"><h2 id="energy-axis">Charge, bus and balance</h2>
        <div class="turn">
          <fieldset class="themes"><legend class="unseen">How much time is shown</legend>
            ${SPANS.map(([days, label]) => html`<label><input type="radio" name="span" value=${days} .checked=${e.days === days}
              @change=${() => act.days(days)}><span>${label}</span></label>`)}</fieldset>
          <button type="button" ?disabled=${span[0] <= whole[0]} @click=${() => act.turn(-1)}>a day earlier</button>
          <button type="button" ?disabled=${span[1] >= whole[1]} @click=${() => act.turn(1)}>a day later</button>
        </div></div>
      <div class="canvas energy-canvas" data-measure="energy">
        ${s.widths.energy ? html`<div class="cursor-ground" id="energy-cursor" role="slider" tabindex="0" aria-label="Time looked at"
          aria-valuemin=${whole[0] / 1000} aria-valuemax=${whole[1] / 1000} aria-valuenow=${Math.round(e.at / 1000)}
          aria-valuetext=${spoken(data, e.at)} @keydown=${act.key} @click=${act.point}>
          ${drawEnergy({ data, shadows: s.page.assessment.shadows, span, width: s.widths.energy, at: e.at, now: ms(data.now), other: e.other, trace: e.trace })}</div>` : ''}
      </div>
      <p class="readout-line">${spoken(data, e.at)}</p>
      <p class="legend">Click, or use the arrow keys, to ask why it is so at a time; page keys go from orbit to orbit.
        Darker bands are shadow on board. Battery: middle half and nine in ten of what is still possible, the line is the median.
        Bus, from above: <b>hatched</b> off, <b>dotted</b> starting up, <b>pale</b> safe, <b>deep</b> nominal.
        Per orbit: upwards what the arrays gave and, in outline, what more they could have given; downwards the loads and, hatched, the losses; the
        <b>tick</b> is what the battery gained. <b>Broken lines</b>: what safe and nominal mode would take all the time.
        ${e.other ? html`<b class="other-key">Coloured lines</b> are the other world: thin its middle half, thick its median; coloured ticks are what its battery gains.` : ''}
        ${e.trace ? html`The <b>dotted line</b> is member ${e.trace.member}.` : ''}</p>
    </section>`;
}

/** What stands at a time, in words. @param {Energy} data @param {number} at */
export function spoken(data, at) {
  const p = data.energy[nearestIndex(data.energy, at)];
  const o = orbitAt(data.balance, at);
  const balance = o ? `; this orbit: arrays gave ${o.arrayWh.toFixed(1)} of ${o.offeredWh.toFixed(1)} Wh, loads ${o.loadsWh.toFixed(1)}, losses ${o.lossesWh.toFixed(1)}, stored ${signedWh(o.storedWh)}, margin ${signedWh(o.marginWh)}` : '';
  return `${dayClock(at)}: battery ${percent(p.socP50)}, nine in ten ${percentRange(p.socP05, p.socP95)}; off ${percent(p.states.off)}, `
    + `boot ${percent(p.states.boot)}, safe ${percent(p.states.safe)}, nominal ${percent(p.states.nominal)}${balance}`;
}

/** @param {Energy} data @param {number|undefined} width */
const year = (data, width) => html`
  <section class="sun-year" aria-labelledby="energy-year">
    <h2 id="energy-year">A year of sunlight</h2>
    <p class="season-words">${data.seasons}</p>
    <div class="year-canvas" data-measure="year">${width && data.year.length > 0 ? drawYear(data.year, data.fullSun, width) : ''}</div>
    ${data.year.length === 0 ? '' : html`
      <p class="legend">Above: beta, the angle of the Sun over the plane of the orbit, as it ranges in each month. Below: the share of light
        lost to shadow. A pale band is a season of full sun; its edges are as wide as its dates are unsure.</p>
      <details><summary>the same as a table</summary><div class="scroll" tabindex="0" role="region" aria-label="Sunlight by month"><table>
        <thead><tr><th scope="col">from</th><th scope="col">beta</th><th scope="col">in shadow</th><th scope="col">longest shadow</th></tr></thead>
        <tbody>${data.year.map((m) => html`<tr><th scope="row">${dayClock(m.from)}</th><td>${degreesRange(m.betaLeastDeg, m.betaMostDeg)}</td>
          <td>${percent(m.eclipseFraction)}</td><td>${m.longestShadowMinutes.toFixed(1)} min</td></tr>`)}</tbody></table></div></details>`}
  </section>`;
