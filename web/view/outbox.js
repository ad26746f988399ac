// @ts-check
import { html } from 'lit-html';
import { count } from '../model/numbers.js';
import { problemList } from './problems.js';
/** @typedef {import('../model/state.js').State} State */

/** What is not yet on disk, on every page. @param {State} s @param {import('../model/state.js').ShellActions} act */
export function outbox(s, act) {
  const waiting = s.waiting.filter((one) => one.problems.length === 0);
  const refused = s.waiting.filter((one) => one.problems.length > 0);
  return html`
    <div class="outbox" role="status">${waiting.length === 0 ? '' : html`<p><b>${count(waiting.length, 'entry waits', 'entries wait')} here for the console:</b>
      ${waiting.map((one) => one.title).join('; ')}. Kept in this browser; sent once, as soon as it answers.</p>`}</div>
    ${refused.length === 0 ? '' : html`<div class="outbox" role="alert">${refused.map((one) => html`
      <p><b>Not written down: ${one.title}.</b> <button type="button" @click=${() => act.drop(one.token)}>forget it</button></p>${problemList(one.problems)}`)}</div>`}`;
}
