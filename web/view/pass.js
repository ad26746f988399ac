// @ts-check
import { html } from 'lit-html';
import { drawBursts } from '../chart/bursts.js';
import { drawHorizon } from '../chart/horizon.js';
import { count, degrees, percentError } from '../model/numbers.js';
import { heaviest, phaseOf } from '../model/pass.js';
import { clockSeconds, countdown, date, ms, span } from '../model/time.js';
import { checklist } from './checklist.js';
import { live } from './live.js';
import { outcome } from './outcome.js';
import { passSheet } from './passsheet.js';
import { problemList } from './problems.js';
import { term } from './term.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/passstate.js').PassState} PassState */
/** @typedef {import('../model/passstate.js').PassActions} PassActions */
/** @typedef {import('../model/types.js').Window} Window */

/** A pass, before and during. @param {State} s @param {PassState} p @param {PassActions} act */
export function passMain(s, p, act) {
  const w = p.window;
  if (!w) return unknown(p);
  const weights = new Map(s.page.assessment.objects.map((o) => [o.object, o.posterior]));
  const track = p.data && heaviest(p.data, weights);
  const option = w.options.find((o) => o.procedure === p.procedure);
  return html`
    <main id="pass-main" class="pass">
      <section class="answer"><h1>${sentence(w, s.now, option?.title)}${authority(s, p, w)}</h1>
        <p class="why">${w.station}, ${degrees(w.maxElevationDeg)}, ${date(w.aos)} from ${clockSeconds(w.aos)} to ${clockSeconds(w.los)}.
          ${term('beacon-on', 'Beacon on')} ${percentError(w.beaconOn, w.beaconOnError)}${option ? html`, ${term('heard')} ${percentError(option.heardThisPass, option.heardThisPassError)}` : ''}.
          ${w.planned === null ? 'The plan leaves this pass out.' : ''}</p></section>
      ${s.lost > 0 ? html`<p class="without" role="status"><b>The console does not answer since ${clockSeconds(s.lost)} of this machine’s clock.</b> This page goes on from what it has loaded; what you write down waits here.</p>` : ''}
      ${problemList(p.problems)}
      ${p.data && track ? live(p.data, track, w, s.now, option?.reach ?? null) : ''}
      <div class="through">
        <div class="sky-part">${p.data && track ? sky(s, p, p.data, track, w, weights)
          : html`<p class="waiting" role="status">${p.problems.length === 0 ? 'Fetching where to point…' : ''}</p>`}</div>
        ${outcome(s, p, w, act)}
        ${checklist(p, w, act)}
      </div>
      ${p.data && track ? passSheet(s, p, p.data, track, w) : ''}
    </main>`;
}

/** What the answer says of sending in this window, while its own procedure is chosen. @param {State} s @param {PassState} p @param {Window} w */
const authority = (s, p, w) => {
  const h = s.page.assessment.headline;
  return h.window === w.id && h.caution !== '' && p.procedure === w.planned && phaseOf(w, s.now) !== 'over' ? html` <em class="long">${h.caution}</em>` : '';
};

/** @param {Window} w @param {number} now @param {string|undefined} what */
function sentence(w, now, what) {
  const doing = what ? `${what.charAt(0).toUpperCase()}${what.slice(1)}` : 'Listen';
  switch (phaseOf(w, now)) {
    case 'before': return html`${w.station} in ${span(ms(w.aos) - now)}. ${doing}.`;
    case 'soon': return html`<em>${countdown(ms(w.aos) - now)}</em> to ${'\u00a0'}AOS at ${w.station}. ${doing}.`;
    case 'running': return now < ms(w.culmination)
      ? html`${doing}. <em>${countdown(ms(w.los) - now)}</em> left, still rising.`
      : html`${doing}. <em>${countdown(ms(w.los) - now)}</em> left.`;
    default: return html`The pass is over since ${span(now - ms(w.los))}. What happened?`;
  }
}

/** @param {State} s @param {PassState} p @param {import('../model/pass.js').PassData} data @param {import('../model/pass.js').PassTrack} track @param {Window} w @param {Map<string, number>} weights */
const sky = (s, p, data, track, w, weights) => html`
  <div class="sky-canvas" data-measure="horizon">${s.widths.horizon ? drawHorizon({ window: w, data, width: s.widths.horizon, weights, now: s.now }) : ''}</div>
  <p class="legend">The filled dot is the likeliest object, ${name(s, track.object)}${data.tracks.length > 1 ? html`; the ${data.tracks.length === 2 ? 'open dot and the pale band are the other' : 'open dots and the pale band are the other'}
    ${term('candidate', data.tracks.length === 2 ? 'candidate' : `${data.tracks.length - 1} candidates`)}` : ''}. The dark ground is the ${term('skyline')}.</p>
  ${due(p, w, track, s)}`;

/** @param {PassState} p @param {Window} w @param {import('../model/pass.js').PassTrack} track @param {State} s */
function due(p, w, track, s) {
  const beacon = p.data?.beacons[0];
  if (!beacon) return '';
  const bursts = Math.floor((ms(w.los) - ms(w.aos)) / 1000 / beacon.intervalSeconds);
  return html`
    <div class="bursts-canvas" data-measure="bursts">${s.widths.bursts ? drawBursts({ window: w, track, intervalSeconds: beacon.intervalSeconds, width: s.widths.bursts, now: s.now, burst: p.burst, heardAt: p.heardAt }) : ''}</div>
    <p class="legend">If the ${term('beacon')} is on, a burst of ${beacon.durationSeconds} s comes every ${beacon.intervalSeconds} s, ${count(bursts, 'time', 'times')} in this pass.
      ${p.burst ? html`The ticks go by the one at ${clockSeconds(p.burst)}.` : html`The ticks show the pace only: nobody knows when the first is due.`}</p>`;
}

/** @param {State} s @param {string} object */
const name = (s, object) => s.page.assessment.objects.find((o) => o.object === object)?.name || object;

/** @param {PassState} p */
const unknown = (p) => html`
  <main id="pass-main"><h1>This pass is not among those ahead.</h1>
    <p class="why">${p.id ? html`No window is called “${p.id}” ${'\u2013'} it may be over, or the element sets have moved it.` : 'No window was named.'}
      <a href="#passes">All passes</a> are one page away.</p></main>`;
