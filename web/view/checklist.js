// @ts-check
import { html } from 'lit-html';
import { unsafeHTML } from 'lit-html/directives/unsafe-html.js';
/** @typedef {import('../model/passstate.js').PassState} PassState */
/** @typedef {import('../model/passstate.js').PassActions} PassActions */

/** The procedure for ticking off, what must not be forgotten first. @param {PassState} p @param {import('../model/types.js').Window} w @param {PassActions} act */
export function checklist(p, w, act) {
  const of = p.steps;
  return html`
    <section class="pass-steps" aria-labelledby="pass-steps">
      <div class="heading"><h2 id="pass-steps">${of?.title ?? 'The procedure'}</h2>
        <button type="button" class="print" @click=${act.print}>print the pass sheet</button></div>
      <label class="choose">Procedure <select @change=${(/** @type {Event} */ e) => act.choose(/** @type {HTMLSelectElement} */ (e.target).value)}>
        ${[...w.options].sort((a, b) => a.rank - b.rank).map((o) => html`<option value=${o.procedure} ?selected=${o.procedure === p.procedure}>${o.title}${o.procedure === w.planned ? ' (planned)' : ''}</option>`)}</select></label>
      ${!of ? html`<p class="soft">Fetching it…</p>` : html`
        ${plain('In this window', w.options.find((o) => o.procedure === p.procedure)?.cautions ?? [])}
        ${lines('Cautions', 'cautions', of.cautions)}${lines('Not if', 'forbidden', of.forbiddenIf)}
        ${of.sections.map((part, i) => section(part, i, p, act))}`}
    </section>`;
}

/** @param {string} title @param {string[]} list plain words */
const plain = (title, list) => list.length === 0 ? '' : html`<div class="cautions"><h3>${title}</h3><ul>${list.map((line) => html`<li>${line}</li>`)}</ul></div>`;

/** @param {string} title @param {string} kind @param {string[]} list */
const lines = (title, kind, list) => list.length === 0 ? '' : html`
  <div class=${kind}><h3>${title}</h3><ul>${list.map((line) => html`<li>${unsafeHTML(line)}</li>`)}</ul></div>`;

/** @param {import('../api/pass.js').Steps['sections'][0]} part @param {number} i @param {PassState} p @param {PassActions} act */
function section(part, i, p, act) {
  if (part.steps.length === 0) {
    return html`<details class="pass-part" ?open=${/precondition|stop/i.test(part.title)}><summary>${part.title || 'About it'}</summary><div class="steps">${unsafeHTML(part.html)}</div></details>`;
  }
  return html`<h3>${part.title}</h3>${part.html ? html`<div class="steps">${unsafeHTML(part.html)}</div>` : ''}
    <ol class="ticks-list">${part.steps.map((step, n) => {
      const id = `${p.procedure}#${i}.${n}`;
      return html`<li class="step ${p.checks.has(id) ? 'done' : ''}"><label><input type="checkbox" value=${id} .checked=${p.checks.has(id)} @change=${() => act.check(id)}>
        <span>${unsafeHTML(step.html)}</span></label>${step.detail ? html`<div class="steps">${unsafeHTML(step.detail)}</div>` : ''}</li>`;
    })}</ol>`;
}
