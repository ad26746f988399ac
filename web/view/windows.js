// @ts-check
import { html } from 'lit-html';
import { unsafeHTML } from 'lit-html/directives/unsafe-html.js';
import { clock, day, ms } from '../model/time.js';
import { degrees, hours, lower, percent, percentError, percentRange } from '../model/numbers.js';
import { next, shownOption } from '../model/windows.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/state.js').NowActions} Actions */
/** @typedef {import('../model/types.js').Window} Window */
/** @typedef {import('../model/types.js').Option} Option */

const FIRST = 6;

/** The plan's next windows, options one step away. @param {State} s @param {Actions} act */
export function windowsView(s, act) {
  const ahead = s.page.assessment.windows.filter((w) => ms(w.los) > s.now);
  const planned = ahead.filter((w) => w.planned !== null);
  const list = s.allWindows ? ahead : (planned.length > 0 ? planned : ahead).slice(0, FIRST);
  const chosen = ahead.find((w) => w.id === s.selected);
  const shown = chosen && !list.includes(chosen)
    ? [...list, chosen].sort((x, y) => ms(x.aos) - ms(y.aos)) : list;
  return html`
    <section class="windows">
      <div class="heading"><h2>${s.allWindows ? 'All windows' : 'The plan’s next windows'}</h2>
        <button type="button" @click=${() => act.allWindows(!s.allWindows)}>${s.allWindows ? 'only the plan' : `all ${ahead.length}`}</button></div>
      ${shown.length === 0 ? html`<p>No station sees it within the horizon.</p>` : html`
        <ol class="plain">${shown.map((w) => windowView(w, s, act))}</ol>`}
    </section>`;
}

/** @param {Window} w @param {State} s @param {Actions} act */
function windowView(w, s, act) {
  const option = shownOption(w);
  const isNext = next(s.page.assessment.windows, s.now)?.id === w.id;
  return html`
    <li><details class=${s.selected === w.id ? 'selected' : ''} data-window=${w.id} ?open=${s.opened.has(w.id)}
        @toggle=${(/** @type {Event} */ e) => act.opened(w.id, /** @type {HTMLDetailsElement} */ (e.target).open)}>
      <summary>
        <span class="when"><b>${clock(w.aos)}</b> <span class="soft">${isNext ? 'next, ' : ''}${day(w.aos)}</span></span>
        <span class="where">${w.station} ${degrees(w.maxElevationDeg)}${w.unattended ? html` <span class="soft">unattended</span>` : ''}</span>
        <span class="what">${w.planned ? option?.title : html`<span class="soft">nothing planned; best: ${lower(option?.title ?? '')}</span>`}</span>
        <span class="odds">${option ? percent(option.heardThisPass) : ''}<span class="unseen"> chance to hear it</span></span>
      </summary>
      <p class="soft">Beacon on ${percentError(w.beaconOn, w.beaconOnError)}, battery ${percentRange(w.socP25, w.socP75)}, ${sunrise(w)}. <a href=${`#pass/${encodeURIComponent(w.id)}`}>sit through it</a></p>
      <ol class="options">${[...w.options].sort((x, y) => x.rank - y.rank).map((o) => optionView(o, w, s, act))}</ol>
    </details></li>`;
}

/** @param {Window} w */
function sunrise(w) {
  const minutes = Math.round(w.minutesSinceSunrise);
  return minutes < 0 ? 'in shadow at its highest' : `${minutes} min after sunrise on board at its highest`;
}

/** @param {Option} o @param {Window} w @param {State} s @param {Actions} act */
const optionView = (o, w, s, act) => html`
  <li class=${o.procedure === w.planned ? 'taken' : ''}>
    <h4>${o.title}${o.procedure === w.planned ? html` <span class="mark">planned</span>` : ''}</h4>
    <p>${o.why}</p>
    <dl class="numbers">
      ${number('heard here', percentError(o.heardThisPass, o.heardThisPassError))}
      ${number('by the horizon', percent(o.heardByHorizon))}
      ${number('would tell', `${o.informationBits.toFixed(2)} bit`)}
      ${number('costs', hours(o.costHours))}
      ${number('hazard', percent(o.hazard))}
      ${o.reach === null ? '' : number('would reach', percent(o.reach))}
    </dl>
    ${procedure(o, w, s, act)}
  </li>`;

/** @param {string} name @param {string} value */
const number = (name, value) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`;

/** @param {Option} o @param {Window} w @param {State} s @param {Actions} act */
function procedure(o, w, s, act) {
  const text = s.procedures.get(o.procedure);
  return html`
    <details class="procedure" @toggle=${(/** @type {Event} */ e) => {
      e.stopPropagation();
      if (/** @type {HTMLDetailsElement} */ (e.target).open) act.procedure(o.procedure);
    }}>
      <summary>the procedure<span class="unseen"> for ${o.title} at ${clock(w.aos)}</span></summary>
      ${text === undefined ? html`<p class="soft">Fetching it…</p>` : unsafeHTML(text)}
    </details>`;
}
