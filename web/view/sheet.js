// @ts-check
import { html } from 'lit-html';
import { unsafeHTML } from 'lit-html/directives/unsafe-html.js';
import { addresses, plannedAt, tickOf } from '../model/runbook.js';
import { hours, percent, percentError } from '../model/numbers.js';
import { dayClock } from '../model/time.js';
import { term } from './term.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../api/runbook.js').Procedure} Procedure */
/** @typedef {import('../api/runbook.js').Part} Part */
/** @typedef {import('../api/runbook.js').Step} Step */
/** @typedef {import('./runbook.js').Mine} Mine */
/** @typedef {import('./runbook.js').Actions} Actions */

const WINDOWS = 3;

/** A procedure as a checklist: what must not be forgotten first. @param {Procedure} p @param {State} s @param {Mine} mine @param {Actions} act */
export function sheet(p, s, mine, act) {
  const ticked = [...mine.ticks].some((t) => t.startsWith(`${p.id} `));
  return html`
    <article class="sheet" aria-labelledby="runbook-title">
      <div class="heading"><h2 id="runbook-title">${p.title}</h2>
        <div class="turn"><button type="button" ?disabled=${!ticked} @click=${() => act.untick(p.id)}>take all ticks away</button>
          <button type="button" @click=${() => act.print()}>print</button></div></div>
      <p class="needs soft">${p.needs.length > 0 ? `Needs ${p.needs.map((n) => n.replace('_', ' ')).join(', ')}. ` : ''}${p.costHours > 0 ? `${hours(p.costHours)} of people’s time beside the pass. ` : ''}${causes(p, s)}</p>
      ${warned('Cautions', 'cautions', p.cautions)}
      ${warned('Not if', 'forbidden', p.forbiddenIf)}
      ${ahead(p, s)}
      ${p.parts.map((part, i) => partView(p, part, i, mine, act))}
    </article>`;
}

/** @param {Procedure} p @param {State} s */
function causes(p, s) {
  const list = addresses(s.page.assessment, p.title);
  return list.length === 0 ? '' : html`Addresses ${list.map((c, i) => html`${i ? ', ' : ''}<a href=${`#cause/${c.id}`}>${c.title}</a> ${percent(c.posterior)}`)}.`;
}

/** @param {string} title @param {string} style @param {string[]} lines */
const warned = (title, style, lines) => lines.length === 0 ? '' : html`
  <div class=${style}><h3>${title}</h3><ul>${lines.map((line) => html`<li>${unsafeHTML(line)}</li>`)}</ul></div>`;

/** What the plan makes of it. @param {Procedure} p @param {State} s */
function ahead(p, s) {
  const planned = plannedAt(s.page.assessment, p.id);
  if (planned.length === 0) return html`<p class="ahead soft">Not in the plan.</p>`;
  return html`<p class="ahead">Planned ${planned.slice(0, WINDOWS).map((w, i) => {
    const o = w.options.find((one) => one.procedure === p.id);
    return html`${i ? '; ' : ''}<b>${w.station} ${dayClock(w.aos)}</b>${o ? html`, ${term('heard', 'we hear it')} ${percentError(o.heardThisPass, o.heardThisPassError)}${o.hazard >= 0.005 ? html`, ${term('hazard')} ${percent(o.hazard)}` : ''}` : ''}`;
  })}${planned.length > WINDOWS ? `; and ${planned.length - WINDOWS} more` : ''}.</p>`;
}

/** @param {Procedure} p @param {Part} part @param {number} at @param {Mine} mine @param {Actions} act */
const partView = (p, part, at, mine, act) => html`
  <section class="part">${part.title ? html`<h3>${part.title}</h3>` : ''}
    ${part.html ? html`<div class="prose">${unsafeHTML(part.html)}</div>` : ''}
    ${part.steps ? html`<ol class="checklist">${part.steps.map((step, i) => stepView(step, tickOf(p.id, at, i), i + 1, mine, act))}</ol>` : ''}
  </section>`;

/** @param {Step} step @param {string} name @param {number} number @param {Mine} mine @param {Actions} act */
function stepView(step, name, number, mine, act) {
  const done = mine.ticks.has(name);
  const id = `tick-${name.replace(/\W/g, '-')}`;
  return html`
    <li class=${done ? 'done' : ''}>
      <label class="tick" for=${id}><input type="checkbox" id=${id} .checked=${done}
        @change=${(/** @type {Event} */ e) => act.tick(name, /** @type {HTMLInputElement} */ (e.target).checked)}> <span class="number">${number}<span class="unseen"> ${done ? 'done' : 'to do'}</span></span></label>
      <div><div class="do">${unsafeHTML(step.text)}</div>
        <dl>${line('expect', step.expect)}${line('time-out', step.timeOut)}${line('if not', step.ifNot)}</dl>
        ${step.more ? unsafeHTML(step.more) : ''}</div>
    </li>`;
}

/** @param {string} name @param {string|undefined} words the server's HTML */
const line = (name, words) => (words ? html`<div class=${name.replace(' ', '-')}><dt>${name}</dt><dd>${unsafeHTML(words)}</dd></div>` : '');
