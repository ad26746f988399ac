// @ts-check
import { html } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { drawOverview } from '../chart/overview.js';
import { drawRibbon } from '../chart/ribbon.js';
import { degrees, percent } from '../model/numbers.js';
import { chosen, summary, whole } from '../model/passes.js';
import { DAY, MINUTE, dayClock, ms } from '../model/time.js';
import { shownOption, stationsOf } from '../model/windows.js';
import { passTable } from './passtable.js';
import { term } from './term.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/passesstate.js').PassesState} PassesState */
/** @typedef {import('../model/passesstate.js').PassesActions} PassesActions */

const SPANS = /** @type {[number, string][]} */ ([[1, 'a day'], [3, 'three days'], [7, 'a week'], [0, 'all']]);

/** Every pass ahead. @param {State} s @param {PassesState} p @param {PassesActions} act */
export function passesMain(s, p, act) {
  const a = s.page.assessment;
  if (a.windows.length === 0) return empty(s);
  const windows = chosen(a.windows, p.filter, p.span);
  const minute = Math.floor(s.now / MINUTE);
  return html`
    <main id="passes-main" class="passes">
      <section class="answer"><h1>${sentence(s)}</h1></section>
      <div class="heading tools">
        <div class="turn">
          <fieldset class="themes"><legend class="unseen">How much time is shown</legend>
            ${SPANS.map(([days, label]) => html`<label><input type="radio" name="passes-span" .checked=${p.days === days} @change=${() => act.days(days)}><span>${label}</span></label>`)}</fieldset>
          <button type="button" @click=${() => act.turn(-1)} ?disabled=${p.span[0] <= whole(a)[0]}>earlier</button>
          <button type="button" @click=${() => act.turn(1)} ?disabled=${p.span[1] >= whole(a)[1]}>later</button>
        </div>
        <div class="turn">
          <label>station <select @change=${(/** @type {Event} */ e) => act.station(/** @type {HTMLSelectElement} */ (e.target).value)}>
            <option value="">all</option>${stationsOf(a.windows).map((name) => html`<option value=${name} ?selected=${name === p.filter.station}>${name}</option>`)}</select></label>
          <label><input type="checkbox" .checked=${p.filter.plannedOnly} @change=${() => act.plannedOnly(!p.filter.plannedOnly)}> planned only</label>
          <a href="/api/passes.csv" download>CSV</a> <a href="/api/passes.ics" download>calendar of the plan</a>
        </div>
      </div>
      <div class="ribbon-canvas" data-measure="ribbon" id="passes-ribbon">${guard([a, p.span[0], p.span[1], s.widths.ribbon, p.filter.station, p.filter.plannedOnly, minute],
        () => s.widths.ribbon ? drawRibbon({ a, windows, span: p.span, width: s.widths.ribbon, now: s.now }) : '')}</div>
      <div class="overview-canvas" data-measure="overview" role="slider" tabindex="0" aria-label="Time shown" aria-valuemin="0" aria-valuemax=${Math.round(a.horizonDays * 24)}
        aria-valuenow=${Math.round((p.span[0] - whole(a)[0]) / DAY * 24)} aria-valuetext=${`${dayClock(p.span[0])} to ${dayClock(p.span[1])}`}
        @pointerdown=${act.brush} @keydown=${act.key}>${guard([a, p.span[0], p.span[1], s.widths.overview],
        () => s.widths.overview ? drawOverview({ windows: a.windows, all: whole(a), span: p.span, width: s.widths.overview }) : '')}</div>
      <p class="legend">A reed is a pass: its height is the ${term('culmination')}, <b>filled</b> when planned. Beneath it, thin: ${term('beacon-on')}; thick: ${term('heard')}. Pale bands are sunlight on board.
        A cross: nobody may sit there then. Draw across the strip of days to come closer; arrow keys move, <kbd>+</kbd> and <kbd>−</kbd> zoom.</p>
      ${guard([a, windows.length, p.span[0], p.span[1], p.order.column, p.order.down, p.filter.station, p.filter.plannedOnly, minute], () => passTable(windows, p, act, s.now))}
    </main>`;
}

/** @param {State} s */
function sentence(s) {
  const ahead = s.page.assessment.windows.filter((w) => ms(w.los) > s.now);
  const { planned, all, best } = summary(ahead);
  const days = Math.round(s.page.assessment.horizonDays);
  if (!best) return `No station sees it within ${days} days.`;
  const which = `${best.station}, ${dayClock(best.aos)}, ${degrees(best.maxElevationDeg)}: we hear it with ${percent(shownOption(best)?.heardThisPass ?? 0)}`;
  return planned === 0 ? html`None of ${all} passes in ${days} days is planned. The best is ${which}.`
    : html`${planned} of ${all} passes in ${days} days are planned. <em>Best:</em> ${which}.`;
}

/** @param {State} s */
const empty = (s) => html`
  <main id="passes-main" class="passes"><section class="answer"><h1>No station sees it within ${Math.round(s.page.assessment.horizonDays)} days.</h1>
    <p class="why">Either every pass stays beneath the stations’ skylines, or the element sets end before. Look at <code>orbit.sources</code> and <code>stations</code> in
      mission.yaml; <code>hark passes MISSION</code> lists what is found, and a longer look ahead is <code>hark serve --days D</code>.</p></section></main>`;
