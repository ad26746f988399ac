// @ts-check
import { html } from 'lit-html';
import { NARROW, drawCalendar } from '../chart/calendar.js';
import { STANDING, doneIn, nextDone, standing } from '../model/plan.js';
import { capital, count, degrees, hours, kept, lower, percent, percentError } from '../model/numbers.js';
import { day, dayClock } from '../model/time.js';
import { stationsOf } from '../model/windows.js';
import { caseView } from './plancase.js';
import { points, windowView } from './planwindow.js';
import { problemList } from './problems.js';
import { term } from './term.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/types.js').Problem} Problem */
/** @typedef {import('../model/plan.js').Plan} Plan */
/** @typedef {import('../model/plan.js').Row} Row */
/** @typedef {{plan: Plan|undefined, trial: import('../model/plan.js').Trial|undefined, wishes: import('../model/plan.js').Wishes,
 *   chosen: string|undefined, pulled: {id: string, by: number}|undefined, problems: Problem[], trialProblems: Problem[],
 *   made: import('../model/case.js').Case|undefined, caseProblems: Problem[], dropped: boolean, slow: Record<string, boolean>}} Mine */
/** @typedef {{choose: (id: string) => void, set: (row: Row, procedure: string|null) => void, agree: (row: Row) => void, undo: () => void,
 *   press: (ev: PointerEvent, row: Row) => void, key: (ev: KeyboardEvent, row: Row) => void, dropCase: () => void, askCase: () => void}} Actions */

/** The plan. @param {State} s @param {Mine} mine @param {Actions} act */
export function planMain(s, mine, act) {
  const plan = mine.plan;
  const row = plan?.windows.find((w) => w.window === mine.chosen);
  return html`
    <main class="plan">
      ${sentence(s, mine)}
      <div role="alert">${problemList([...mine.problems, ...mine.trialProblems])}</div>
      <p class="status" role="status">${mine.slow.plan ? 'Fetching the plan…' : mine.slow.trial ? 'Weighing your changes…' : ''}</p>
      ${plan ? html`
        ${figures(plan, mine)}
        ${changes(mine, act)}
        <section aria-labelledby="plan-calendar-title" id="plan-calendar">
          <div class="heading"><h2 id="plan-calendar-title">The days ahead</h2>${weeks(mine.trial?.weeks ?? plan.weeks)}</div>
          <p class="legend">A reed is a pass: its height the culmination, filled what is done. Pull it up to take it, down to skip it, or use <kbd>t</kbd> and <kbd>s</kbd>. Underlined is your change; a tick is accepted. Hours are UTC.${(s.widths.plan || 320) < NARROW ? ` ${stationsOf(plan.windows).map((name) => `${name.charAt(0)} ${name}`).join(', ')}.` : ''}</p>
          <div data-measure="plan">${drawCalendar(plan, mine.wishes, { width: s.widths.plan || 320, chosen: mine.chosen, pulled: mine.pulled, now: s.now, shadows: s.page.assessment.shadows }, act)}</div>
        </section>
        ${row ? windowView(s, row, mine.wishes, act) : ''}
        ${reasons(plan, mine, act)}
        ${afterwards(plan, mine.wishes.edits.size > 0)}` : ''}
      ${caseView(s, mine, act)}
    </main>`;
}

/** @param {State} s @param {Mine} mine */
function sentence(s, mine) {
  const a = s.page.assessment;
  const plan = mine.plan;
  if (!plan) return html`<section class="answer"><h1>The plan hears it with ${percent(a.plan.heardByHorizon)}.</h1></section>`;
  const f = mine.trial?.edited ?? plan.figures;
  const next = nextDone(plan, mine.wishes, s.now);
  const procedure = next ? doneIn(next, mine.wishes) : null;
  const title = s.page.assessment.windows.find((w) => w.id === next?.window)?.options.find((o) => o.procedure === procedure)?.title ?? procedure;
  return html`<section class="answer" aria-live="polite" aria-atomic="true">
    <h1>${hours(f.hours)} by ${day(plan.until)} hear it with ${percentError(f.found, f.foundError)}.</h1>
    <p class="why">${next ? html`Next: <a href=${`#pass/${encodeURIComponent(next.window)}`}>${next.station}, ${dayClock(next.aos)}</a>, ${lower(title ?? '')}. ` : 'Nothing is taken. '}${kept(plan.oneMoreHour.sentence)}</p></section>`;
}

/** @param {Plan} plan @param {Mine} mine */
function figures(plan, mine) {
  const f = mine.trial?.edited ?? plan.figures;
  const taken = plan.windows.filter((row) => doneIn(row, mine.wishes) !== null).length;
  return html`<dl class="facts">
    ${fact(`${taken} of ${plan.windows.length}`, 'passes taken')}
    ${fact(`${f.meanDays.toFixed(1)}\u00a0d`, 'mean time to the first sound')}
    ${fact(String(f.commands), f.commands === 1 ? 'command sent' : 'commands sent')}
    ${fact(percent(f.hazard), html`${term('hazard')} of all of it`)}
    ${fact(percent(plan.upperBound), 'no plan here does better than')}
  </dl>`;
}

/** @param {string} value @param {unknown} name */
const fact = (value, name) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`;

/** What somebody changed, and what it costs. @param {Mine} mine @param {Actions} act */
function changes(mine, act) {
  const n = mine.wishes.edits.size;
  const t = mine.trial;
  return html`<div class="changes" aria-live="polite">${n === 0 ? '' : html`
    <p><b>${capital(count(n, 'change', 'changes'))} of yours:</b> ${t ? html`<span class="cost">${signed(t.difference.found)}, ${signedHours(t.difference.hours)}.</span> <span class="soft">${kept(t.sentence)}</span>` : ''}
      <button @click=${act.undo}>Back to the proposal</button></p>
    ${t && t.objections.length ? html`<ul class="problems">${t.objections.map((o) => html`<li><span class="what">${kept(o)}</span></li>`)}</ul>` : ''}
    <p class="legend">Changes and ticks are kept in this browser. They send nothing and write nothing into the record.</p>`}</div>`;
}

/** @param {number} share */
const signed = (share) => html`<b>${share >= 0 ? '+' : ''}${points(share)}</b>`;

/** @param {number} h */
const signedHours = (h) => `${h < 0 ? '−' : '+'}${hours(Math.abs(h))}`;

/** @param {import('../model/plan.js').Week[]} list */
const weeks = (list) => html`<ul class="weeks plain">${list.map((w) => html`<li><span>week of ${day(w.from)}</span>
  <svg width="96" height="8" aria-hidden="true"><rect class="granted" width="96" height="8"></rect>
    <rect class="used" width=${share(w.spent, w)} height="8"></rect><rect class="planned" x=${share(w.spent, w)} width=${share(w.planned, w)} height="8"></rect></svg>
  <span>${w.spent > 0 ? html`${hours(w.spent)} spent, ` : ''}${hours(w.planned)} planned of ${hours(w.granted)}</span></li>`)}</ul>`;

/** @param {number} h @param {import('../model/plan.js').Week} w */
const share = (h, w) => Math.round(96 * Math.min(1, h / Math.max(w.granted + w.spent, w.spent + w.planned, 0.1)));

/** Every pass with its reason, for reading through. @param {Plan} plan @param {Mine} mine @param {Actions} act */
const reasons = (plan, mine, act) => html`
  <details class="reasons"><summary>Every pass, and why it is taken or left out</summary>
    <div class="scroll" tabindex="0" role="group" aria-label="Every pass and its reason"><table>
      <thead><tr><th scope="col">pass</th><th scope="col">height</th><th scope="col">heard</th><th scope="col">adds</th><th scope="col">stands</th><th scope="col">why</th></tr></thead>
      <tbody>${plan.windows.map((row) => html`<tr><th scope="row"><button @click=${() => act.choose(row.window)}>${row.station} ${dayClock(row.aos)}</button></th>
        <td>${degrees(row.maxElevationDeg)}</td><td>${percent(row.heard)}</td><td>${points(row.adds)}</td><td>${STANDING[standing(row, mine.wishes)]}</td><td class="reason">${row.available ? '' : html`Not available: ${row.whyNotAvailable} `}${kept(row.why)}</td></tr>`)}</tbody></table></div></details>`;

/** @param {Plan} plan @param {boolean} edited */
const afterwards = (plan, edited) => html`
  <section class="columns even afterwards" aria-label="After the next pass">
    ${edited ? html`<p class="legend whole">After the next pass of the plan as it was proposed:</p>` : ''}
    <div><h2>If it brings nothing</h2><p>${kept(plan.afterNothing.sentence)}</p>${moved(plan.afterNothing.causes)}</div>
    <div><h2>If it is heard</h2><p>${kept(plan.afterHeard.sentence)}</p>${moved(plan.afterHeard.causes)}</div>
  </section>`;

/** @param {import('../model/plan.js').Moved[]} causes */
const moved = (causes) => causes.length === 0 ? '' : html`<p class="legend">${causes.slice(0, 4).map((c, i) => html`${i ? '; ' : ''}<a href=${`#cause/${c.id}`}>${lower(c.title)}</a> ${percent(c.before)} → ${percent(c.after)}`)}.</p>`;

